import { z } from "zod";
import { plainDateField, type Result } from "#lib/quantity";
import { type CostCategory, costCategories } from "./categories";
import type { Amount, PriceLineKind } from "./model";
import { parseLumpSum, parsePricedQuantity, parsePricePerArea } from "./parse-price";
import { parseEscalation, parseRealRate, parseRenewalSaving } from "./parse-rate";
import { parseYearList, parseYears, type YearsAsked } from "./parse-years";

const shorterThan = (most: number) => [most, `Expected at most ${most.toLocaleString("en-US")} characters.`] as const;

const ask = (message: string) => z.string({ error: message }).max(...shorterThan(200));

/** Text that is read into a model value, or an issue with the sentence that helps. */
const read =
  <T>(parse: (asEntered: string) => Result<T, string>) =>
  (asEntered: string, context: z.core.$RefinementCtx): T => {
    const parsed = parse(asEntered);
    if (parsed.ok) return parsed.value;
    context.addIssue({ code: "custom", message: parsed.problem });
    return z.NEVER;
  };

/** The same for text that may be left out or left empty: null then. */
const optional = <T>(parse: (asEntered: string) => Result<T, string>) =>
  z
    .string()
    .max(...shorterThan(200))
    .nullable()
    .default(null)
    .transform((asEntered, context) =>
      asEntered === null || asEntered.trim() === "" ? null : read(parse)(asEntered, context),
    );

const years = (asked: YearsAsked) =>
  ask(`Write ${asked.what} as a whole number of years.`).transform(read((asEntered) => parseYears(asEntered, asked)));
const optionalYear = (what: string) => optional((asEntered) => parseYears(asEntered, { what, ...laterYear }));
const laterYear = { low: 1, high: 100 };

/** How a project costs its bids, from text. */
export const costConventionsSchema = z.strictObject({
  currency: z.literal("USD", { error: "Prices are kept in US dollars: write USD." }),
  baseDate: plainDateField,
  studyPeriod: years({ what: "the study period", low: 1, high: 60 }),
  realRate: ask("Write the real rate per year, for example “3 %”.").transform(read(parseRealRate)),
  timing: z.enum(["end-of-year", "mid-year"], { error: "Choose end-of-year or mid-year for what recurs every year." }),
  money: z.literal("constant", { error: "Costs are kept in constant money: write constant." }),
});

const price = ask("Write the price as it is given, for example “$18,500”.");

const pricedQuantity = z
  .strictObject({
    kind: z.literal("per-unit"),
    quantity: ask("Write the quantity with its unit, for example “4,000 lb”."),
    unitPrice: ask("Write the price of one unit, for example “$0.38/lb”."),
  })
  .transform(({ kind, quantity, unitPrice }, context) => {
    const parsed = parsePricedQuantity(quantity, unitPrice);
    if (parsed.ok) return { kind, ...parsed.value };
    context.addIssue({ code: "custom", path: [parsed.problem.field], message: parsed.problem.message });
    return z.NEVER;
  });

/** A price as written: a lump sum, a price per area, or a quantity and its unit price. A minus sign means a credit. */
const amountOrCredit = z.discriminatedUnion(
  "kind",
  [
    z.strictObject({ kind: z.literal("lump-sum"), price: price.transform(read(parseLumpSum)) }),
    z.strictObject({ kind: z.literal("per-area"), price: price.transform(read(parsePricePerArea)) }),
    pricedQuantity,
  ],
  { error: "Choose how the price is given: lump-sum, per-area or per-unit." },
);

/** The texts of an amount under the names of their fields. */
const writtenIn = (written: Amount) =>
  written.kind === "per-unit" ? { quantity: written.quantity, unitPrice: written.unitPrice } : { price: written.price };

/** A price that recurs or is renewed can't be a credit: only single payments can. */
const amount = amountOrCredit.superRefine((written: Amount, context) => {
  for (const [field, { asEntered, value }] of Object.entries(writtenIn(written))) {
    if (value < 0) {
      const message = `“${asEntered}” is below zero; expected zero or more. Enter a credit as a single payment.`;
      context.addIssue({ code: "custom", path: [field], message });
    }
  }
});

const category = z.enum(Object.keys(costCategories) as [CostCategory, ...CostCategory[]], {
  error: "Choose what the money is spent for.",
});
const givenBy = z.enum(["bid", "owner-estimate"], {
  error: "Say who gives the figure: the bid, or the owner as an estimate.",
});

