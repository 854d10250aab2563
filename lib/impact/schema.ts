import { z } from "zod";
import { exactField, inUnit } from "#lib/quantity";
import { depthLaws } from "./depth-law";
import { groomings } from "./spread/grooming";
import { installedSpreads } from "./spread/installed-spread";

const longestHorizon = 40;
const mostLocations = 100;

const isWhole = (number: number, most: number): boolean => Number.isInteger(number) && number >= 1 && number <= most;

const locationsField = exactField("count")
  .transform(({ value }): number => value)
  .refine((count) => isWhole(count, mostLocations), {
    message: `Give the test locations on one field as a whole number from 1 to ${mostLocations}.`,
  });

const yearsField = exactField("time")
  .transform(({ value }) => inUnit("time", value, "year"))
  .refine((years) => isWhole(years, longestHorizon), {
    message: `Give the years to look ahead as whole years from 1 to ${longestHorizon}, for instance “12 years”.`,
  });

const levelField = exactField("impactLevel", { above: [0, "g"] });

const chanceField = exactField("fraction", { atLeast: [50, "%"], below: [100, "%"] });

const depthSensitivitySchema = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("common-practice") }),
  z.strictObject({
    kind: z.literal("owners-value"),
    perDepth: exactField("depthSensitivity", { above: [0, "1/in"] }),
    reason: z.string().trim().min(1, "Say where the owner's sensitivity to depth loss comes from."),
  }),
]);

const reasonField = (message: string) => z.string().trim().min(1, message).max(500, "Expected at most 500 characters.");

const spreadSchema = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("by-class"), grooming: z.enum(groomings) }),
  z.strictObject({
    kind: z.literal("depth-deviation"),
    deviation: exactField("length", { atLeast: [0, "in"], atMost: [3, "in"] }),
    reason: reasonField("Say where the spread of the infill depth comes from."),
  }),
  z.strictObject({
    kind: z.literal("level-deviation"),
    share: exactField("fraction", { atLeast: [0, "%"], atMost: [100, "%"] }),
    reason: reasonField("Say where the spread of the level comes from."),
  }),
]);

const shockLayerSchema = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("as-soft-as-the-infill") }),
  z.strictObject({
    kind: z.literal("owners-value"),
    factor: exactField("fraction", { above: [0, "%"], atMost: [100, "%"] }),
    reason: reasonField("Say where the factor for a shock layer comes from."),
  }),
]);

const resetYearField = exactField("count")
  .transform(({ value }): number => value)
  .refine((year) => isWhole(year, longestHorizon), {
    message: `Give the year of use as a whole number from 1 to ${longestHorizon}.`,
  });

const resetSchema = z.strictObject({
  year: resetYearField,
  undone: exactField("fraction", { atLeast: [0, "%"], atMost: [100, "%"] }),
  /** Absent in what was stored while the note named the line in words. */
  priceLine: z.string().trim().max(300, "Expected at most 300 characters.").default(""),
  note: z.string().trim().max(500, "Expected at most 500 characters.").default(""),
});

/** Absent in what was stored before; what is left out is taken from `outlookChoices`. */
const ownersOutlookSchema = z.strictObject({
  spread: spreadSchema.optional(),
  wantedChance: chanceField.optional(),
  installedSpread: z.enum(installedSpreads).optional(),
  law: z.enum(depthLaws).optional(),
  shockLayer: shockLayerSchema.optional(),
  resets: z
    .array(resetSchema)
    .max(longestHorizon, `Expected at most ${longestHorizon} resets.`)
    .superRefine((resets, context) => {
      for (const [index, { year }] of resets.entries()) {
        if (resets.findIndex((other) => other.year === year) === index) continue;
        const message = `Another reset stands in year ${year} as well. Put both into one.`;
        context.addIssue({ code: "custom", path: [index, "year"], message });
      }
    })
    .optional(),
});

/** The impact requirement as typed, every figure as text with its unit, into the model. */
export const impactRequirementSchema = z
  .strictObject({
    method: z.string().trim().min(1, "Name the test method that the levels belong to."),
    targetWindow: z.strictObject({ low: levelField, high: levelField }),
    limit: levelField,
    limitSource: z
      .string()
      .trim()
      .min(1, "Say where the limit comes from: a standard with its edition, a guideline or the contract."),
    testLocations: locationsField,
    horizonYears: yearsField,
    ownersDrift: z.strictObject({
      low: exactField("rateOfChange"),
      likely: exactField("rateOfChange"),
      high: exactField("rateOfChange"),
    }),
    chanceLevel: chanceField,
    depthSensitivity: depthSensitivitySchema,
    outlook: ownersOutlookSchema.optional(),
  })
  .superRefine(({ targetWindow, limit, ownersDrift }, context) => {
    const complain = (path: string[], message: string) => context.addIssue({ code: "custom", path, message });
    if (targetWindow.low.value >= targetWindow.high.value) {
      complain(
        ["targetWindow", "high"],
        `The target window runs from ${targetWindow.low.asEntered} to ${targetWindow.high.asEntered}; its upper end has to be the higher one.`,
      );
    }
    if (targetWindow.high.value > limit.value) {
      complain(
        ["targetWindow", "high"],
        `The target window reaches ${targetWindow.high.asEntered}, above the limit of ${limit.asEntered}. Lower the one or raise the other.`,
      );
    }
    if (ownersDrift.low.value > ownersDrift.likely.value) {
      complain(
        ["ownersDrift", "likely"],
        orderMessage("likely", ownersDrift.likely.asEntered, "low", ownersDrift.low.asEntered),
      );
    }
    if (ownersDrift.likely.value > ownersDrift.high.value) {
      complain(
        ["ownersDrift", "high"],
        orderMessage("high", ownersDrift.high.asEntered, "likely", ownersDrift.likely.asEntered),
      );
    }
  });

const orderMessage = (name: string, text: string, lesser: string, lesserText: string): string =>
  `The ${name} yearly change, ${text}, is less than the ${lesser} one, ${lesserText}. Put them in rising order.`;
