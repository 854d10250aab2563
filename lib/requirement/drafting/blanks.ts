import { methodOf } from "#lib/claim";
import { inSentence } from "#lib/figure";
import type { Requirement } from "../model";
import type { SectionFacts } from "./section-facts";

/** What the text leaves to the owner and no other page asks for. `usual` is common practice without a source, or empty. */
export const sectionBlanks = {
  "substitution-days": {
    asked: "days before bids are due",
    label: "Requests for substitution: days before bids are due",
    usual: "10 days",
  },
  "adhesive-temperature": {
    asked: "lowest temperature for adhesive work",
    label: "Lowest temperature for adhesive work",
    usual: "40 °F",
  },
  "warranty-limits": {
    asked: "limits that hold through the warranty, each with its method",
    label: "Limits that hold through the warranty, each with its method",
    usual: "",
  },
  "defect-look": {
    asked: "days to look at a reported defect",
    label: "Days within which the warrantor looks at a reported defect",
    usual: "5 days",
  },
  "defect-mend": {
    asked: "days to mend a reported defect",
    label: "Days within which the warrantor mends a reported defect",
    usual: "20 days",
  },
  "flood-test-places": {
    asked: "number of places for flood tests of the base",
    label: "Places for flood tests of the base",
    usual: "3",
  },
  "base-drainage": {
    asked: "least drainage rate of the base",
    label: "Least drainage rate of the base",
    usual: "",
  },
  "depth-places": {
    asked: "number of places for depth readings",
    label: "Places at which infill depth is read at completion",
    usual: "40",
  },
  "care-months": {
    asked: "time of care by the Contractor",
    label: "Care by the Contractor after completion",
    usual: "12 months",
  },
} as const;

export type BlankId = keyof typeof sectionBlanks;

/** What the owner has filled in; a blank that is not there, or is empty, stays one. */
export type FilledIn = Readonly<Partial<Record<BlankId, string>>>;

/** What a clause leaves open, each a field of the clause. */
const clauseBlanks = {
  edition: (designation: string, name: string) => `edition of ${designation} for ${name}`,
  acceptance: (_: string, name: string) => `test of ${name} at completion, or none with the reason`,
  remedy: (_: string, name: string) => `remedy where ${name} is missed`,
} as const;

export type ClauseBlank = keyof typeof clauseBlanks;

export const clauseAsks = (field: ClauseBlank, { label, method }: Requirement): string =>
  clauseBlanks[field](method === null ? "" : methodOf(method).designation, inSentence(label));

/** What the brief may leave open. */
export const factBlanks = {
  project: "name of the project",
  owner: "name of the owner",
  field: "size of the field",
  hoursOfUse: "hours of use a year",
  climate: "climate of the site",
  studyPeriod: "study period",
  discountRate: "discount rate",
  baseDate: "base date",
  costTiming: "timing of yearly costs",
  testPoints: "number of impact test points",
  outlook: "how the impact level of later years is worked out",
} as const satisfies Readonly<Record<keyof SectionFacts, string>>;

/** Where a blank of the text is filled in. */
export type BlankPlace = Readonly<
  | { kind: "section"; id: BlankId }
  | { kind: "clause"; requirement: string; field: ClauseBlank }
  | { kind: "fact"; fact: keyof SectionFacts }
>;

const entries = <K extends string, V>(record: Readonly<Record<K, V>>) => Object.entries(record) as [K, V][];

/** The place at which each blank is filled in, by what it asks for. */
export const blankPlaces = (requirements: readonly Requirement[]): ReadonlyMap<string, BlankPlace> =>
  new Map<string, BlankPlace>([
    ...entries(sectionBlanks).map(([id, { asked }]) => [asked, { kind: "section", id }] as const),
    ...entries(factBlanks).map(([fact, asked]) => [asked, { kind: "fact", fact }] as const),
    ...requirements.flatMap((requirement) =>
      entries(clauseBlanks).map(
        ([field]) => [clauseAsks(field, requirement), { kind: "clause", requirement: requirement.id, field }] as const,
      ),
    ),
  ]);
