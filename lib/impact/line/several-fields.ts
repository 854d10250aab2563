import { studentFactor } from "../student-factor";
import type { LinePoint } from "./least-squares";
import type { ValueInterval } from "./line-intervals";
import { lowestOf } from "./lowest-of";
import { sum } from "./sum";

/** One result with the field it was found on. */
export type FieldPoint = LinePoint &
  Readonly<{
    /** Tells fields of one system apart. */
    field: string;
    /** How many fields stand behind a result that is a mean over fields; 1 for a single field. */
    fields: number;
  }>;

/** One slope for all fields of a system, each field with an offset of its own that is random among fields. */
export type SeveralFieldsLine = Readonly<{
  intercept: number;
  slope: number;
  /** Variances of intercept and slope and what they share. */
  covariance: Readonly<{ intercept: number; slope: number; both: number }>;
  /** Standard deviation from field to field. */
  betweenFields: number;
  /** Standard deviation of results on one field about its own line. */
  withinField: number;
  fields: number;
  count: number;
  /** Where the line itself is surest. */
  meanX: number;
  /** What each result adds to intercept and slope per unit of its value, in the order given. */
  weights: readonly Readonly<{ intercept: number; slope: number }>[];
  /** For one result on a field not yet seen, by Satterthwaite's approximation. */
  degreesOfFreedom: number;
}>;

export type SeveralFields = Readonly<
  { kind: "fitted"; line: SeveralFieldsLine } | { kind: "not-enough-fields"; fields: number; reason: string }
>;

/** Two fields show one difference only, and the range for a third then holds less often than it says. */
const fieldsNeeded = 3;

/**
 * Random-intercept line by restricted maximum likelihood; for fields with the same ages this is the estimate of the
 * analysis of variance in closed form, unless that gives a negative spread between fields, which is then 0.
 * @source D. A. Harville, J. Am. Stat. Assoc. 72 (1977); degrees of freedom: F. E. Satterthwaite, Biometrics 2 (1946)
 */
export function severalFieldsLine(points: readonly FieldPoint[]): SeveralFields {
  const groups = groupsOf(points);
  const fields = groups.length;
  const places = new Set(points.map(({ x }) => x)).size;
  if (fields < fieldsNeeded || points.length < fields + 2 || places < 2) {
    return { kind: "not-enough-fields", fields, reason: tooFew(fields, points.length, places) };
  }
  const moments = groups.map(momentsOf);
  const ratio = likeliestRatio(moments, points.length);
  const solved = solvedFor(ratio, moments);
  const within = solved.residual / (points.length - 2);
  const [intercept, slope] = solved.line;
  const { a, b, c } = solved.information;
  const share = within / (a * c - b * b);
  return {
    kind: "fitted",
    line: {
      intercept,
      slope,
      covariance: { intercept: c * share, slope: a * share, both: -b * share },
      betweenFields: Math.sqrt(ratio * within),
      withinField: Math.sqrt(within),
      fields,
      count: points.length,
      meanX: b / a,
      weights: weightsOf(points, groups, ratio, solved.information),
      degreesOfFreedom: newFieldFreedom(ratio * within, within, groups),
    },
  };
}

/** The estimate is a weighted sum of the results; @source derived from the normal equations of `solvedFor` */
function weightsOf(
  points: readonly FieldPoint[],
  groups: readonly (readonly FieldPoint[])[],
  ratio: number,
  { a, b, c }: Solved["information"],
): SeveralFieldsLine["weights"] {
  const determinant = a * c - b * b;
  const of = new Map<FieldPoint, Readonly<{ intercept: number; slope: number }>>();
  for (const group of groups) {
    const moments = momentsOf(group);
    const { w, x } = moments;
    const { pulled } = pullOf(moments, ratio);
    for (const point of group) {
      const [one, along] = [point.fields * (1 - pulled * w), point.fields * (point.x - pulled * x)];
      of.set(point, { intercept: (c * one - b * along) / determinant, slope: (a * along - b * one) / determinant });
    }
  }
  return points.map((point) => of.get(point) ?? { intercept: 0, slope: 0 });
}

/** Weighted sums over the results of one field; they hold for every ratio, of which many are tried. */
type Moments = Readonly<{
  w: number;
  x: number;
  y: number;
  xx: number;
  xy: number;
  yy: number;
  largestWeight: number;
  logWeights: number;
}>;

function momentsOf(group: readonly FieldPoint[]): Moments {
  const weights = group.map(({ fields }) => fields);
  const moment = (of: (point: FieldPoint) => number) => sum(group.map((point) => point.fields * of(point)));
  return {
    w: sum(weights),
    x: moment(({ x }) => x),
    y: moment(({ y }) => y),
    xx: moment(({ x }) => x ** 2),
    xy: moment(({ x, y }) => x * y),
    yy: moment(({ y }) => y ** 2),
    largestWeight: Math.max(...weights),
    logWeights: sum(weights.map(Math.log)),
  };
}

