import {
  type BlankId,
  type ChoiceId,
  isChosen,
  type SpecificationText,
  sectionBlanks,
  sectionChoices,
  startingSpecification,
} from "#lib/requirement";

type SystemText = NonNullable<SpecificationText["systems"]>[number];
type BidAnswerText = NonNullable<SpecificationText["bidAnswers"]>[number];

/** A system with a figure for each measure and an answer for each clause that forms have fields for. */
export type SystemValues = SystemText & {
  source: string;
  figures: { measure: string; figure: string }[];
  answers: { clause: string; meets: "yes" | "no" | "not-known" }[];
};

/** What the owner decides about the section, with text in every field. */
export type SpecificationValues = SpecificationText & {
  number: string;
  related: string[];
  choices: Record<ChoiceId, boolean>;
  filledIn: Record<BlankId, string>;
  names: string[];
  systems: SystemValues[];
  bidAnswers: BidAnswerText[];
};

/** What systems can be asked about: measures with a limit, clauses in words, and the bids. */
export type AskedOfSystems = Readonly<{
  measures: readonly string[];
  clauses: readonly string[];
  bids: readonly string[];
}>;

const keysOf = <K extends string>(record: Readonly<Record<K, unknown>>) => Object.keys(record) as K[];

const record = <K extends string, V>(keys: readonly K[], worth: (key: K) => V) =>
  Object.fromEntries(keys.map((key) => [key, worth(key)])) as Record<K, V>;

/** Entries as they are, then one for each thing that has none yet. */
const completed = <T>(entries: readonly T[], wanted: readonly T[], isSame: (one: T, other: T) => boolean): T[] => [
  ...entries,
  ...wanted.filter((each) => !entries.some((entry) => isSame(entry, each))),
];

/** One system with a field for everything that is asked of systems. */
export const filledSystem = (system: SystemText, { measures, clauses }: AskedOfSystems): SystemValues => ({
  ...system,
  source: system.source ?? "",
  figures: completed(
    system.figures ?? [],
    measures.map((measure) => ({ measure, figure: "" })),
    (one, other) => one.measure === other.measure,
  ),
  answers: completed(
    system.answers ?? [],
    clauses.map((clause) => ({ clause, meets: "not-known" as const })),
    (one, other) => one.clause === other.clause,
  ),
});

const nothingAsked: AskedOfSystems = { measures: [], clauses: [], bids: [] };

/** Fills in what the document does not say yet. */
export function filledSpecification(
  body: SpecificationText,
  asked: AskedOfSystems = nothingAsked,
): SpecificationValues {
  return {
    ...body,
    number: body.number ?? startingSpecification.number,
    related: [...(body.related ?? startingSpecification.related)],
    choices: record(keysOf(sectionChoices), (id) => isChosen(body.choices ?? {}, id)),
    filledIn: record(keysOf(sectionBlanks), (id) => body.filledIn?.[id] ?? ""),
    names: [...(body.names ?? [])],
    systems: (body.systems ?? []).map((system) => filledSystem(system, asked)),
    bidAnswers: completed(
      body.bidAnswers ?? [],
      asked.clauses.flatMap((clause) => asked.bids.map((bid) => ({ bid, clause, meets: "not-known" as const }))),
      (one, other) => one.bid === other.bid && one.clause === other.clause,
    ),
  };
}
