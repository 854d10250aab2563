import { z } from "zod";
import { claimSchema, matchMethod, provenanceShape } from "#lib/claim";
import { costConventionsSchema, costingSchema, priceLinesSchema, statedTotalSchema } from "#lib/cost";
import { criteriaSchema, methodWeights, weightMethodSchema } from "#lib/criteria";
import { answersSchema } from "#lib/crosscheck";
import { climateSchema, fieldShapeSchema, useProfileSchema } from "#lib/field";
import { campaignRules, campaignShape } from "#lib/fieldtest";
import { impactRequirementSchema } from "#lib/impact";
import { infillComponentShape, infillSystemOf } from "#lib/infill";
import { ownMaterialSchema } from "#lib/material";
import { ownersWordsSchema } from "#lib/recommendation";
import { evidenceLevels, measures } from "./measures";
import type { Project } from "./model";

const text = (message: string) => z.string().trim().min(1, message).max(200, "Expected at most 200 characters.");
const longText = z.string().trim().max(5000, "Expected at most 5,000 characters.");

/** Reports every entry whose key another entry has already. */
const eachOnce =
  <T>(key: (entry: T) => string, field: string, message: (key: string) => string) =>
  (entries: readonly T[], context: Pick<z.RefinementCtx, "addIssue">): void => {
    for (const [index, entry] of entries.entries()) {
      if (entries.findIndex((other) => key(other) === key(entry)) === index) continue;
      context.addIssue({ code: "custom", path: [index, field], message: message(key(entry)) });
    }
  };

export const briefSchema = z.strictObject({
  name: text("Name the project."),
  owner: text("Name the owner."),
  purpose: longText,
  notice: z.string().trim().max(200),
  field: fieldShapeSchema,
  use: useProfileSchema,
  climate: climateSchema,
  money: costConventionsSchema,
  ownMaterials: z
    .array(ownMaterialSchema)
    .max(40, "Expected at most 40 materials.")
    .superRefine(
      eachOnce(
        ({ id }) => id,
        "id",
        (id) => `Another material has the id “${id}” as well.`,
      ),
    ),
});

const impactSchema = impactRequirementSchema.superRefine(({ method }, context) => {
  const known = matchMethod(method);
  if (known !== null && known !== "not-stated") return;
  const message = `“${method}” is not a test method in the register. Expected one for impact, for instance “f355-a”.`;
  context.addIssue({ code: "custom", path: ["method"], message });
});

export const requirementsSchema = z
  .strictObject({
    impact: impactSchema,
    criteria: criteriaSchema(measures, evidenceLevels).max(60, "Expected at most 60 criteria."),
    /** Absent in what was stored before weights could come about in other ways: each criterion has its points then. */
    weighing: weightMethodSchema.default({ kind: "direct" }),
  })
  .transform((read, context) => {
    const scored = read.criteria.filter(({ valueFunction }) => valueFunction.kind !== "none");
    const nameOf = (id: string) => scored.find((criterion) => criterion.id === id)?.label ?? id;
    const found = methodWeights(read.weighing, scored, nameOf);
    if (found.kind === "lacking") {
      context.addIssue({ code: "custom", path: ["weighing"], message: found.message });
      return z.NEVER;
    }
    if (read.weighing.kind === "direct") return read;
    // as points of 100, so that they read like any others
    const weights = new Map(found.shares.map(({ criterion, share }) => [criterion, 100 * share]));
    return { ...read, criteria: read.criteria.map((one) => ({ ...one, weight: weights.get(one.id) ?? 0 })) };
  });

const infillSchema = infillSystemOf(z.strictObject({ ...infillComponentShape.shape, ...provenanceShape }));

