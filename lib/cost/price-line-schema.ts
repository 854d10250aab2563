import { z } from "zod";
import { amountOrCreditSchema, amountSchema } from "./amount-schema";
import { type CostCategory, costCategories } from "./categories";
import { linkIds } from "./link-ids";
import type { PriceLine, PriceLineKind } from "./model";
import { parseLumpSum } from "./parse-price";
import { parseEscalation, parseRenewalSaving, parseReplacedShare } from "./parse-rate";
import { parseYearList, parseYears } from "./parse-years";
import { roleSchema } from "./role-schema";
import { label, laterYear, optional, optionalYear, read, reference, remark, shorterThan, years } from "./text-fields";

const category = z.enum(Object.keys(costCategories) as [CostCategory, ...CostCategory[]], {
  error: "Choose what the money is spent for.",
});
const givenBy = z.enum(["bid", "owner-estimate"], {
  error: "Say who gives the figure: the bid, or the owner as an estimate.",
});

const head = {
  id: reference("Give the line a short name for reference."),
  label: label("Say what the line is for."),
  givenBy,
  role: roleSchema,
  purpose: z.enum(["", ...linkIds], { error: "Choose what the line is spent on, or leave it open." }).default(""),
  statedExtension: optional(parseLumpSum),
  document: remark(200),
  page: remark(40),
  note: remark(2000),
};
const escalation = optional(parseEscalation);

/** A part that stays through several lives of another. */
const reuse = z
  .strictObject({
    line: reference("Name the price line whose lives are counted, for example “carpet-and-infill”."),
    lives: z
      .string({ error: "Write the number of lives, for example “2”." })
      .transform(read((asEntered) => parseYears(asEntered, { what: "the number of lives", low: 1, high: 10 }))),
  })
  .nullable()
  .default(null);

/** When and how often a price is paid, for each kind of line, from text; without the head and the amount. */
export const scheduleFields = {
  "at-base-date": { category, amount: amountOrCreditSchema },
  "in-year": {
    category,
    amount: amountOrCreditSchema,
    year: years({ what: "the year of payment", ...laterYear }),
    escalation,
  },
  yearly: {
    category,
    amount: amountSchema,
    from: optionalYear("the first year"),
    to: optionalYear("the last year"),
    escalation,
  },
  periodic: {
    category,
    amount: amountSchema,
    every: years({ what: "the interval", ...laterYear }),
    from: optionalYear("the first year"),
    until: optionalYear("the last year"),
    except: z
      .string()
      .max(...shorterThan(400))
      .default("")
      .transform(read((asEntered) => parseYearList(asEntered, { what: "a year to leave out", ...laterYear }))),
    escalation,
  },
} as const;

