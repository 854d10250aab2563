import { z } from "zod";
import { failed, parseExact, type Result, succeeded } from "#lib/quantity";
import { type Distribution, type DistributionKind, distributions, parseDistribution, seedField } from "#lib/sampling";
import { type CostCategory, costCategories } from "../categories";
import { linkIds } from "../link-ids";
import { ask, label, reference, remark } from "../text-fields";
import type { StatedInput, StatedTarget, StatedUncertainty } from "./stated-model";

const bid = ask("Name the bid.").min(1, "Name the bid.");
const line = ask("Name the price line.").min(1, "Choose a price line.");
const parts = ["price", "quantity", "unit-price", "renewal-price", "removal-price"] as const;

const target = z.discriminatedUnion(
  "kind",
  [
    z.strictObject({
      ...{ kind: z.literal("line"), bid, line },
      part: z.enum(parts, { error: `Choose which figure of the line moves: ${parts.join(", ")}.` }),
    }),
    z.strictObject({
      kind: z.literal("category"),
      category: z.enum(Object.keys(costCategories) as [CostCategory, ...CostCategory[]], {
        error: "Choose what the money is spent for.",
      }),
    }),
    z.strictObject({
      kind: z.literal("parts"),
      part: z.enum(["price", "renewal-price", "removal-price"], {
        error: "Choose which price of the parts moves: price, renewal-price or removal-price.",
      }),
    }),
    z.strictObject({
      kind: z.literal("purpose"),
      purpose: z.enum(linkIds, { error: `Choose what is spent on: ${linkIds.join(", ")}.` }),
    }),
    z.strictObject({ kind: z.literal("life"), bid, line }),
    z.strictObject({ kind: z.literal("growth"), bid, line }),
    z.strictObject({ kind: z.literal("real-rate") }),
  ],
  { error: "Choose what is uncertain: line, category, parts, purpose, life, growth or real-rate." },
) satisfies z.ZodType<StatedTarget, unknown>;

/** "125 %" → 1.25 */
function readShare(text: string): Result<number, string> {
  const parsed = /%\s*$/.test(text) ? parseExact("fraction", text) : null;
  if (parsed?.ok) return succeeded(parsed.value.value);
  return failed(`“${text}” was read; expected a share in per cent, for example “125 %”.`);
}

/** "10" or "10 years" → 10 */
function readYears(text: string): Result<number, string> {
  const years = /^\s*(\d{1,3})\s*(years?)?\s*$/.exec(text)?.[1];
  const value = Number(years ?? Number.NaN);
  if (value >= 1 && value <= 100) return succeeded(value);
  return failed(`“${text}” was read; expected a whole number of years from 1 to 100, for example “10”.`);
}

const bounded: ReadonlySet<DistributionKind> = new Set(["fixed", "uniform", "triangular", "pert", "discrete"]);

/** Why a way of stating doubt does not fit what is uncertain; null where it does. */
function misfitKind({ kind }: StatedTarget, way: DistributionKind): string | null {
  if (kind === "life")
    return way === "discrete" || way === "fixed"
      ? null
      : "A life is a whole number of years: choose values with chances, for example “8: 25 %, 10: 75 %”.";
  if (kind !== "growth" && kind !== "real-rate") return null;
  return bounded.has(way)
    ? null
    : "A rate needs a lowest and a highest value, because rates near −100 % mean nothing: choose a way with both.";
}

/** Why the figures do not fit what is uncertain; null where they do. */
function misfit({ kind }: StatedTarget, distribution: Distribution): string | null {
  if (kind !== "growth" && kind !== "real-rate") return null;
  const lowest = lowestOf(distribution);
  return lowest > -0.5 ? null : "The lowest rate is at or below −50 % a year; expected one above it.";
}

function lowestOf(distribution: Distribution): number {
  switch (distribution.kind) {
    case "fixed":
      return distribution.value;
    case "uniform":
    case "triangular":
    case "pert":
      return distribution.low;
    case "discrete":
      return Math.min(...distribution.values.map(({ value }) => value));
    case "normal":
    case "lognormal":
      return Number.NEGATIVE_INFINITY;
  }
}

const kinds = Object.keys(distributions) as [DistributionKind, ...DistributionKind[]];

const input = z
  .strictObject({
    id: reference("Give the input a short name for reference."),
    label: label("Say what is uncertain."),
    target,
    kind: z.enum(kinds, { error: `Choose how the doubt is stated: ${kinds.join(", ")}.` }),
    figures: ask("Write the figures, for example “90 % / 100 % / 125 %”."),
    driver: remark(80),
  })
  .transform(({ kind, ...stated }, context): StatedInput => {
    const trouble = (message: string, path: "kind" | "figures" = "figures") => {
      context.addIssue({ code: "custom", path: [path], message });
      return z.NEVER;
    };
    const unfit = misfitKind(stated.target, kind);
    if (unfit !== null) return trouble(unfit, "kind"); // first, as its figures are written in another way
    const parsed = parseDistribution(kind, stated.figures, stated.target.kind === "life" ? readYears : readShare);
    if (!parsed.ok) return trouble(parsed.problem);
    const problem = misfit(stated.target, parsed.value);
    return problem === null ? { ...stated, distribution: parsed.value } : trouble(problem);
  });

const fewest = 1_000;
const most = 200_000;

const samples = ask("Write how often to draw, for example “20,000”.").transform((text, context) => {
  const count = /^\s*\d{1,3}(,\d{3})+\s*$|^\s*\d+\s*$/.test(text) ? Number(text.replaceAll(",", "")) : Number.NaN;
  if (count >= fewest && count <= most) return count;
  const message = `“${text}” was read; expected a whole number from ${fewest.toLocaleString("en-US")} to ${most.toLocaleString("en-US")}.`;
  context.addIssue({ code: "custom", message });
  return z.NEVER;
});

/** What is uncertain, from text. An empty object is a project in which nothing is said to be. */
export const uncertaintySchema = z.strictObject({
  seed: seedField.default(1),
  samples: samples.default(20_000),
  inputs: z
    .array(input)
    .max(60, "Expected at most 60 uncertain figures.")
    .superRefine((inputs, context) => {
      for (const [index, { id }] of inputs.entries()) {
        if (inputs.findIndex((other) => other.id === id) === index) continue;
        context.addIssue({
          code: "custom",
          path: [index, "id"],
          message: `Another uncertain figure is already called “${id}”; expected a name that no other has.`,
        });
      }
    })
    .default([]),
}) satisfies z.ZodType<StatedUncertainty, unknown>;