/** One bid without its id, which the store or the file gives. */
export const bidSchema = z.strictObject({
  letter: z
    .string()
    .trim()
    .regex(/^[A-Z][A-Z0-9]?$/, "Give the bid a letter, for instance “A”."),
  bidder: text("Name the bidder."),
  system: text("Describe the kind of surface in a few neutral words."),
  infill: infillSchema,
  claims: z
    .array(claimSchema)
    .max(300, "Expected at most 300 claims in one bid.")
    .superRefine(
      eachOnce(
        ({ id }) => id,
        "id",
        (id) => `Another claim has the id “${id}” as well.`,
      ),
    ),
  prices: priceLinesSchema,
  /** Both absent in what was stored before the sums of bid forms were held against their lines. */
  statedTotal: statedTotalSchema,
  statedTotalInWords: z.string().trim().max(300, "Expected at most 300 characters.").default(""),
  /** Absent in what was stored before answers were recorded. */
  answers: answersSchema.default([]),
});

/** Tests on the finished field, with the bid whose system was installed; empty where that is none of the project's bids. */
const campaignFields = { installed: z.string().max(64).default(""), ...campaignShape };

/** One campaign of field tests without its id, which the store or the file gives. */
const campaignSchema = z.strictObject(campaignFields).superRefine(campaignRules);

/** The documents that a project is stored as, by kind. */
export const documentSchemas = {
  brief: briefSchema,
  requirements: requirementsSchema,
  bid: bidSchema,
  campaign: campaignSchema,
  costing: costingSchema,
  recommendation: ownersWordsSchema,
} as const;

const idInFile = z.string().regex(/^[a-z0-9][a-z0-9-]{0,63}$/, "Expected an id of small letters, digits and hyphens.");

const bidInFile = bidSchema.extend({ id: idInFile });
/** Pages of the field tests that have these names would stand before such a campaign. */
const namesOfPages = ["trace", "worker"];

const campaignId = idInFile.refine((id) => !namesOfPages.includes(id), {
  error: ({ input }) => `“${input}” is the name of a page of the field tests. Give the campaign another id.`,
});

const campaignInFile = z.strictObject({ id: campaignId, ...campaignFields }).superRefine(campaignRules);

/** A whole project as one file: text as entered, in one format, to be read by any later version. */
export const projectFileSchema = z.strictObject({
  format: z.literal("evenfield-project", "This is not a project file: its “format” should read “evenfield-project”."),
  version: z.literal(1, "This version of Evenfield reads project files of version 1."),
  brief: briefSchema,
  requirements: requirementsSchema,
  bids: z
    .array(bidInFile)
    .max(40, "Expected at most 40 bids.")
    .superRefine(
      eachOnce(
        ({ id }) => id,
        "id",
        (id) => `Another bid has the id “${id}” as well.`,
      ),
    )
    .superRefine(
      eachOnce(
        ({ letter }) => letter,
        "letter",
        (letter) => `Another bid has the letter ${letter} as well.`,
      ),
    ),
  /** Absent in files from before field tests were recorded. */
  campaigns: z
    .array(campaignInFile)
    .max(60, "Expected at most 60 test campaigns.")
    .superRefine(
      eachOnce(
        ({ id }) => id,
        "id",
        (id) => `Another campaign has the id “${id}” as well.`,
      ),
    )
    .default([]),
  /** Absent in files from before levelling was recorded: nothing is decided then. */
  costing: costingSchema.default(() => costingSchema.parse({})),
  /** Absent in files from before people could write into the board's paper: all of it is generated then. */
  recommendation: ownersWordsSchema.prefault({}),
}) satisfies z.ZodType<Project, unknown>;

/** A project as text: what forms, the database and files hold. */
export type ProjectFile = z.input<typeof projectFileSchema>;
export type BriefText = z.input<typeof briefSchema>;
export type RequirementsText = z.input<typeof requirementsSchema>;
export type BidText = z.input<typeof bidSchema>;
export type CostingText = z.input<typeof costingSchema>;
export type OwnersWordsText = z.input<typeof ownersWordsSchema>;
export type CampaignText = z.input<typeof campaignSchema>;
