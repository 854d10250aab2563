import { z } from "zod";
import { idField, keptText } from "#lib/entry";
import { listed } from "#lib/figure";
import { oncePer } from "#lib/once";
import { type Condition, explainCondition, parseCondition } from "./condition";
import { type Edition, readEdition } from "./edition";
import { type EvidenceLevel, evidenceLevels, matchEvidence } from "./evidence";
import { matchMethod, matchProperty, methodsLike, propertiesLike, propertyOf } from "./find";
import type { StatedMethod } from "./methods";
import { type Claim, claimFields } from "./model";
import type { PropertyId } from "./properties/properties";
import { explainReportDate, parseReportDate, type ReportDate } from "./report-date";
import {
  type Accreditation,
  accreditations,
  matchAccreditation,
  matchTestedBuild,
  type TestedBuild,
  testedBuilds,
} from "./report-details";
import { parseSpread } from "./spread";
import { parseFieldCount } from "./tested-fields";
import { explainValue, parseValue } from "./value";

type Refinement = Readonly<{ addIssue: (issue: { code: "custom"; message: string; path?: PropertyKey[] }) => void }>;

/** Reports a sentence for the field at hand and gives up on its value. */
function refuse(context: Refinement, message: string): never {
  context.addIssue({ code: "custom", message });
  return z.NEVER;
}

const either = (names: readonly string[]): string => listed(names, "or");

const evidenceNames = either(evidenceLevels.map(({ id }) => id));

/** Longest texts, in characters. */
const limits = { name: 300, page: 100, label: 60, figure: 200, words: 20_000, note: 5000 };

const id = idField("pile-height-1");

/** A property by its id or label. */
const propertyField = z
  .string({ error: "Expected a property as text." })
  .meta({ description: "Id or label of a property of the catalogue, for instance pile-height." })
  .transform((read, context): PropertyId => {
    const property = matchProperty(read);
    if (property !== null) return property;
    if (read.trim() === "") return refuse(context, "Name the property, for instance “Pile height”.");
    const near = propertiesLike(read);
    const hint =
      near.length > 0 ? `Did you mean ${either(near)}?` : "Choose one of the list, for instance “Pile height”.";
    return refuse(context, `“${read}” is not a property in the catalogue. ${hint}`);
  });

/** A test method by its id or designation; empty or "not stated" where the bid names none. */
const methodField = z
  .string({ error: "Expected a test method as text." })
  .meta({ description: "Id or designation of a test method, for instance ASTM F1936; empty where none is stated." })
  .transform((read, context): StatedMethod => {
    const method = matchMethod(read);
    if (method !== null) return method;
    const near = methodsLike(read);
    const hint = near.length > 0 ? `Did you mean ${either(near)}? ` : "";
    return refuse(
      context,
      `“${read}” is not a test method in the register. ${hint}If the bid names no more than this, write “not stated” and keep its words.`,
    );
  });

/** "new", "year 5", "after 20,000 cycles", "not stated" or other words. */
const conditionField = z
  .string({ error: "Expected a condition as text." })
  .meta({
    description:
      "State of the surface: new, year 5, after 2,000 h of use, after 20,000 cycles, with wet or dry, a temperature and less infill behind a comma, not stated, or other words.",
  })
  .transform((read, context): Condition => {
    const parsed = parseCondition(read);
    return parsed.ok ? parsed.value : refuse(context, explainCondition(parsed.problem));
  });

/** A level of evidence by its id or label. */
const evidenceField = z
  .string({ error: "Expected the evidence as text." })
  .meta({ description: `How well the claim is shown: ${evidenceNames}.` })
  .transform((read, context): EvidenceLevel => {
    const level = matchEvidence(read);
    if (level !== null) return level;
    const labels = either(evidenceLevels.map(({ label }) => `“${label}”`));
    return refuse(context, `“${read}” is not a level of evidence. Expected ${labels}.`);
  });

/** When a report was made: a day, a month or a year; empty where nobody says. */
const dateField = z
  .string({ error: "Expected a date as text." })
  .meta({ description: "Date of the test report: 2024-05-03, 2024-05, 2024, May 2024, May 3, 2024 or 3 May 2024." })
  .transform((read, context): ReportDate | null => {
    const parsed = parseReportDate(read);
    return parsed.ok ? parsed.value : refuse(context, explainReportDate(parsed.problem));
  });

