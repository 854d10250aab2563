import { tooFewAges } from "../line/aged-lines";
import { distinctPlaces, leastSquaresLine, placesNeeded } from "../line/least-squares";
import { type FieldPoint, type SeveralFieldsLine, severalFieldsLine } from "../line/several-fields";
import { studentFactor } from "../student-factor";
import type { AgedValue, LineOverAge, ValueSpan } from "./model";

/** Whether both sides are stated. */
export const isClosedValue = ({ low, high }: Readonly<{ low: number; high: number }>): boolean =>
  Number.isFinite(low) && Number.isFinite(high);

/** With one named field nothing shows how fields differ. */
const namedNeeded = 2;

/**
 * The line through the middles of values by age; values that are open on one side carry no middle and are left out.
 * Where the values name two fields or more and stand for three, each field has an offset of its own; otherwise all count
 * alike.
 * @source derived: least squares, as in NIST/SEMATECH e-Handbook of Statistical Methods, 4.1.4.1, or restricted maximum
 * likelihood for several fields
 */
export function lineOverAge(
  values: readonly AgedValue[],
): Readonly<{ kind: "fitted"; line: LineOverAge } | { kind: "not-enough"; distinctAges: number; reason: string }> {
  const closed = values.filter(isClosedValue);
  const places = closed.map(({ years, low, high, field, fields }, index): FieldPoint => {
    return { x: years, y: (low + high) / 2, field: field ?? `value ${index}`, fields: fields ?? 1 };
  });
  const distinctAges = distinctPlaces(places);
  if (distinctAges < placesNeeded) return { kind: "not-enough", distinctAges, reason: tooFewAges(distinctAges) };
  const named = new Set(closed.flatMap(({ field }) => field ?? [])).size;
  if (named < namedNeeded) return { kind: "fitted", line: pooledLine(closed, places, tooFewNamed(named, closed)) };
  const several = severalFieldsLine(places);
  if (several.kind === "not-enough-fields") {
    return { kind: "fitted", line: pooledLine(closed, places, `${several.reason} ${pooledInWords}`) };
  }
  if (isWithoutScatter(several.line)) return { kind: "fitted", line: pooledLine(closed, places, noScatter) };
  return { kind: "fitted", line: lineOfFields(closed, several.line, named) };
}

/** Scatter on a field this far below the spread between fields is rounding: the likelihood has no greatest value then. */
const leastScatter = { share: 1 / 500, amount: 1e-9 };

const isWithoutScatter = ({ withinField, betweenFields }: SeveralFieldsLine): boolean =>
  !(withinField > Math.max(leastScatter.amount, leastScatter.share * betweenFields));

const pooledInWords = "All count alike; where several come from one field, the range is too narrow.";

const noScatter =
  "The figures of each field lie exactly on one slope, so nothing shows how results scatter and all count alike; ask for the single results.";

const halfWidthOf = ({ low, high }: AgedValue): number => (high - low) / 2;

function pooledLine(closed: readonly AgedValue[], places: readonly FieldPoint[], reason: string): LineOverAge {
  const { meanX, spreadOfX, slope, intercept, slopeError, interceptError, residualDeviation, degreesOfFreedom } =
    leastSquaresLine(places);
  const share = 1 / closed.length;
  return {
    slope,
    intercept,
    slopeError,
    interceptError,
    residualDeviation,
    degreesOfFreedom,
    meanAge: meanX,
    errorAtMeanAge: residualDeviation * Math.sqrt(1 + share),
    points: closed.map((value) => ({
      years: value.years,
      halfWidth: halfWidthOf(value),
      atMeanAge: share,
      perYear: (value.years - meanX) / spreadOfX,
    })),
    fieldsApart: { kind: "pooled", reason },
  };
}

function lineOfFields(closed: readonly AgedValue[], line: SeveralFieldsLine, named: number): LineOverAge {
  const { intercept, slope, covariance, betweenFields, withinField, degreesOfFreedom, meanX } = line;
  const ofLine = covariance.intercept + 2 * meanX * covariance.both + meanX ** 2 * covariance.slope;
  return {
    intercept,
    slope,
    degreesOfFreedom,
    meanAge: meanX,
    slopeError: Math.sqrt(covariance.slope),
    interceptError: Math.sqrt(covariance.intercept),
    residualDeviation: withinField,
    errorAtMeanAge: Math.sqrt(betweenFields ** 2 + withinField ** 2 + Math.max(0, ofLine)),
    points: closed.map((value, at) => {
      const weight = line.weights[at] ?? { intercept: 0, slope: 0 };
      return {
        years: value.years,
        halfWidth: halfWidthOf(value),
        atMeanAge: weight.intercept + meanX * weight.slope,
        perYear: weight.slope,
      };
    }),
    fieldsApart: { kind: "several-fields", betweenFields, fields: line.fields, named },
  };
}

function tooFewNamed(named: number, values: readonly AgedValue[]): string {
  const who = named === 0 ? "No figure names the field that it was measured on." : "Only one field is named.";
  const means = values.some(({ fields }) => (fields ?? 1) > 1) ? " A mean over fields counts as one figure too." : "";
  return `${who} ${pooledInWords}${means}`;
}

/** How a new result at an age comes about: the line, its standard error and what stated ranges add to either side. */
export function resultOnLine(
  { points, meanAge, errorAtMeanAge, slopeError, intercept, slope }: LineOverAge,
  years: number,
): Readonly<{ likely: number; standardError: number; widening: number }> {
  const distance = years - meanAge;
  const standardError = Math.hypot(errorAtMeanAge, slopeError * distance);
  const widening = points.reduce(
    (total, { halfWidth, atMeanAge, perYear }) => total + Math.abs(atMeanAge + distance * perYear) * halfWidth,
    0,
  );
  return { likely: intercept + slope * years, standardError, widening };
}

/** The range of one new result at any age; the factor of Student's t is looked up once. */
export function rangesOnLine(line: LineOverAge, chance: number): (years: number) => ValueSpan {
  const factor = studentFactor(chance, line.degreesOfFreedom);
  return (years) => {
    const { likely, standardError, widening } = resultOnLine(line, years);
    const reach = factor * standardError + widening;
    return { likely, low: likely - reach, high: likely + reach };
  };
}
