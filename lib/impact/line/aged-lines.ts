import { distinctPlaces, type LeastSquaresLine, leastSquaresLine, placesNeeded } from "./least-squares";
import { type FieldPoint, type SeveralFields, severalFieldsLine } from "./several-fields";
import { type RobustLine, robustLine } from "./theil-sen";

/** How old a surface was: years since it was laid, or hours of use. */
export type AgeOfSurface = Readonly<{ years: number } | { hours: number }>;

/** A result of a surface of some age. */
export type AgedResult = Readonly<{
  age: AgeOfSurface;
  value: number;
  /** The field it was found on; null where nobody says, which counts as a field of its own. */
  field: string | null;
  /** How many fields a mean stands for. */
  fields: number;
}>;

/** A change with age is read as an even amount a year, or as an even share a year (a line through the logarithms). */
export type ValueScale = "amount" | "share";

/** The lines through results on one scale. */
export type LinesOnScale = Readonly<
  | { kind: "fitted"; ordinary: LeastSquaresLine; robust: RobustLine; severalFields: SeveralFields }
  | { kind: "not-enough"; distinctAges: number; reason: string }
>;

export type AgedLines = Readonly<Record<ValueScale, LinesOnScale>>;

/** Years that a surface of some age has been through at the given use. @throws RangeError unless hours a year are above 0 */
export function ageInYears(age: AgeOfSurface, hoursPerYear: number): number {
  if ("years" in age) return age.years;
  if (!(hoursPerYear > 0)) throw new RangeError(`hours of use a year must be above 0, got ${hoursPerYear}`);
  return age.hours / hoursPerYear;
}

/**
 * Ordinary, robust and several-field lines through the results of a system, on both scales.
 * @param hoursPerYear of the field that the outlook is for; turns ages in hours of use into its years
 * @param chance that the stated range of the robust slope holds, both sides together
 */
export function agedLines(results: readonly AgedResult[], hoursPerYear: number, chance: number): AgedLines {
  const points = results.map(({ age, value, field, fields }, index): FieldPoint => {
    return { x: ageInYears(age, hoursPerYear), y: value, field: field ?? `result ${index}`, fields };
  });
  const belowZero = points.some(({ y }) => !(y > 0));
  const logarithms = points.map((point) => ({ ...point, y: Math.log(point.y) }));
  return {
    amount: linesThrough(points, chance),
    share: belowZero
      ? { kind: "not-enough", distinctAges: distinctPlaces(points), reason: noLogarithm }
      : linesThrough(logarithms, chance),
  };
}

function linesThrough(points: readonly FieldPoint[], chance: number): LinesOnScale {
  const distinctAges = distinctPlaces(points);
  if (distinctAges < placesNeeded) return { kind: "not-enough", distinctAges, reason: tooFewAges(distinctAges) };
  return {
    kind: "fitted",
    ordinary: leastSquaresLine(points),
    robust: robustLine(points, chance),
    severalFields: severalFieldsLine(points),
  };
}

/** Says that levels at so few ages carry no line. */
export const tooFewAges = (distinctAges: number): string =>
  `A line with an honest spread needs levels at ${placesNeeded} different ages; the bid gives ${
    distinctAges === 0 ? "none" : distinctAges
  } with both sides stated.`;

const noLogarithm = "A change by an even share each year needs values above 0.";

/**
 * Whether single results pull the ordinary line: its slope lies outside the range of the robust one.
 * Null where so few results give the robust slope no range.
 */
export function pulledBySingleResults(ordinary: LeastSquaresLine, robust: RobustLine): boolean | null {
  if (robust.slopeRange === null) return null;
  return ordinary.slope < robust.slopeRange.low || ordinary.slope > robust.slopeRange.high;
}
