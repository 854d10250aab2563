// Time for the ranks of 20 bids on 40 criteria over 100,000 draws: `npm run bench:ranks`. Prints figures and judges nothing.
import { rankAcceptability } from "#lib/robustness";
import { drawnToEnd } from "#lib/sampling";
import { bids, choices, criteria, doubts, draws, rankComparison } from "./rank-comparison";
import { withRankWorker } from "./rank-worker";

const runs = 7;

/** Milliseconds of the processor, helpers of the engine among them, and of the clock. */
function timed(work: () => unknown): Readonly<{ processor: number; clock: number }> {
  const [start, before] = [performance.now(), process.cpuUsage()];
  work();
  const { user, system } = process.cpuUsage(before);
  return { processor: (user + system) / 1000, clock: performance.now() - start };
}

const median = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[values.length >> 1] ?? Number.NaN;
const padded = (milliseconds: number): string => milliseconds.toFixed(0).padStart(5);
const head = (kind: string, inDoubt: number): string =>
  `  ${kind.padEnd(13)} ${String(100 * inDoubt).padStart(3)} % of values in doubt:`;

console.log(
  `Ranks of ${bids} bids × ${criteria} criteria over ${draws.toLocaleString("en-US")} draws, medians of ${runs}\nIn Node`,
);
for (const inDoubt of doubts) {
  const that = rankComparison(inDoubt);
  for (const weights of choices) {
    const times = Array.from({ length: runs }, (_, seed) =>
      timed(() => drawnToEnd(rankAcceptability(that, { weights, seed, draws }))),
    );
    const [processor, clock] = [median(times.map((one) => one.processor)), median(times.map((one) => one.clock))];
    console.log(
      `${head(weights.kind, inDoubt)} ${padded(processor)} ms of the processor, ${padded(clock)} ms by the clock`,
    );
  }
}

const inBrowser = await withRankWorker(async ({ run, cancelled }) => {
  console.log("In the worker of the page, each run in a worker of its own, from its start to its outcome");
  for (const inDoubt of doubts) {
    const that = rankComparison(inDoubt);
    for (const weights of choices) {
      const outcomes: Awaited<ReturnType<typeof run>>[] = [];
      for (let at = 0; at < runs; at += 1) outcomes.push(await run(that, weights, draws));
      const times = outcomes.map(({ milliseconds }) => milliseconds);
      console.log(
        `${head(weights.kind, inDoubt)} ${padded(median(times))} ms by the clock, slowest ${padded(Math.max(...times))} ms, ${outcomes[0]?.reports} reports`,
      );
    }
  }
  console.log(`  cancelled in the page: ${padded(await cancelled())} ms until it says so`);
});
if (inBrowser === null) console.log("The worker of the page was not measured: no Chromium was found.");
