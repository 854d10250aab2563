import type { CostStream } from "#lib/cost";

/** What has been paid up to and including each year, in cents; not discounted. */
export function runningTotal(stream: CostStream): readonly number[] {
  let sum = 0;
  return stream.map((cents) => {
    sum += cents;
    return sum;
  });
}

/** The years in which something is paid. */
export const yearsPaid = (stream: CostStream): readonly number[] =>
  stream.flatMap((cents, year) => (cents === 0 ? [] : [year]));