const head = {
  id: ask("Give the line a short name for reference.").regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, {
    error: "Expected small letters, digits and single hyphens, for example “carpet-and-infill”.",
  }),
  label: ask("Say what the line is for.")
    .trim()
    .min(1, "Say what the line is for.")
    .max(...shorterThan(120)),
  givenBy,
  document: z
    .string()
    .max(...shorterThan(200))
    .default(""),
  page: z
    .string()
    .max(...shorterThan(40))
    .default(""),
  note: z
    .string()
    .max(...shorterThan(2000))
    .default(""),
};
const escalation = optional(parseEscalation);

/** The text of each kind of line; the type names every kind that has no entry. */
const terms = {
  "at-base-date": z.strictObject({ kind: z.literal("at-base-date"), ...head, category, amount: amountOrCredit }),
  "in-year": z.strictObject({
    kind: z.literal("in-year"),
    ...head,
    category,
    amount: amountOrCredit,
    year: years({ what: "the year of payment", ...laterYear }),
    escalation,
  }),
  yearly: z
    .strictObject({
      kind: z.literal("yearly"),
      ...head,
      category,
      amount,
      from: optionalYear("the first year"),
      to: optionalYear("the last year"),
      escalation,
    })
    .refine(({ from, to }) => (from?.years ?? 1) <= (to?.years ?? Number.POSITIVE_INFINITY), {
      path: ["to"],
      error: "The last year lies before the first; expected the first year or a later one.",
    }),
  periodic: z
    .strictObject({
      kind: z.literal("periodic"),
      ...head,
      category,
      amount,
      every: years({ what: "the interval", ...laterYear }),
      from: optionalYear("the first year"),
      until: optionalYear("the last year"),
      except: z
        .string()
        .max(...shorterThan(400))
        .default("")
        .transform(read((asEntered) => parseYearList(asEntered, { what: "a year to leave out", ...laterYear }))),
      escalation,
    })
    .refine(({ every, from, until }) => (from ?? every).years <= (until?.years ?? Number.POSITIVE_INFINITY), {
      path: ["until"],
      error: "The last year lies before the first payment; expected the year of the first payment or a later one.",
    }),
  "replacement-chain": z.strictObject({
    kind: z.literal("replacement-chain"),
    ...head,
    amount,
    life: years({ what: "the life", ...laterYear }),
    lifeGivenBy: givenBy,
    renewalSaving: optional(parseRenewalSaving),
    removal: amount.nullable().default(null),
    removalGivenBy: givenBy.default("owner-estimate"),
    removalAtStudyEnd: z
      .enum(["used-life-share", "full", "none"], {
        error: "Choose what removal costs at the end of the study: used-life-share, full or none.",
      })
      .default("used-life-share"),
    residual: z
      .enum(["straight-line", "none"], {
        error: "Choose the value left at the end of the study: straight-line or none.",
      })
      .default("straight-line"),
    escalation,
  }),
} as const satisfies Record<PriceLineKind, z.ZodType>;

const namesIn = ({ shape }: Readonly<{ shape: object }>): readonly string[] => Object.keys(shape);

/** The names of the texts that each kind of line takes, its kind among them. */
export const priceFields: Readonly<Record<PriceLineKind, readonly string[]>> = {
  "at-base-date": namesIn(terms["at-base-date"]),
  "in-year": namesIn(terms["in-year"]),
  yearly: namesIn(terms.yearly),
  periodic: namesIn(terms.periodic),
  "replacement-chain": namesIn(terms["replacement-chain"]),
};

/** One price line, from text. Issues name the field they belong to. */
export const priceLineSchema = z
  .discriminatedUnion(
    "kind",
    [terms["at-base-date"], terms["in-year"], terms.yearly, terms.periodic, terms["replacement-chain"]],
    { error: `Choose how the price is paid: ${Object.keys(terms).join(", ")}.` },
  )
  .superRefine((line, context) => {
    if (line.kind !== "replacement-chain" && line.category === "owners-addition" && line.givenBy === "bid") {
      const message = "An owner’s addition is not the bidder’s price; mark it as the owner’s estimate.";
      context.addIssue({ code: "custom", path: ["givenBy"], message });
    }
  });

/** The price lines of one bid. */
export const priceLinesSchema = z
  .array(priceLineSchema)
  .max(300, "Expected at most 300 price lines in one bid.")
  .superRefine((lines, context) => {
    const seen = new Set<string>();
    lines.forEach(({ id }, index) => {
      if (seen.has(id)) {
        const message = `Another line is already called “${id}”; expected a name that no other line has.`;
        context.addIssue({ code: "custom", path: [index, "id"], message });
      }
      seen.add(id);
    });
  });
