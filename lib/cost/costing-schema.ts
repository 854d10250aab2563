import { z } from "zod";
import { type DimensionName, type ExactLimits, exactField, orNotGiven } from "#lib/quantity";
import type { Costing } from "./costing-model";
import { startingChecklist } from "./levelling/checklist";
import { linkIds } from "./link-ids";
import { linkDefaults } from "./links/defaults";
import type { UnitPriceDimension } from "./model";
import { parseCounted, parseLumpSum, parseUnitPrice } from "./parse-price";
import { parseLinkShare } from "./parse-rate";
import { priceLinesSchema, scheduleFields } from "./price-line-schema";
import { ask, label, mayLack, optional, read, reference, remark } from "./text-fields";
import { uncertaintySchema } from "./uncertainty/stated-schema";

const bidReference = ask("Name the bid.").regex(/^[a-z0-9][a-z0-9-]{0,63}$/, "Expected the id of a bid.");

const item = z.strictObject({
  id: reference("Give the item a short name for reference."),
  label: label("Say what the item is."),
});

const checklist = z
  .array(item)
  .max(80, "Expected at most 80 items of scope.")
  .superRefine((items, context) => {
    for (const [index, { id }] of items.entries()) {
      if (items.findIndex((other) => other.id === id) === index) continue;
      const message = `Another item is already called “${id}”; expected a name that no other item has.`;
      context.addIssue({ code: "custom", path: [index, "id"], message });
    }
  });

const { category: _once, ...once } = scheduleFields["at-base-date"];
const { category: _later, ...later } = scheduleFields["in-year"];
const { category: _yearly, ...yearly } = scheduleFields.yearly;
const { category: _periodic, ...periodic } = scheduleFields.periodic;

/** An amount and when it is paid, from text. */
const plainPrice = z.discriminatedUnion(
  "kind",
  [
    z.strictObject({ kind: z.literal("at-base-date"), ...once }),
    z.strictObject({ kind: z.literal("in-year"), ...later }),
    z.strictObject({ kind: z.literal("yearly"), ...yearly }),
    z.strictObject({ kind: z.literal("periodic"), ...periodic }),
  ],
  { error: "Choose how the price is paid: at-base-date, in-year, yearly or periodic." },
);

const plug = z
  .discriminatedUnion(
    "kind",
    [
      z.strictObject({ kind: z.literal("none") }),
      z.strictObject({ kind: z.literal("figure"), price: plainPrice }),
      z.strictObject({ kind: z.literal("median"), quantity: optional(parseCounted) }),
      z.strictObject({ kind: z.literal("question"), asked: remark(2000) }),
    ],
    { error: "Choose what stands in for the missing price: none, figure, median or question." },
  )
  .default({ kind: "none" });

const entry = z.strictObject({
  bid: bidReference,
  item: reference("Name the item of scope."),
  standing: z.enum(["included", "excluded", "unclear", "by-owner", "not-asked"], {
    error: "Choose how the bid stands to the item: included, excluded, unclear, by-owner or not-asked.",
  }),
  document: remark(200),
  page: remark(40),
  line: z.string().max(200).default(""),
  plug,
  note: remark(2000),
});

const levelling = z
  .array(entry)
  .max(3200, "Expected at most 3,200 entries: 80 items in each of 40 bids.")
  .superRefine((entries, context) => {
    const seen = new Set<string>();
    for (const [index, { bid, item: named }] of entries.entries()) {
      const key = `${bid} ${named}`;
      if (seen.has(key)) {
        const message = `The item “${named}” is entered twice for the bid “${bid}”; expected one entry for each.`;
        context.addIssue({ code: "custom", path: [index, "item"], message });
      }
      seen.add(key);
    }
  });

const unitPrice = <D extends UnitPriceDimension>(dimension: D) =>
  mayLack((asEntered) => parseUnitPrice(dimension, asEntered));
const share = (what: string) =>
  ask("Write a share, for example “2 %”.").transform(read((asEntered) => parseLinkShare(asEntered, what)));
const orEmpty = <D extends DimensionName>(dimension: D, limits: ExactLimits<D>) =>
  orNotGiven(exactField(dimension, limits));

/** Every parameter of the technical links, from text. */
const parameterFields = {
  payload: exactField("mass", { above: [0, "kg"] }),
  freightPerLoad: mayLack(parseLumpSum),
  displacementShare: share("the share of infill moved off its place a year"),
  carryOffShare: share("the share of infill carried off a year"),
  topUpPrice: unitPrice("moneyPerMass"),
  carpetMass: orEmpty("arealDensity", { above: [0, "kg/m²"] }),
  tippingFee: unitPrice("moneyPerMass"),
  haul: unitPrice("moneyPerMass"),
  recyclingCredit: unitPrice("moneyPerMass"),
  groomingShareHeavy: share("the hours of grooming for each hour of use"),
  groomingShareOther: share("the hours of grooming for each hour of use"),
  wage: unitPrice("moneyPerTime"),
  testVisitPrice: mayLack(parseLumpSum),
  testVisitsPerYear: exactField("count", { atLeast: [0, ""], atMost: [52, ""] }),
  locationsPerVisit: orEmpty("count", { above: [0, ""] }),
  shockLayerLives: orEmpty("count", { atLeast: [1, ""], atMost: [10, ""] }),
  coolingDepth: orEmpty("length", { above: [0, "mm"], atMost: [50, "mm"] }),
  coolingsPerYear: orEmpty("count", { atLeast: [0, ""], atMost: [1000, ""] }),
  waterPrice: unitPrice("moneyPerVolume"),
} as const;

