import { z } from "zod";
import { attachmentLimits, attachmentSchema } from "#lib/attachment";
import { claimSchema, matchMethod, provenanceShape } from "#lib/claim";
import { committeeInFileSchema, committeeSchema, scoresheetSchema } from "#lib/committee";
import { costConventionsSchema, costingSchema, priceLinesSchema, statedTotalSchema } from "#lib/cost";
import { criteriaSchema, headingsSchema, methodWeights, weightMethodSchema } from "#lib/criteria";
import { answersSchema } from "#lib/crosscheck";
import { climateSchema, fieldShapeSchema, useProfileSchema } from "#lib/field";
import { campaignRules, campaignShape } from "#lib/fieldtest";
import { impactRequirementSchema } from "#lib/impact";
import { infillComponentShape, infillSystemOf } from "#lib/infill";
import { ownMaterialSchema } from "#lib/material";
import { peopleSchema } from "#lib/people";
import { arePricesSealed, procedureSchema, sealedPricesSchema } from "#lib/procedure";
import { ownersWordsSchema } from "#lib/recommendation";
import { releaseSchema } from "#lib/release";
import {
  askedSubmittalsSchema,
  clausesSchema,
  issueSchema,
  reportStrayClauses,
  specificationSchema,
} from "#lib/requirement";
import { contractSchema, deliverySchema, registerSchema, submittalSchema } from "#lib/submittal";
import { claimedMeasures, derivedMeasures, evidenceLevels, measures } from "./measures";
import type { Project } from "./model";
import { saysPrice } from "./procedure/says-price";
import { substitutionFields, substitutionSchema } from "./substitution/substitution-schema";

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

/** What clauses and systems can be about: whatever criteria judge. */
const subjects = [...derivedMeasures, ...claimedMeasures];

