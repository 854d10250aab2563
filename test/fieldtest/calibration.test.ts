import { describe, expect, test } from "vitest";
import { locationLevel, locationUncertainty, pooledRepeatability, toleranceFactor } from "#lib/fieldtest";
import { dropsOn } from "./campaigns";

/** The small fast counter of PractRand, 32 bits, as numbers from 0 to 1. @source C. Doty-Humphrey, sfc32, from memory */
function seeded(seed: number): () => number {
  let [a, b, c, counter] = [0, seed, 0, 1];
  const next = () => {
    const sum = (a + b + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = (c << 21) | (c >>> 11);
    c = (c + sum) | 0;
    return (sum >>> 0) / 2 ** 32;
  };
  for (let warmUp = 0; warmUp < 20; warmUp += 1) next();
  return next;
}

const random = seeded(20_260_514);
/** A standard normal value. @source Box and Muller (1958) */
const normal = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

const fields = 2000;
const shareOf = (holds: () => boolean): number => Array.from({ length: fields }, holds).filter(Boolean).length / fields;

describe("on 2,000 simulated fields", () => {
  test("the stated 95 % of a location's level holds its truth 93 to 97 times in 100", () => {
    const share = shareOf(() => {
      const truths = Array.from({ length: 8 }, () => 130 + 12 * normal());
      const drops = truths.map((truth) => dropsOn(truth - 10, truth - 1 + 4 * normal(), truth + 1 + 4 * normal()));
      const repeatability = pooledRepeatability(drops);
      const [first] = drops;
      if (repeatability === null || first === undefined) return false;
      const reach = locationUncertainty(repeatability).eitherSide;
      return Math.abs(locationLevel(first) - (truths[0] ?? 0)) <= reach;
    });
    expect(share).toBeGreaterThan(0.93);
    expect(share).toBeLessThan(0.97);
  });

  test("the tolerance factor reaches 95 % of the field 93 to 97 times in 100", () => {
    const factor = toleranceFactor(8, 0.95, 0.95);
    const share = shareOf(() => {
      const levels = Array.from({ length: 8 }, () => 130 + 12 * normal());
      const mean = levels.reduce((sum, level) => sum + level, 0) / 8;
      const deviation = Math.sqrt(levels.reduce((sum, level) => sum + (level - mean) ** 2, 0) / 7);
      return mean + factor * deviation >= 130 + 1.6448536 * 12;
    });
    expect(share).toBeGreaterThan(0.93);
    expect(share).toBeLessThan(0.97);
  });
});
