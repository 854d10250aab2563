import { gammaDraws } from "./gamma-draw";
import type { Generator } from "./generator";
import { portableLog } from "./portable";

/** Fills an array with weights of 0 or more that add up to 1. */
export type WeightDraw = (generator: Generator, into: Float64Array) => void;

function scaledToOne(into: Float64Array, sum: number): void {
  for (let index = 0; index < into.length; index += 1) into[index] = (into[index] as number) / sum;
}

/**
 * Any weights alike: evenly over all that add up to 1.
 * @source exponential values over their sum; plain uniform values over their sum would crowd the middle
 */
export const evenWeights: WeightDraw = (generator, into) => {
  generator.fillShares(into);
  let sum = 0;
  for (let index = 0; index < into.length; index += 1) {
    const drawn = -portableLog(into[index] as number);
    into[index] = drawn;
    sum += drawn;
  }
  scaledToOne(into, sum);
};

/**
 * Any weights alike that keep an order: even ones in rising order, dealt out by rank. Criteria of equal rank may come in any
 * order among each other.
 * @param ranks 1 for the most important; equal ranks are free among themselves
 * @source the ordered part of the simplex is one of its equal pieces, derived
 */
export function orderedWeights(ranks: readonly number[]): WeightDraw {
  const places = ranks.map((rank, index) => ({ rank, index })).toSorted((one, other) => one.rank - other.rank);
  const groups: number[][] = [];
  for (const [at, place] of places.entries()) {
    const group = places[at - 1]?.rank === place.rank ? groups.at(-1) : undefined;
    if (group === undefined) groups.push([place.index]);
    else group.push(place.index);
  }
  const drawn = new Float64Array(ranks.length);
  return (generator, into) => {
    // exponential values in rising order are sums of spacings, so nothing has to be sorted (Rényi 1953)
    generator.fillShares(drawn);
    let rising = 0;
    let sum = 0;
    for (let index = 0; index < drawn.length; index += 1) {
      rising -= portableLog(drawn[index] as number) / (drawn.length - index);
      drawn[index] = rising;
      sum += rising;
    }
    scaledToOne(drawn, sum);
    let next = drawn.length;
    for (let order = 0; order < groups.length; order += 1) {
      const group = groups[order] as number[];
      // dealt out in a random order (Fisher and Yates); a group of one needs no luck
      for (let left = group.length; left > 0; left -= 1) {
        const pick = left === 1 ? 0 : Math.floor(generator.nextShare() * left);
        const index = group[pick] as number;
        group[pick] = group[left - 1] as number;
        group[left - 1] = index;
        next -= 1;
        into[index] = drawn[next] as number;
      }
    }
  };
}

/**
 * Weights near the owner's: a Dirichlet distribution whose means are the owner's shares. A share w has the standard
 * deviation √(w(1 − w) ÷ (concentration + 1)).
 * @param shares add up to 1; a share of 0 stays 0
 * @param concentration above 0; the higher, the nearer to the owner's
 * @source gamma values of shapes share × concentration over their sum
 */
export function nearbyWeights(shares: readonly number[], concentration: number): WeightDraw {
  if (!(concentration > 0)) throw new RangeError(`the concentration must be above 0, got ${concentration}`);
  const weighing = shares.flatMap((share, at) => (share > 0 ? [at] : []));
  const draw = gammaDraws(weighing.map((at) => (shares[at] ?? 0) * concentration));
  const drawn = new Float64Array(weighing.length);
  return (generator, into) => {
    draw(generator, drawn);
    into.fill(0);
    let sum = 0;
    for (let order = 0; order < drawn.length; order += 1) {
      const value = drawn[order] as number;
      into[weighing[order] as number] = value;
      sum += value;
    }
    // every part may come out as 0 where all shapes are tiny; then the owner's own weights stand in
    if (sum > 0) scaledToOne(into, sum);
    else into.set(shares);
  };
}
