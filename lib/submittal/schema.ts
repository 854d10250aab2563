import { z } from "zod";
import { claimSchema, matchMethod, provenanceShape, readEdition } from "#lib/claim";
import { idField, keptText } from "#lib/entry";
import { listed } from "#lib/figure";
import { exactField, measured, orNotGiven, plainDateField } from "#lib/quantity";
import { type SubmittalKind, submittalKinds } from "#lib/requirement";
import type { WeighTicket } from "./delivered-infill";
import type { Contract, Delivery, RegisterItem } from "./model";
import { usualReviewDays } from "./register";
import type { LaboratoryReport } from "./report-checks/model";
import { type ReviewAction, reviewActions } from "./review-actions";

const kept = (what: string, most = 300) => keptText(what, most);

const id = idField("sample-1");

const kinds = Object.keys(submittalKinds) as [SubmittalKind, ...SubmittalKind[]];
const actions = Object.keys(reviewActions) as [ReviewAction, ...ReviewAction[]];

/** Reports every entry whose id another entry has already. */
const eachIdOnce =
  (what: string) =>
  (entries: readonly Readonly<{ id: string }>[], context: Pick<z.RefinementCtx, "addIssue">): void => {
    for (const [index, { id }] of entries.entries())
      if (entries.findIndex((other) => other.id === id) !== index)
        context.addIssue({
          code: "custom",
          path: [index, "id"],
          message: `Another ${what} has the id “${id}” as well.`,
        });
  };

/** Values of one submittal: claims like those of a bid, so that the two can be held against each other. */
const submittedValuesSchema = z
  .array(claimSchema)
  .max(300, "Expected at most 300 values in one submittal.")
  .superRefine(eachIdOnce("value"));

const methodField = z.string().transform((read, context) => {
  const method = matchMethod(read);
  if (method !== null) return method === "not-stated" ? null : method;
  context.addIssue({
    code: "custom",
    message: `“${read}” is not a test method in the register. Expected one such as “ASTM F1936”, or nothing.`,
  });
  return z.NEVER;
});

/** “1-3, 5” → 1, 2, 3, 5. */
const pagesField = z.string().transform((text, context): readonly number[] => {
  const parts = text
    .split(",")
    .map((part) => part.trim())
    .filter((part) => part !== "");
  const pages = parts.flatMap((part) => {
    const [, from, to = from] = /^(\d{1,4})(?:\s*[-–]\s*(\d{1,4}))?$/.exec(part) ?? [];
    const [first, last] = [Number(from), Number(to)];
    if (!(first >= 1 && last >= first && last <= 2000)) return [Number.NaN];
    return Array.from({ length: last - first + 1 }, (_, index) => first + index);
  });
  if (!pages.some(Number.isNaN)) return pages;
  context.addIssue({ code: "custom", message: `The pages read “${text}”. Expected pages such as “1-3, 5”.` });
  return z.NEVER;
});

/** What the reviewer reads off a laboratory report. */
export const laboratoryReportSchema = z.strictObject({
  laboratory: provenanceShape.laboratory,
  accreditation: provenanceShape.accreditation,
  accreditationNumber: kept("the accreditation number", 100),
  build: provenanceShape.build,
  date: provenanceShape.date,
  method: methodField.prefault(""),
  edition: kept("an edition", 100).transform(readEdition),
  specimen: kept("the specimen"),
  expectedSpecimen: kept("the specimen"),
  pagesStated: orNotGiven(
    z.string().transform((text, context) => {
      if (/^\s*\d{1,4}\s*$/.test(text) && Number(text) >= 1) return Number(text);
      context.addIssue({
        code: "custom",
        message: `The number of pages reads “${text}”. Expected a whole number from 1.`,
      });
      return z.NEVER;
    }),
  ).prefault(""),
  pagesPresent: pagesField.prefault(""),
  averages: z
    .array(
      z.strictObject({
        label: kept("what was measured"),
        readings: z.array(z.string().trim().max(40)).min(1).max(200),
        average: z.string().trim().max(40),
      }),
    )
    .max(200, "Expected at most 200 averages.")
    .default([]),
}) satisfies z.ZodType<LaboratoryReport, unknown>;

const submittedReportSchema = laboratoryReportSchema.extend({
  id,
  document: kept("a document"),
  page: kept("a page", 100),
  clause: kept("a clause", 100),
});

const versionSchema = z
  .strictObject({
    received: plainDateField,
    reviewer: kept("the reviewer"),
    values: submittedValuesSchema.default([]),
    reports: z
      .array(submittedReportSchema)
      .max(60, "Expected at most 60 reports in one submittal.")
      .superRefine(eachIdOnce("report"))
      .default([]),
    remarks: z.record(z.string().max(200), kept("a comment", 5000)).default({}),
    action: z
      .enum(["", ...actions], { error: `Expected an answer: ${listed(actions, "or")}; empty while in review.` })
      .default(""),
    answered: orNotGiven(plainDateField).prefault(""),
  })
  .superRefine(({ received, action, answered }, context) => {
    if (answered !== null && answered < received)
      context.addIssue({
        code: "custom",
        path: ["answered"],
        message: `The answer is dated ${answered}, before the ${received} on which it came in.`,
      });
    if (answered !== null && action === "")
      context.addIssue({
        code: "custom",
        path: ["action"],
        message: "There is a date of an answer and no answer. Choose one, or empty the date.",
      });
  })
  .transform(({ action, ...version }) => ({ ...version, action: action === "" ? null : action }));