const fields = parameterFields;

/** The parameters of a project: what the owner has not written is a rule of thumb or not given. */
const parameters = z.strictObject({
  payload: fields.payload.default(() => fields.payload.parse(linkDefaults.payload)),
  freightPerLoad: fields.freightPerLoad.default(null),
  displacementShare: fields.displacementShare.default(() =>
    fields.displacementShare.parse(linkDefaults.displacementShare),
  ),
  carryOffShare: fields.carryOffShare.default(() => fields.carryOffShare.parse(linkDefaults.carryOffShare)),
  topUpPrice: fields.topUpPrice.default(null),
  carpetMass: fields.carpetMass.default(null),
  tippingFee: fields.tippingFee.default(null),
  haul: fields.haul.default(null),
  recyclingCredit: fields.recyclingCredit.default(null),
  groomingShareHeavy: fields.groomingShareHeavy.default(() =>
    fields.groomingShareHeavy.parse(linkDefaults.groomingShareHeavy),
  ),
  groomingShareOther: fields.groomingShareOther.default(() =>
    fields.groomingShareOther.parse(linkDefaults.groomingShareOther),
  ),
  wage: fields.wage.default(null),
  testVisitPrice: fields.testVisitPrice.default(null),
  testVisitsPerYear: fields.testVisitsPerYear.default(() =>
    fields.testVisitsPerYear.parse(linkDefaults.testVisitsPerYear),
  ),
  locationsPerVisit: fields.locationsPerVisit.default(null),
  shockLayerLives: fields.shockLayerLives.default(null),
  coolingDepth: fields.coolingDepth.default(null),
  coolingsPerYear: fields.coolingsPerYear.default(null),
  waterPrice: fields.waterPrice.default(null),
});

const choice = z
  .discriminatedUnion(
    "kind",
    [
      z.strictObject({ kind: z.literal("off") }),
      z.strictObject({ kind: z.literal("computed") }),
      z.strictObject({ kind: z.literal("stated"), price: plainPrice }),
    ],
    { error: "Choose how the link is set: off, computed or stated." },
  )
  .default({ kind: "off" });

const link = z.strictObject({
  bid: bidReference,
  link: z.enum(linkIds, { error: `Choose what the link prices: ${linkIds.join(", ")}.` }),
  choice,
  own: z.strictObject(parameterFields).partial().default({}),
});

const links = z
  .array(link)
  .max(400, "Expected at most 400 settings of links.")
  .superRefine((settings, context) => {
    for (const [index, setting] of settings.entries()) {
      const first = settings.findIndex((other) => other.bid === setting.bid && other.link === setting.link);
      if (first === index) continue;
      const message = `The link “${setting.link}” is set twice for the bid “${setting.bid}”; expected one setting for each.`;
      context.addIssue({ code: "custom", path: [index, "link"], message });
    }
  });

const baseAlternative = z.strictObject({
  label: label("Say what the bids are compared with, for example “Natural grass”."),
  hoursPerYear: orNotGiven(exactField("yearlyUse", { above: [0, "h/year"], atMost: [8760, "h/year"] })).default(null),
  prices: priceLinesSchema.default([]),
});

const comparedWith = z
  .discriminatedUnion(
    "kind",
    [
      z.strictObject({ kind: z.literal("nothing") }),
      z.strictObject({ kind: z.literal("base-alternative") }),
      z.strictObject({ kind: z.literal("bid"), bid: bidReference }),
    ],
    { error: "Choose what the bids are compared with: nothing, base-alternative or bid." },
  )
  .default({ kind: "nothing" });

/** The owner's side of the money, from text. An empty object is a costing in which nothing is decided yet. */
export const costingSchema = z.strictObject({
  checklist: checklist.default(() => [...startingChecklist]),
  levelling: levelling.default([]),
  linkParameters: parameters.default(() => parameters.parse({})),
  links: links.default([]),
  baseAlternative: baseAlternative.nullable().default(null),
  comparedWith,
  /** Absent in files from before doubts were stated: nothing is said to be uncertain then. */
  uncertainty: uncertaintySchema.default(() => uncertaintySchema.parse({})),
}) satisfies z.ZodType<Costing, unknown>;

/** The costing of a project in which nothing is decided yet: the figures are then those of the bids. */
export const startingCosting: Costing = costingSchema.parse({});