export const requirementsSchema = z
  .strictObject({
    impact: impactSchema,
    criteria: criteriaSchema(measures, evidenceLevels).max(60, "Expected at most 60 criteria."),
    /** Absent in what was stored before criteria could be weighed under headings. */
    headings: headingsSchema.default([]),
    /** Absent in what was stored before weights could come about in other ways: each criterion has its points then. */
    weighing: weightMethodSchema.default({ kind: "direct" }),
    /** Both absent in what was stored before there was a specification. */
    clauses: clausesSchema(subjects).default([]),
    submittals: askedSubmittalsSchema.default([]),
  })
  .superRefine(({ criteria, headings }, context) => {
    for (const [index, { heading }] of criteria.entries()) {
      if (heading === "" || headings.some(({ id }) => id === heading)) continue;
      const message = `The heading reads “${heading}”, which is not in the list of headings. Expected one of them, or none.`;
      context.addIssue({ code: "custom", path: ["criteria", index, "heading"], message });
    }
  })
  .superRefine(reportStrayClauses)
  .transform((read, context) => {
    const scored = read.criteria.filter(({ valueFunction }) => valueFunction.kind !== "none");
    const found = methodWeights(read.weighing, scored, read.headings);
    if (found.kind === "lacking") {
      context.addIssue({ code: "custom", path: ["weighing"], message: found.message });
      return z.NEVER;
    }
    const { people: peoplesWeights } = found;
    if (read.weighing.kind === "direct" && read.headings.length === 0) return { ...read, peoplesWeights };
    // as points of 100, so that they read like any others
    const weights = new Map(found.shares.map(({ criterion, share }) => [criterion, 100 * share]));
    const criteria = read.criteria.map((one) => ({ ...one, weight: weights.get(one.id) ?? 0 }));
    return { ...read, criteria, peoplesWeights };
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

/** What a bid asks for, by itself: what is sealed where prices are. */
export const pricesSchema = bidSchema.pick({ prices: true, statedTotal: true, statedTotalInWords: true });

/** Tests on the finished field, with the bid whose system was installed; empty where that is none of the project's bids. */
const campaignFields = { installed: z.string().max(64).default(""), ...campaignShape };

/** One campaign of field tests without its id, which the store or the file gives. */
const campaignSchema = z.strictObject(campaignFields).superRefine(campaignRules);

/** What the owner decides about the section. */
export const sectionSettingsSchema = specificationSchema(subjects);

/** The documents that a project is stored as, by kind. */
export const documentSchemas = {
  brief: briefSchema,
  requirements: requirementsSchema,
  bid: bidSchema,
  campaign: campaignSchema,
  costing: costingSchema,
  recommendation: ownersWordsSchema,
  attachment: attachmentSchema,
  specification: sectionSettingsSchema,
  issue: issueSchema,
  people: peopleSchema,
  procedure: procedureSchema,
  committee: committeeSchema,
  scoresheet: scoresheetSchema,
  "sealed-prices": sealedPricesSchema,
  contract: contractSchema,
  submittal: submittalSchema,
  delivery: deliverySchema,
  substitution: substitutionSchema,
  release: releaseSchema,
} as const;

const idInFile = z.string().regex(/^[a-z0-9][a-z0-9-]{0,63}$/, "Expected an id of small letters, digits and hyphens.");

const bidInFile = bidSchema.extend({ id: idInFile });
/** An id that no page has for its name: such a page would stand before what has the id. */
const idBeside = (what: string, part: string, ...pages: readonly string[]) =>
  idInFile.refine((id) => !pages.includes(id), {
    error: ({ input }) => `“${input}” is the name of a page of the ${part}. Give the ${what} another id.`,
  });

const campaignInFile = z
  .strictObject({ id: idBeside("campaign", "field tests", "trace", "worker"), ...campaignFields })
  .superRefine(campaignRules);

const attachmentInFile = attachmentSchema.safeExtend({ id: idBeside("attachment", "attachments", "upload") });

const projectFileFields = z.strictObject({
  format: z.literal("evenfield-project", "This is not a project file: its “format” should read “evenfield-project”."),
  version: z.literal(1, "This version of Evenfield reads project files of version 1."),
  /** Id of the project that the file was saved from; absent in older files. */
  savedFrom: idInFile.optional(),
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
  /** Papers by name and hash; the files themselves are handed over beside this one. Absent in older files. */
  attachments: z
    .array(attachmentInFile)
    .max(attachmentLimits.files, `Expected at most ${attachmentLimits.files} attachments.`)
    .superRefine(
      eachOnce(
        ({ id }) => id,
        "id",
        (id) => `Another attachment has the id “${id}” as well.`,
      ),
    )
    .default([]),
  /** Both absent in files from before there was a specification. */
  specification: sectionSettingsSchema.default(() => sectionSettingsSchema.parse({})),
  issues: z
    .array(issueSchema)
    .max(100, "Expected at most 100 issues of the section.")
    .superRefine(
      eachOnce(
        ({ sequence }) => String(sequence),
        "sequence",
        (sequence) => `Another issue has the number ${sequence} as well.`,
      ),
    )
    .default([]),
  /** These four absent in files from before people, stages and committees were kept. */
  people: peopleSchema.shape.people,
  procedure: procedureSchema.default(() => procedureSchema.parse({})),
  /** With the sheets that are open; what is sealed stays where it is. */
  committee: committeeInFileSchema.default(() => committeeInFileSchema.parse({})),
  /** These three absent in files from before submittals were kept. */
  contract: contractSchema.default(() => contractSchema.parse({})),
  submittals: registerSchema.default([]),
  delivery: deliverySchema.default(() => deliverySchema.parse({})),
  substitutions: z
    .array(z.strictObject({ id: idInFile, ...substitutionFields }))
    .max(100, "Expected at most 100 requests for substitution.")
    .superRefine(
      eachOnce(
        ({ id }) => id,
        "id",
        (id) => `Another request has the id “${id}” as well.`,
      ),
    )
    .default([]),
});

/** A whole project as one file: text as entered, in one format, to be read by any later version. */
export const projectFileSchema = projectFileFields.superRefine(({ procedure, bids }, context) => {
  if (!arePricesSealed(procedure)) return;
  for (const [index, bid] of bids.entries()) {
    if (!saysPrice(bid)) continue;
    const message = `The prices of this project are sealed, and bid ${bid.letter} shows prices. Take them out of the file.`;
    context.addIssue({ code: "custom", path: ["bids", index, "prices"], message });
  }
}) satisfies z.ZodType<Project, unknown>;

/** A project as text: what forms, the database and files hold. */
export type ProjectFile = z.input<typeof projectFileSchema>;
export type BriefText = z.input<typeof briefSchema>;
export type RequirementsText = z.input<typeof requirementsSchema>;
export type BidText = z.input<typeof bidSchema>;
export type CostingText = z.input<typeof costingSchema>;
export type OwnersWordsText = z.input<typeof ownersWordsSchema>;
export type CampaignText = z.input<typeof campaignSchema>;
export type AttachmentText = z.input<typeof attachmentSchema>;
