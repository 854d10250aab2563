import { type Generator, namedStream, normalQuantile, normalShare, quantileOf } from "#lib/sampling";
import type { UncertainInput } from "./model";

/**
 * Draws values of all inputs, the same number for each, one array per input. Going on from where the last call stopped,
 * it gives the same values however they are cut into calls.
 */
export type InputDraws = (into: readonly Float64Array[]) => void;

/** A draw of its own and one that is shared, by name. */
export function inputDraws(inputs: readonly UncertainInput[], seed: number): InputDraws {
  const own = inputs.map(({ id }) => namedStream(seed, `own/${id}`));
  const names = [...new Set(inputs.flatMap(({ driver }) => (driver === null ? [] : [driver.name])))];
  const streams = new Map<string, Generator>(names.map((name) => [name, namedStream(seed, `driver/${name}`)]));
  const quantiles = inputs.map(({ distribution }) => quantileOf(distribution));

  return (into) => {
    const count = into[0]?.length ?? 0;
    const shared = new Map<string, Float64Array>();
    for (const [name, stream] of streams) {
      const shares = new Float64Array(count);
      stream.fillShares(shares);
      shared.set(name, shares);
    }
    for (const [index, { driver, distribution }] of inputs.entries()) {
      const values = into[index] as Float64Array;
      const quantile = quantiles[index] as (chance: number) => number;
      if (distribution.kind === "fixed") values.fill(distribution.value);
      else if (driver === null) {
        (own[index] as Generator).fillShares(values);
        for (let at = 0; at < count; at += 1) values[at] = quantile(values[at] as number);
      } else {
        const common = shared.get(driver.name) as Float64Array;
        if (driver.share === 1) for (let at = 0; at < count; at += 1) values[at] = quantile(common[at] as number);
        else if (driver.share === -1)
          for (let at = 0; at < count; at += 1) values[at] = quantile(1 - (common[at] as number));
        else {
          (own[index] as Generator).fillShares(values);
          const rest = Math.sqrt(1 - driver.share * driver.share);
          for (let at = 0; at < count; at += 1) {
            const z = driver.share * normalQuantile(common[at] as number) + rest * normalQuantile(values[at] as number);
            values[at] = quantile(normalShare(z));
          }
        }
      }
    }
  };
}