/** How far the results of one field are pulled together by what they share. */
function pullOf({ w, largestWeight }: Moments, ratio: number) {
  const shared = ratio / largestWeight; // a mean over m fields has an m-th of the variance between fields
  return { shared, pulled: shared / (1 + shared * w) };
}

/** Where one result on a new field of the system lies at `x` with the given chance. */
export function newFieldOnLine(line: SeveralFieldsLine, x: number, chance: number): ValueInterval {
  const likely = line.intercept + line.slope * x;
  const reach = studentFactor(chance, line.degreesOfFreedom) * newFieldError(line, x);
  return { likely, low: likely - reach, high: likely + reach };
}

/** Standard error of one result on a new field of the system. */
const newFieldError = ({ covariance, betweenFields, withinField }: SeveralFieldsLine, x: number): number =>
  Math.sqrt(
    betweenFields ** 2 + withinField ** 2 + covariance.intercept + 2 * x * covariance.both + x ** 2 * covariance.slope,
  );

function groupsOf(points: readonly FieldPoint[]): readonly (readonly FieldPoint[])[] {
  const groups = new Map<string, FieldPoint[]>();
  for (const point of points) {
    const group = groups.get(point.field);
    if (group === undefined) groups.set(point.field, [point]);
    else group.push(point);
  }
  return [...groups.values()];
}

type Solved = Readonly<{
  line: readonly [intercept: number, slope: number];
  /** Weighted sums of 1, x and x², in units of 1 ÷ variance within a field. */
  information: Readonly<{ a: number; b: number; c: number }>;
  /** Weighted sum of squares of what the line leaves over. */
  residual: number;
  /** Logarithm of the determinant of the variances of all results. */
  logVariance: number;
}>;

/** Generalised least squares for one ratio of the variance between fields to the variance within. */
function solvedFor(ratio: number, groups: readonly Moments[]): Solved {
  const total = { a: 0, b: 0, c: 0, y: 0, xy: 0, yy: 0, logVariance: 0 };
  for (const moments of groups) {
    const { w, x, y } = moments;
    const { shared, pulled } = pullOf(moments, ratio);
    total.a += w - pulled * w * w;
    total.b += x - pulled * w * x;
    total.c += moments.xx - pulled * x * x;
    total.y += y - pulled * w * y;
    total.xy += moments.xy - pulled * x * y;
    total.yy += moments.yy - pulled * y * y;
    total.logVariance += Math.log1p(shared * w) - moments.logWeights;
  }
  const { a, b, c, y, xy, yy, logVariance } = total;
  const determinant = a * c - b * b;
  const intercept = (c * y - b * xy) / determinant;
  const slope = (a * xy - b * y) / determinant;
  const residual = Math.max(0, yy - intercept * y - slope * xy); // rounding can leave less than nothing
  return { line: [intercept, slope], information: { a, b, c }, residual, logVariance };
}

/** −2 × the restricted log likelihood, up to a constant. */
function unlikeliness(ratio: number, groups: readonly Moments[], count: number): number {
  const { information, residual, logVariance } = solvedFor(ratio, groups);
  const { a, b, c } = information;
  return logVariance + Math.log(a * c - b * b) + (count - 2) * Math.log(residual);
}

/** Ratios of e^−14 to e^14 are looked through; below that the spread between fields is 0. */
function likeliestRatio(groups: readonly Moments[], count: number): number {
  const at = (ratio: number) => unlikeliness(ratio, groups, count);
  const best = Math.exp(lowestOf((logarithm) => at(Math.exp(logarithm)), -14, 14));
  return at(0) <= at(best) ? 0 : best;
}

/**
 * Satterthwaite's degrees of freedom of the error of a new field where the line is surest, from the mean squares of both
 * kinds: the mean of all fields adds its share to the variance between.
 */
function newFieldFreedom(between: number, within: number, groups: readonly (readonly FieldPoint[])[]): number {
  const count = sum(groups.map(({ length }) => length));
  const fields = groups.length;
  const perField = fields / sum(groups.map(({ length }) => 1 / length)); // harmonic mean
  const fromFields = (between + within / perField) * (1 + 1 / fields);
  const fromWithin = within * (1 - 1 / perField);
  const freedom =
    (fromFields + fromWithin) ** 2 / (fromFields ** 2 / (fields - 1) + fromWithin ** 2 / (count - fields - 1));
  return Math.max(1, freedom);
}

function tooFew(fields: number, results: number, places: number): string {
  if (fields < fieldsNeeded) {
    return `The spread from field to field needs at least ${fieldsNeeded} fields of the system; results stand for ${fields}.`;
  }
  if (places < 2) return "The results stand at one age only, so they say nothing of a change.";
  return `${results} results on ${fields} fields are too few to tell the change with age from the spread between fields.`;
}
