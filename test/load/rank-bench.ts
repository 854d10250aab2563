// Time for the ranks of 20 bids on 40 criteria over 100,000 draws: `npm run bench:ranks`. Prints figures and judges nothing.
import { type Comparison, type CriterionValue, rankAcceptability, type WeightChoice } from "#lib/robustness";
import { drawnToEnd, namedStream } from "#lib/sampling";

const [bids, criteria, draws, runs] = [20, 40, 100_000, 7];
const stream = namedStream(1, "bench");
const points = Array.from({ length: criteria }, () => 10 + 90 * stream.nextShare());
const sum = points.reduce((total, one) => total + one, 0);

/** Values of which the given part is in doubt. */
function comparison(inDoubt: number): Comparison {
  const value = (): CriterionValue => {
    const [one, other] = [stream.nextShare(), stream.nextShare()];
    if (stream.nextShare() >= inDoubt) return { kind: "known", value: one };
    return { kind: "between", low: Math.min(one, other), high: Math.max(one, other) };
  };
  return {
    criteria: points.map((_, at) => `criterion ${at}`),
    shares: points.map((one) => one / sum),
    bids: Array.from({ length: bids }, (_, at) => ({
      ...{ bid: `bid ${at}`, standing: "in" },
      values: points.map(value),
    })),
  };
}

/** Milliseconds of the processor, helpers of the engine among them, and of the clock. */
function timed(work: () => unknown): Readonly<{ processor: number; clock: number }> {
  const [start, before] = [performance.now(), process.cpuUsage()];
  work();
  const { user, system } = process.cpuUsage(before);
  return { processor: (user + system) / 1000, clock: performance.now() - start };
}

const median = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[values.length >> 1] ?? Number.NaN;
const choices: readonly WeightChoice[] = [
  { kind: "any" },
  { kind: "owners-order" },
  { kind: "near-owners", concentration: 40 },
];
console.log(
  `Ranks of ${bids} bids × ${criteria} criteria over ${draws.toLocaleString("en-US")} draws, medians of ${runs}`,
);
for (const inDoubt of [0, 0.25, 1]) {
  const that = comparison(inDoubt);
  for (const weights of choices) {
    const times = Array.from({ length: runs }, (_, seed) =>
      timed(() => drawnToEnd(rankAcceptability(that, { weights, seed, draws }))),
    );
    const [processor, clock] = [median(times.map((one) => one.processor)), median(times.map((one) => one.clock))];
    console.log(
      `  ${weights.kind.padEnd(13)} ${String(100 * inDoubt).padStart(3)} % of values in doubt: ${processor.toFixed(0).padStart(5)} ms of the processor, ${clock.toFixed(0).padStart(5)} ms by the clock`,
    );
  }
}