/** One of a few named answers by id or label; empty stands for not stated. */
const namedField = <Id extends string>(
  what: string,
  list: readonly Readonly<{ id: Id; label: string }>[],
  match: (text: string) => Id | null,
) =>
  z
    .string({ error: `Expected the ${what} as text.` })
    .meta({ description: `One of ${either(list.map(({ id }) => id))}.` })
    .transform((read, context): Id => {
      const found = match(read);
      if (found !== null) return found;
      const labels = either(list.map(({ label }) => `“${label}”`));
      return refuse(context, `“${read}” was not read as the ${what}. Expected ${labels}.`);
    });

/** The edition of the method as the report names it; the year is read where the text shows one. */
const editionField = keptText("an edition", limits.page)
  .meta({ description: "Edition of the method as the report names it, for instance F1936-19 or 2019." })
  .transform((read): Edition => readEdition(read));

/** How many fields a figure stands for; empty where nobody says. */
const fieldCountField = z
  .string({ error: "Expected the number of fields as text." })
  .meta({ description: "How many fields the figure stands for, for instance 4 for a mean over four; may be empty." })
  .transform((read, context): number | null => {
    const parsed = parseFieldCount(read);
    return parsed.ok ? parsed.value : refuse(context, parsed.problem);
  });

/** Where a claim is written and what shows it; other rooms spread it into their own objects. */
export const provenanceShape = {
  evidence: evidenceField,
  document: keptText("a document", limits.name),
  page: keptText("a page", limits.page),
  words: keptText("the bid's words", limits.words),
  date: dateField.prefault(""),
  laboratory: keptText("a laboratory", limits.name),
  accreditation: namedField<Accreditation>("accreditation", accreditations, matchAccreditation).prefault("not-stated"),
  build: namedField<TestedBuild>("tested build", testedBuilds, matchTestedBuild).prefault("not-stated"),
};

const claimShape = z.strictObject(
  {
    id,
    property: propertyField,
    figure: keptText("a figure", limits.figure),
    method: methodField.prefault("not stated"),
    condition: conditionField.prefault("not stated"),
    ...provenanceShape,
    note: keptText("a note", limits.note),
    edition: editionField,
    testField: keptText("the field tested", limits.label).meta({
      description: "A short name of the field that the figure was measured on, the same for all its figures.",
    }),
    fieldCount: fieldCountField.prefault(""),
    spread: keptText("a standard deviation", limits.figure).meta({
      description:
        "Standard deviation of single results as the report states it, for instance 6 g or 5 %; may be empty.",
    }),
  },
  {
    error: ({ code, keys }) =>
      code === "unrecognized_keys" && Array.isArray(keys)
        ? `A claim has no field ${keys.map((key) => `“${key}”`).join(", ")}. Expected id, ${claimFields.join(", ")}.`
        : "Expected a claim with its fields.",
  },
);

/** The figure is checked as soon as the property is known, so that all problems of a claim show at once. */
const checkable = z.object({ property: propertyField, figure: z.string(), words: z.string() });
const figureCheckable = ({ value }: Readonly<{ value: unknown }>): boolean => checkable.safeParse(value).success;

type Written = Readonly<{ property: PropertyId; figure: string; words: string; spread?: string }>;

/**
 * The figure and its scatter, read once for the check and for what comes of it. While the figure does not read, its own
 * sentence is enough.
 */
const readFigures = oncePer(({ property, figure, words, spread = "" }: Written) => {
  const value = parseValue(propertyOf(property), figure, words);
  return { value, spread: value.ok ? parseSpread(propertyOf(property), figure, spread) : null };
});

/** A claim as forms and files hold it → the claim with its figure read in the dimension of its property. */
export const claimSchema = claimShape
  .superRefine(
    (written, context) => {
      const { value, spread } = readFigures(written);
      if (!value.ok) context.addIssue({ code: "custom", path: ["figure"], message: explainValue(value.problem) });
      if (spread?.ok === false) context.addIssue({ code: "custom", path: ["spread"], message: spread.problem });
    },
    { when: figureCheckable },
  )
  .transform((written): Claim => {
    const { value, spread } = readFigures(written);
    if (!value.ok) throw new RangeError(explainValue(value.problem));
    if (!spread?.ok) throw new RangeError(spread?.problem);
    const { figure: _, ...rest } = written;
    return { ...rest, value: value.value, spread: spread.value };
  });

/** What the form and the file hold. */
export type ClaimInput = z.input<typeof claimSchema>;