/** The text of each kind of line; the type names every kind that has no entry. */
const terms = {
  "at-base-date": z.strictObject({ kind: z.literal("at-base-date"), ...head, ...scheduleFields["at-base-date"] }),
  "in-year": z.strictObject({ kind: z.literal("in-year"), ...head, ...scheduleFields["in-year"] }),
  yearly: z
    .strictObject({ kind: z.literal("yearly"), ...head, ...scheduleFields.yearly })
    .refine(({ from, to }) => (from?.years ?? 1) <= (to?.years ?? Number.POSITIVE_INFINITY), {
      path: ["to"],
      error: "The last year lies before the first; expected the first year or a later one.",
    }),
  periodic: z
    .strictObject({ kind: z.literal("periodic"), ...head, ...scheduleFields.periodic })
    .refine(({ every, from, until }) => (from ?? every).years <= (until?.years ?? Number.POSITIVE_INFINITY), {
      path: ["until"],
      error: "The last year lies before the first payment; expected the year of the first payment or a later one.",
    }),
  "replacement-chain": z.strictObject({
    kind: z.literal("replacement-chain"),
    ...head,
    amount: amountSchema,
    life: years({ what: "the life", ...laterYear }),
    lifeGivenBy: givenBy,
    reuse,
    firstReplacement: optionalYear("the year of the first replacement"),
    replacedShare: optional(parseReplacedShare),
    renewalSaving: optional(parseRenewalSaving),
    removal: amountSchema.nullable().default(null),
    removalGivenBy: givenBy.default("owner-estimate"),
    removalAtStudyEnd: z
      .enum(["used-life-share", "full", "none"], {
        error: "Choose what removal costs at the end of the study: used-life-share, full or none.",
      })
      .default("used-life-share"),
    residual: z
      .enum(["straight-line", "stated", "none"], {
        error: "Choose the value left at the end of the study: straight-line, stated or none.",
      })
      .default("straight-line"),
    /** Absent in what was stored before such a value could be stated. */
    statedResidual: optional(parseLumpSum),
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

/** What is the matter with a line that no single field can tell, and at which field it is said. */
function* contradictions(line: PriceLine): Generator<readonly [path: readonly string[], message: string]> {
  if (line.kind !== "replacement-chain" && line.category === "owners-addition" && line.givenBy === "bid") {
    yield [["givenBy"], "An owner’s addition is not the bidder’s price; mark it as the owner’s estimate."];
  }
  if (line.kind === "replacement-chain" && line.residual === "stated" && line.statedResidual === null) {
    yield [
      ["statedResidual"],
      "Write what the part is worth at the end of the study, for example “$20,000”. A minus sign means that it costs something then.",
    ];
  }
  const { role } = line;
  if (role.kind === "owner-furnished" && line.givenBy === "bid") {
    yield [["givenBy"], "What the owner buys is not the bidder’s price; mark it as the owner’s estimate."];
  }
  if (role.kind === "unit-price" && line.amount.kind !== "per-unit") {
    yield [["amount", "kind"], "A unit price is given as a quantity and the price of one unit: choose per-unit."];
  }
  if (role.kind === "unit-price" && line.amount.kind === "per-unit" && role.acceptedQuantity !== null) {
    const { quantity } = line.amount;
    if (role.acceptedQuantity.dimension !== quantity.dimension) {
      yield [
        ["role", "acceptedQuantity"],
        `“${role.acceptedQuantity.asEntered}” is accepted of what is priced by “${quantity.asEntered}”; expected the same kind of quantity.`,
      ];
    }
  }
  if (role.kind === "base-bid" && line.givenBy === "bid" && line.amount.kind === "share") {
    yield [
      ["amount", "kind"],
      "A part of the base bid can’t be a share of the sum that it belongs to; give it another place in the bid, such as bond or tax.",
    ];
  }
}

/** One price line, from text. Issues name the field they belong to. */
export const priceLineSchema = z
  .discriminatedUnion(
    "kind",
    [terms["at-base-date"], terms["in-year"], terms.yearly, terms.periodic, terms["replacement-chain"]],
    { error: `Choose how the price is paid: ${Object.keys(terms).join(", ")}.` },
  )
  .superRefine((line, context) => {
    for (const [path, message] of contradictions(line)) context.addIssue({ code: "custom", path: [...path], message });
  });

/** The price lines of one bid. */
export const priceLinesSchema = z
  .array(priceLineSchema)
  .max(300, "Expected at most 300 price lines in one bid.")
  .superRefine((lines, context) => {
    const seen = new Set<string>();
    lines.forEach((line, index) => {
      const { id } = line;
      if (seen.has(id)) {
        const message = `Another line is already called “${id}”; expected a name that no other line has.`;
        context.addIssue({ code: "custom", path: [index, "id"], message });
      }
      seen.add(id);
      const message = reuseProblem(line, lines);
      if (message !== null) context.addIssue({ code: "custom", path: [index, "reuse", "line"], message });
    });
  });

/** Why a part can't take its life from the line it names; null where it can or takes none. */
function reuseProblem(line: PriceLine, lines: readonly PriceLine[]): string | null {
  if (line.kind !== "replacement-chain" || line.reuse === null) return null;
  const { line: named } = line.reuse;
  const found = lines.find(({ id }) => id === named);
  if (found?.kind !== "replacement-chain" || found.id === line.id) {
    return `“${named}” is named for its lives; expected the name of another line with a life in this bid.`;
  }
  return found.reuse === null
    ? null
    : `“${named}” takes its own life from “${found.reuse.line}”; expected a line with a life of its own.`;
}

/** The sum that a bid form states in figures, from text; null where it states none. */
export const statedTotalSchema = optional(parseLumpSum);
