import type { MeasuredPlace } from "./inverse-distance";
import { distanceBetween } from "./places";

/** Half the mean squared difference of values a distance apart. */
export type VariogramBin = Readonly<{ distance: number; semivariance: number; pairs: number }>;

export const variogramShapes = {
  spherical: (share: number) => (share >= 1 ? 1 : 1.5 * share - 0.5 * share ** 3),
  exponential: (share: number) => 1 - Math.exp(-3 * share),
} as const satisfies Record<string, (share: number) => number>;
export type VariogramShape = keyof typeof variogramShapes;

/** How unlike values get with distance: `nugget` at once, `nugget + partialSill` from `range` m on. */
export type Variogram = Readonly<{ shape: VariogramShape; nugget: number; partialSill: number; range: number }>;

/** Semivariance at a distance in m; 0 at no distance. @source spherical and exponential models, Webster and Oliver, Geostatistics for Environmental Scientists, from memory */
export const semivarianceAt = ({ shape, nugget, partialSill, range }: Variogram, distance: number): number =>
  distance <= 0 ? 0 : nugget + partialSill * variogramShapes[shape](distance / range);

const binCount = 12;
/** Pairs are looked at up to this share of the largest distance. @source common practice, no source */
const farthestShare = 0.5;

/** Mean semivariance of all pairs by distance. */
export function empiricalVariogram(points: readonly MeasuredPlace[]): readonly VariogramBin[] {
  const pairs = points.flatMap((one, index) =>
    points.slice(index + 1).map((other) => ({
      distance: distanceBetween(one.place, other.place),
      half: (one.value - other.value) ** 2 / 2,
    })),
  );
  const farthest = farthestShare * pairs.reduce((most, { distance }) => Math.max(most, distance), 0);
  const sums = Array.from({ length: binCount }, () => ({ distance: 0, half: 0, pairs: 0 }));
  for (const { distance, half } of pairs) {
    const bin = sums[Math.min(binCount - 1, Math.floor((distance / farthest) * binCount))];
    if (distance > farthest || bin === undefined) continue;
    bin.distance += distance;
    bin.half += half;
    bin.pairs += 1;
  }
  return sums
    .filter((bin) => bin.pairs > 0)
    .map((bin) => ({ distance: bin.distance / bin.pairs, semivariance: bin.half / bin.pairs, pairs: bin.pairs }));
}

/** Ranges that are tried, as shares of the farthest distance looked at. */
const rangeSteps = 60;

/**
 * The model that fits the empirical variogram best by least squares, weighted by pairs ÷ distance². For each shape and
 * range nugget and partial sill follow from two equations; neither may be below zero. Null where values differ nowhere.
 * @source weights as in Pebesma, Multivariable geostatistics in S, Computers & Geosciences 30 (2004), from memory
 */
export function fittedVariogram(bins: readonly VariogramBin[]): Variogram | null {
  const farthest = bins.reduce((most, { distance }) => Math.max(most, distance), 0);
  if (bins.length < 3 || !bins.some(({ semivariance }) => semivariance > 0)) return null;
  const tried = (Object.keys(variogramShapes) as readonly VariogramShape[]).flatMap((shape) =>
    Array.from({ length: rangeSteps }, (_, step) => fitAt(bins, shape, (farthest * 1.5 * (step + 1)) / rangeSteps)),
  );
  return tried.reduce((best, next) => (next.misfit < best.misfit ? next : best)).model;
}

function fitAt(bins: readonly VariogramBin[], shape: VariogramShape, range: number) {
  const terms = bins.map(({ distance, semivariance, pairs }) => ({
    weight: pairs / distance ** 2,
    rise: variogramShapes[shape](distance / range),
    semivariance,
  }));
  const sum = (of: (term: (typeof terms)[number]) => number) =>
    terms.reduce((total, term) => total + term.weight * of(term), 0);
  const [w, r, rr] = [sum(() => 1), sum(({ rise }) => rise), sum(({ rise }) => rise ** 2)];
  const [s, rs] = [sum(({ semivariance }) => semivariance), sum((term) => term.rise * term.semivariance)];
  const divisor = w * rr - r * r;
  const free =
    divisor > 1e-12 * w * rr ? { nugget: (s * rr - r * rs) / divisor, partialSill: (w * rs - r * s) / divisor } : null;
  const { nugget, partialSill } =
    free !== null && free.nugget >= 0 && free.partialSill >= 0
      ? free
      : free === null || free.partialSill < 0
        ? { nugget: s / w, partialSill: 0 }
        : { nugget: 0, partialSill: rs / rr };
  const misfit = sum((term) => (term.semivariance - nugget - partialSill * term.rise) ** 2);
  return { misfit, model: { shape, nugget, partialSill, range } };
}
