import jStat from "jstat";
import type { ValueScale } from "../line/aged-lines";
import { coarseRule, type Visit, visitNodes } from "./quadrature";

/** An owner's assumption of a change: at least, most likely, at most; spread as a triangle between them. */
export type Change = Readonly<{ low: number; likely: number; high: number }>;

/** Both ends of a value, in the unit of the property. */
export type Ends = Readonly<{ low: number; high: number }>;

/**
 * How sure the value of one field is in one year, before any spread over the field.
 * - `line`: a new result on a fitted line, by Student's t; `widening` is how far stated ranges can move it.
 * - `scenario`: a stated value, anywhere in its range alike, plus the years gone by × the owner's change.
 */
export type FieldValue = Readonly<
  | {
      kind: "line";
      scale: ValueScale;
      likely: number;
      standardError: number;
      degreesOfFreedom: number;
      widening: number;
    }
  | { kind: "scenario"; starts: readonly Ends[]; elapsed: number; change: Change }
>;

/**
 * Visits values that the field may have, with weights that sum to 1.
 * @param cuts values near which what is to be averaged bends or jumps
 */
export function visitValues(value: FieldValue, cuts: readonly number[], visit: Visit): void {
  switch (value.kind) {
    case "line":
      visitLine(value, cuts, visit);
      break;
    case "scenario": {
      const share = 1 / value.starts.length;
      for (const start of value.starts) {
        visitScenario(start, value, cuts, (at, weight) => visit(at, weight * share));
      }
    }
  }
}

/** Standard errors from the middle at which Student's density changes its shape. */
const bends = [-4, 0, 4];

/** Student's t as an angle: t = √ν·tan θ has the density cos^(ν − 1) θ, which ends at ±π/2 for every ν from 1. */
function visitLine(
  { scale, likely, standardError, degreesOfFreedom, widening }: Extract<FieldValue, { kind: "line" }>,
  cuts: readonly number[],
  visit: Visit,
): void {
  const onScale = (on: number) => (scale === "share" ? Math.exp(on) : on);
  const cutsOnScale = scale === "share" ? cuts.filter((cut) => cut > 0).map(Math.log) : cuts;
  const ends = { low: likely - widening, high: likely + widening };
  if (!(standardError > 0)) {
    visitUniform(ends, cutsOnScale, (at, weight) => visit(onScale(at), weight));
    return;
  }
  const reach = standardError * Math.sqrt(degreesOfFreedom);
  const total = angleTotal(degreesOfFreedom);
  visitCentres(ends, standardError, (centre, share) => {
    const angles = [
      ...bends.map((bend) => Math.atan(bend / Math.sqrt(degreesOfFreedom))),
      ...cutsOnScale.map((cut) => Math.atan((cut - centre) / reach)),
    ];
    visitNodes(-Math.PI / 2, Math.PI / 2, angles, (angle, weight) =>
      visit(
        onScale(centre + reach * Math.tan(angle)),
        (share * weight * Math.cos(angle) ** (degreesOfFreedom - 1)) / total,
      ),
    );
  });
}

/** ∫ cos^(ν − 1) θ from −π/2 to π/2 = √π · Γ(ν/2) ÷ Γ((ν + 1)/2). */
const angleTotal = (freedom: number): number =>
  Math.sqrt(Math.PI) * Math.exp(jStat.gammaln(freedom / 2) - jStat.gammaln((freedom + 1) / 2));

/** Pieces into which the widening is cut at most, however narrow the scatter is beside it. */
const mostPieces = 12;

/** Where the line may lie by the stated ranges, in pieces no wider than four standard errors. */
function visitCentres({ low, high }: Ends, standardError: number, visit: Visit): void {
  if (!(high > low)) {
    visit(low, 1);
    return;
  }
  const pieces = Math.min(mostPieces, Math.ceil((high - low) / (4 * standardError)));
  const cuts = Array.from({ length: pieces - 1 }, (_, index) => low + ((index + 1) * (high - low)) / pieces);
  visitNodes(low, high, cuts, (at, weight) => visit(at, weight / (high - low)), coarseRule);
}

/** @source density of a sum of a uniform and a triangular value, derived: the rise of the triangle's share over the range */
function visitScenario(
  start: Ends,
  { elapsed, change }: Extract<FieldValue, { kind: "scenario" }>,
  cuts: readonly number[],
  visit: Visit,
): void {
  const [one, other] = [change.low * elapsed, change.high * elapsed];
  const moved = { low: Math.min(one, other), likely: change.likely * elapsed, high: Math.max(one, other) };
  if (!(moved.high > moved.low)) {
    visitUniform({ low: start.low + moved.likely, high: start.high + moved.likely }, cuts, visit);
    return;
  }
  const width = start.high - start.low;
  const density = (at: number) =>
    width > 0
      ? (shareBelowTriangle(at - start.low, moved) - shareBelowTriangle(at - start.high, moved)) / width
      : triangleDensity(at - start.low, moved);
  const corners = [start.low, start.high].flatMap((end) => [moved.low + end, moved.likely + end, moved.high + end]);
  visitNodes(start.low + moved.low, start.high + moved.high, [...new Set([...corners, ...cuts])], (at, weight) =>
    visit(at, weight * density(at)),
  );
}

/** Anywhere between two ends alike; one place where they are the same. */
function visitUniform({ low, high }: Ends, cuts: readonly number[], visit: Visit): void {
  if (high > low) visitNodes(low, high, cuts, (at, weight) => visit(at, weight / (high - low)));
  else visit(low, 1);
}

/** @source derived from the three corners of the triangle */
function triangleDensity(at: number, { low, likely, high }: Change): number {
  const height = 2 / (high - low);
  if (at < likely) return (height * (at - low)) / (likely - low);
  return likely < high ? (height * (high - at)) / (high - likely) : height;
}

function shareBelowTriangle(at: number, { low, likely, high }: Change): number {
  if (at <= low) return 0;
  if (at >= high) return 1;
  return at < likely
    ? (at - low) ** 2 / ((high - low) * (likely - low))
    : 1 - (high - at) ** 2 / ((high - low) * (high - likely));
}
