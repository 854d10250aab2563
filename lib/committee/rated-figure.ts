import type { Criterion, RatingLevel } from "#lib/criteria";
import { type Figure, figureFromInterval, known, unknown, type WorkingInput } from "#lib/figure";
import { measured } from "#lib/quantity";
import { withoutExcused } from "./excused";
import type { AgreedValue, Committee, OpenSheet, Rating, Scoresheet } from "./model";

/** The levels that evaluators choose from; none for a criterion that is not rated. */
export const levelsOf = ({ valueFunction }: Pick<Criterion, "valueFunction">): readonly RatingLevel[] =>
  valueFunction.kind === "rating" ? valueFunction.levels : [];

/** A rating that counts: its level stands in the criterion as it is now. */
export type CountedRating = Readonly<{ sheet: OpenSheet; rating: Rating; level: RatingLevel }>;

/** What opened sheets say of one bid on one criterion, in the order of the sheets. */
export function ratingsOf(
  { sheets }: Committee,
  criterion: Pick<Criterion, "id" | "valueFunction">,
  bid: string,
): readonly CountedRating[] {
  const levels = levelsOf(criterion);
  return sheets.flatMap((sheet) =>
    withoutExcused(sheet.sheet).ratings.flatMap((rating) => {
      const level = levels.find(({ id }) => id === rating.level);
      const isMeant = rating.criterion === criterion.id && rating.bid === bid;
      return isMeant && level !== undefined ? [{ sheet, rating, level }] : [];
    }),
  );
}

/** What was agreed for one bid on one criterion; null while nothing is, or where its level no longer stands there. */
export function agreedOn(
  { agreed }: Pick<Committee, "agreed">,
  criterion: Pick<Criterion, "id" | "valueFunction">,
  bid: string,
): Readonly<{ entry: AgreedValue; value: number; words: string }> | null {
  const entry = agreed.find((one) => one.criterion === criterion.id && one.bid === bid);
  if (entry === undefined || entry.value === null) return null;
  if (entry.value.kind === "between") return { entry, value: entry.value.value, words: "between two levels" };
  const { level: chosen } = entry.value;
  const level = levelsOf(criterion).find(({ id }) => id === chosen);
  return level === undefined ? null : { entry, value: level.value, words: level.label };
}

const percent = (value: number): string => `${Number((value * 100).toPrecision(3))} %`;

const inputOf = ({ sheet, level }: CountedRating): WorkingInput => ({
  label: sheet.evaluator.name,
  text: `${level.label} (${percent(level.value)})`,
  from: { kind: "committee" },
});

const source = "the owner’s levels with their descriptions, chosen by evaluators";

/**
 * The figure that a rated criterion judges: the value that the committee agreed on; before that, all that the opened
 * sheets span; before they are opened, nothing.
 * @returns a share of full worth, 0 to 1
 */
export function ratedFigure(
  committee: Committee,
  criterion: Pick<Criterion, "id" | "label" | "valueFunction">,
  bid: string,
): Figure<"fraction"> {
  const ratings = ratingsOf(committee, criterion, bid);
  const agreed = agreedOn(committee, criterion, bid);
  if (agreed !== null) {
    const { reason, dissent } = agreed.entry;
    return known("fraction", measured("fraction", agreed.value), () => ({
      formula: `agreed by the committee: ${agreed.words}, ${percent(agreed.value)}`,
      inputs: ratings.map(inputOf),
      assumptions: [`Reason: ${reason}`, ...(dissent === "" ? [] : [`Dissent: ${dissent}`])],
      source,
    }));
  }
  if (ratings.length > 0) {
    const values = ratings.map(({ level }) => level.value);
    const ends = { low: Math.min(...values), high: Math.max(...values) };
    return figureFromInterval(
      "fraction",
      { low: measured("fraction", ends.low), high: measured("fraction", ends.high) },
      () => ({
        formula: "from the least to the greatest of the ratings handed in",
        inputs: ratings.map(inputOf),
        assumptions: ["The committee has not agreed on one value yet."],
        source,
      }),
    );
  }
  return unknown("fraction", { kind: "not-rated", what: criterion.label, reason: whyNotRated(committee) });
}

const whyNotRated = ({ opened }: Committee): string =>
  opened === null
    ? "evaluators score alone first, and their sheets have not been opened."
    : "no sheet rates this bid, and no value was agreed.";

/** The sheets that everybody may read. */
export const openSheetsOf = (scoresheets: readonly Scoresheet[]): readonly OpenSheet[] =>
  scoresheets.flatMap(({ contents, ...facts }) =>
    contents.kind === "open" ? [{ ...facts, sheet: contents.sheet }] : [],
  );

/** Before anybody has scored. */
export const startingCommittee: Committee = { opened: null, sheets: [], agreed: [] };
