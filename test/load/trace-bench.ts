// Time for the head injury criterion of long traces: `npm run bench:trace`. Prints figures and judges nothing.
import { measured } from "#lib/quantity";
import { headInjuryCriterion, type Trace } from "#lib/trace";

const samples = 10_000;
const traceOf = (level: (share: number, at: number) => number): Trace => ({
  interval: measured("time", 1 / 20_000),
  levels: Array.from({ length: samples }, (_, at) => measured("impactLevel", level(at / samples, at))),
});

/** The same noise in every run: a linear congruential generator. @source constants of Numerical Recipes, from memory */
function noise(): () => number {
  let state = 12_345;
  return () => {
    state = (state * 1_664_525 + 1_013_904_223) % 2 ** 32;
    return state / 2 ** 32 - 0.5;
  };
}

let wandered = 0;
const steps = noise();
const hiss = noise();
const traces: Readonly<Record<string, Trace>> = {
  "an impact of 10 ms with quiet before and after": traceOf((share) =>
    share > 0.4 && share < 0.42 ? 150 * Math.sin((Math.PI * (share - 0.4)) / 0.02) + 2 * hiss() : 2 * hiss(),
  ),
  "one half-sine over the whole trace": traceOf((share) => 150 * Math.sin(Math.PI * share)),
  "noise between 0 and 200 g": traceOf(() => 100 + 200 * hiss()),
  "a wandering level": traceOf(() => {
    wandered += 10 * steps();
    return wandered;
  }),
  "forty blows": traceOf((share) => 100 * Math.sin(40 * Math.PI * share) ** 2),
  "a level that only rises": traceOf((share) => 200 * share ** 2),
};

const median = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

console.log(`Head injury criterion of ${samples.toLocaleString("en-US")} samples, median and slowest of 41 runs`);
for (const [name, trace] of Object.entries(traces))
  for (const window of ["any-length", "15-ms", "36-ms"] as const) {
    const times = Array.from({ length: 61 }, () => {
      const start = performance.now();
      headInjuryCriterion(trace, window);
      return performance.now() - start;
    }).slice(20);
    console.log(
      `  ${name.padEnd(48)} ${window.padEnd(10)} ${median(times).toFixed(2).padStart(6)} ms ${Math.max(...times)
        .toFixed(2)
        .padStart(7)} ms`,
    );
  }