const submittalFields = {
  item: z
    .string()
    .trim()
    .min(1, "Name what is to be handed in.")
    .max(300, "Expected a name of at most 300 characters."),
  kind: z.enum(kinds, { error: `Expected a kind of submittal: ${listed(kinds, "or")}.` }),
  from: kept("the line of the specification", 200),
  clauses: z.array(z.string().max(100)).max(60, "Expected at most 60 clauses.").default([]),
  due: orNotGiven(plainDateField).prefault(""),
  versions: z.array(versionSchema).max(40, "Expected at most 40 versions.").default([]),
} as const;

type Refinement = Pick<z.RefinementCtx, "addIssue">;

function inOrder({ versions }: Pick<RegisterItem, "versions">, context: Refinement): void {
  const unordered = versions.findIndex(
    (version, at) => at > 0 && version.received < (versions[at - 1]?.received ?? ""),
  );
  if (unordered > 0)
    context.addIssue({
      code: "custom",
      path: ["versions", unordered, "received"],
      message: "A later version can’t have come in before the one ahead of it.",
    });
}

/** One line of the register with what came, without its id, which the store or the file gives. Versions in their order. */
export const submittalSchema = z.strictObject(submittalFields).superRefine(inOrder);

/** The register as files hold it. */
export const registerSchema = z
  .array(z.strictObject({ id, ...submittalFields }).superRefine(inOrder))
  .max(400, "Expected at most 400 lines in the register.")
  .superRefine(eachIdOnce("line")) satisfies z.ZodType<readonly RegisterItem[], unknown>;

export type SubmittalText = z.input<typeof submittalSchema>;

const wholeDays = z.string().transform((text, context) => {
  if (/^\s*\d{1,3}\s*$/.test(text) && Number(text) >= 1) return Number(text);
  context.addIssue({
    code: "custom",
    message: `The number of days reads “${text}”. Expected a whole number from 1 to 999.`,
  });
  return z.NEVER;
});

/** What holds after the award. Everything may be left out: it is then as usual. */
export const contractSchema = z.strictObject({
  bid: z.string().max(64).default(""),
  sameWithin: exactField("fraction", { atLeast: [0, "%"], atMost: [50, "%"] }).prefault("2 %"),
  reviewDays: wholeDays.prefault(String(usualReviewDays)),
  measured: z
    .array(claimSchema)
    .max(300, "Expected at most 300 measured values.")
    .superRefine(eachIdOnce("value"))
    .default([]),
}) satisfies z.ZodType<Contract, unknown>;

export type ContractText = z.input<typeof contractSchema>;

const share = exactField("fraction", { atLeast: [0, "%"], below: [100, "%"] });

const bagsField = orNotGiven(
  z.string().transform((text, context) => {
    if (/^\s*\d{1,5}\s*$/.test(text) && Number(text) >= 1) return Number(text);
    context.addIssue({
      code: "custom",
      message: `The number of bags reads “${text}”. Expected a whole number from 1; empty for a truck.`,
    });
    return z.NEVER;
  }),
).prefault("");

/** Tickets of trucks or bags: “46,200 lb”, or “25” bags of “2,000 lb”; moisture “4 %” of the wet or the dry mass, or nothing. */
export const weighTicketsSchema = z
  .array(
    z
      .strictObject({
        number: kept("the number of the ticket", 60),
        component: z.string().trim().min(1, "Name the infill component.").max(100),
        bags: bagsField,
        mass: exactField("mass", { above: [0, "lb"] }),
        moisture: orNotGiven(share).prefault(""),
        moistureOf: z.enum(["wet mass", "dry mass"]).default("wet mass"),
      })
      .transform(
        ({ component, bags, mass, moisture, moistureOf }): WeighTicket => ({
          component,
          mass: measured("mass", mass.value * (bags ?? 1)),
          moisture: moisture === null ? null : { share: moisture.value, of: moistureOf },
        }),
      ),
  )
  .max(2000, "Expected at most 2,000 tickets.");

const lengthField = exactField("length", { atLeast: [0, "mm"], atMost: [10, "m"] });

/** @source tolerances: common practice, no source; the contract has its own */
const placedSchema = (wanted: string, tolerance: string) =>
  z
    .strictObject({
      wanted: lengthField.prefault(wanted),
      tolerance: lengthField.prefault(tolerance),
      readings: z
        .array(z.strictObject({ id, where: kept("the place"), reading: lengthField, note: kept("a note", 1000) }))
        .max(2000, "Expected at most 2,000 readings.")
        .superRefine(eachIdOnce("reading"))
        .default([]),
    })
    .prefault({});

/** What was delivered and how it was placed. Everything may be left out. */
export const deliverySchema = z.strictObject({
  tickets: weighTicketsSchema.default([]),
  leftOver: z
    .array(z.strictObject({ component: z.string().max(100), mass: exactField("mass", { atLeast: [0, "lb"] }) }))
    .max(20, "Expected at most 20 components.")
    .default([]),
  massTolerance: share.prefault("5 %"),
  mostMoisture: share.prefault("6 %"),
  depthWanted: orNotGiven(lengthField).prefault(""),
  averageTolerance: lengthField.prefault("1/8 in"),
  placeTolerance: lengthField.prefault("1/4 in"),
  depths: z.array(lengthField).max(2000, "Expected at most 2,000 readings.").default([]),
  straightedge: kept("the straightedge", 60).prefault("10 ft"),
  placed: z
    .strictObject({
      seams: placedSchema("0 in", "1/16 in"),
      lines: placedSchema("4 in", "1/8 in"),
      planarity: placedSchema("0 in", "1/4 in"),
    })
    .prefault({}),
}) satisfies z.ZodType<Delivery, unknown>;

export type DeliveryText = z.input<typeof deliverySchema>;
