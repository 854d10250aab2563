import type { CostFlow } from "../model";
import { type Discounting, flowPresentValue } from "../present-value";

/** Money of one year in a shape: its weight, and the whole powers of growth factors it carries, by input. */
export type ShapeYear = Readonly<{
  year: number;
  weight: number;
  powers: readonly (readonly [growth: number, power: number])[];
}>;

/** A flow of 1 unit by year: what is left of a flow once its amount is taken out. Bids share the same few shapes. */
export type FlowShape = Readonly<{ recurrence: CostFlow["recurrence"]; years: readonly ShapeYear[] }>;

/** What a shape is worth, for one draw after the other. Tables of powers are kept from one call to the next. */
export type ShapeWorths = Readonly<{
  /** Fills in the worth of every shape at one rate and one set of growth factors, which are in the order of `growths`. */
  fill: (rate: number, factors: Float64Array, into: Float64Array) => void;
}>;

type Flat = Readonly<{
  kind: "plain" | "grown" | "mixed";
  growth: number;
  moves: number;
  years: Int32Array;
  weights: Float64Array;
  /** Where each year’s powers start in the two lists below. */
  starts: Int32Array;
  growths: Int32Array;
  powers: Int32Array;
}>;

/** The simplest of three ways to add a shape up: no growth; one growth as old as the year; anything else. */
function flatten({ recurrence, years }: FlowShape, timing: Discounting["timing"]): Flat {
  const only = years[0]?.powers[0]?.[0] ?? -1;
  const plain = years.every(({ powers }) => powers.length === 0);
  const grown = years.every(
    ({ year, powers }) => (powers.length === 1 && powers[0]?.[0] === only && powers[0][1] === year) || year === 0,
  );
  return {
    kind: plain ? "plain" : grown ? "grown" : "mixed",
    growth: only,
    moves: recurrence === "yearly" && timing === "mid-year" ? 1 : 0,
    years: Int32Array.from(years, ({ year }) => year),
    weights: Float64Array.from(years, ({ weight }) => weight),
    starts: Int32Array.from([0, ...years.map((_, at) => years.slice(0, at + 1).flatMap((one) => one.powers).length)]),
    growths: Int32Array.from(years.flatMap(({ powers }) => powers.map(([growth]) => growth))),
    powers: Int32Array.from(years.flatMap(({ powers }) => powers.map(([, power]) => power))),
  };
}

/**
 * Prepares shapes for many draws.
 * @param fixedRate the rate where it is the same in every draw: then shapes without growth are worked out once, by the
 * discounting of this room; null where the rate is drawn
 * @param years the last year of the study
 */
export function shapeWorths(
  shapes: readonly FlowShape[],
  {
    timing,
    fixedRate,
    growths,
    years,
  }: Readonly<{ timing: Discounting["timing"]; fixedRate: number | null; growths: number; years: number }>,
): ShapeWorths {
  const flat = shapes.map((shape) => flatten(shape, timing));
  const known = flat.map(({ kind }, index) => {
    const shape = shapes[index];
    return fixedRate !== null && kind === "plain" && shape
      ? worthByTheRoom(shape, years, { rate: fixedRate, timing })
      : null;
  });
  const width = years + 1;
  const discount = new Float64Array(width);
  const powers = new Float64Array(width * growths);
  const grown = new Float64Array(width * growths);

  return {
    fill: (rate, factors, into) => {
      const yearlyFactor = 1 / (1 + rate);
      const halfYear = Math.sqrt(1 + rate);
      for (let year = 0, value = 1; year < width; year += 1, value *= yearlyFactor) discount[year] = value;
      for (let growth = 0; growth < growths; growth += 1) {
        const factor = factors[growth] as number;
        const from = growth * width;
        for (let year = 0, value = 1; year < width; year += 1, value *= factor) {
          powers[from + year] = value;
          grown[from + year] = value * (discount[year] as number);
        }
      }
      for (let index = 0; index < flat.length; index += 1) {
        const worth = known[index];
        if (worth !== null && worth !== undefined) {
          into[index] = worth;
          continue;
        }
        const shape = flat[index] as Flat;
        let sum = 0;
        const { years: at, weights } = shape;
        if (shape.kind === "plain")
          for (let i = 0; i < at.length; i += 1) sum += (weights[i] as number) * (discount[at[i] as number] as number);
        else if (shape.kind === "grown") {
          const from = shape.growth * width;
          for (let i = 0; i < at.length; i += 1)
            sum += (weights[i] as number) * (grown[from + (at[i] as number)] as number);
        } else
          for (let i = 0; i < at.length; i += 1) {
            let value = (weights[i] as number) * (discount[at[i] as number] as number);
            const end = shape.starts[i + 1] as number;
            for (let carried = shape.starts[i] as number; carried < end; carried += 1)
              value *= powers[(shape.growths[carried] as number) * width + (shape.powers[carried] as number)] as number;
            sum += value;
          }
        into[index] = shape.moves === 1 ? sum * halfYear : sum;
      }
    },
  };
}

function worthByTheRoom({ recurrence, years }: FlowShape, lastYear: number, discounting: Discounting): number {
  const stream = new Array<number>(lastYear + 1).fill(0);
  for (const { year, weight } of years) stream[year] = weight;
  return flowPresentValue({ part: "price", givenBy: "bid", category: "investment", recurrence, stream }, discounting);
}
