// Time for 100,000 sampled life-cycle costs of 6 bids over 30 years, against numpy: `npm run bench:cost`. It wants
// Debian's python3-numpy, or another Python by the variable PYTHON. Prints figures and judges nothing.
import { spawnSync } from "node:child_process";
import {
  amountCents,
  costConventionsSchema,
  costOutcome,
  drawCosts,
  type InputTarget,
  type LineInput,
  linesModel,
  type PriceLine,
  priceLinesSchema,
} from "#lib/cost";
import { type In, measured } from "#lib/quantity";
import { type Distribution, drawnToEnd } from "#lib/sampling";
import { bidLines, conventionsText, workedTerms } from "../checks/cost-example";

const samples = 100_000;
const runs = 9;
const years = 30;
const lives = [8, 10, 12];
const lifeChances = [0.3, 0.45, 0.25];
const conventions = costConventionsSchema.parse({ ...conventionsText, studyPeriod: `${years} years` });
const area = measured("area", 80_000, "ft²") as In<"m²">;

/** Six bids: the three of the worked example, and the three again a little dearer. */
const bids = (["a", "b", "c"] as const).flatMap((letter) =>
  [1, 1.05].map((factor, again) => {
    const lines = priceLinesSchema.parse(bidLines(workedTerms[letter]));
    return { bid: `${letter}${again}`, lines: lines.map((line) => scaledLine(line, factor)), factor };
  }),
);
function scaledLine(line: PriceLine, factor: number): PriceLine {
  if (line.kind !== "replacement-chain" || line.amount.kind !== "per-area") return line;
  const value = (line.amount.price.value * factor) as typeof line.amount.price.value;
  return { ...line, amount: { ...line.amount, price: { ...line.amount.price, value } } };
}

const everywhere = (line: string) => bids.map(({ bid }) => ({ bid, line }));
const input = (id: string, distribution: Distribution, base: number, target: InputTarget): LineInput => ({
  ...{ id, label: id, distribution, base, target, driver: null },
});
const perArea = (dollars: number) => measured("moneyPerArea", dollars, "$/ft²") as number;
const perHour = (dollars: number) => measured("moneyPerTime", dollars, "$/h") as number;
const perPound = (dollars: number) => measured("moneyPerMass", dollars, "$/lb") as number;
const fee = [0.5, 0.85, 2].map(perArea) as [number, number, number];
const wage = [40, 48, 60].map(perHour) as [number, number, number];
const triple = ([low, likely, high]: readonly [number, number, number]) => ({ low, likely, high });
const amountOf = (
  line: string,
  part: "price" | "unit-price" | "removal-price",
  kind: "set" | "in-proportion",
): InputTarget => ({
  ...{ kind: "amount", of: everywhere(line), part, move: { kind } },
});
const lineOf = (lines: readonly PriceLine[], id: string) => {
  const found = lines.find((line) => line.id === id);
  if (found === undefined) throw new RangeError(`no line ${id}`);
  return found;
};
const quantityOf = (line: PriceLine) => (line.amount.kind === "per-unit" ? (line.amount.quantity.value as number) : 0);

const inputs: readonly LineInput[] = [
  input(
    "index",
    { kind: "triangular", low: 0.9, likely: 1, high: 1.3 },
    1,
    amountOf("carpet", "price", "in-proportion"),
  ),
  input("wage", { kind: "triangular", ...triple(wage) }, perHour(48), amountOf("grooming", "unit-price", "set")),
  input(
    "top-up price",
    { kind: "lognormal", mean: perPound(0.4), variation: 0.25 },
    perPound(0.4),
    amountOf("top-up", "unit-price", "set"),
  ),
  input("fee", { kind: "pert", ...triple(fee) }, perArea(0.85), amountOf("carpet", "removal-price", "set")),
  input("carpet growth", { kind: "uniform", low: 0, high: 0.03 }, 0, { kind: "escalation", of: everywhere("carpet") }),
  input("labour growth", { kind: "uniform", low: 0, high: 0.02 }, 0, {
    kind: "escalation",
    of: everywhere("grooming"),
  }),
  input("repair growth", { kind: "uniform", low: 0.01, high: 0.03 }, 0.02, {
    kind: "escalation",
    of: everywhere("repairs"),
  }),
  input("rate", { kind: "triangular", low: 0.02, likely: 0.03, high: 0.05 }, 0.03, { kind: "real-rate" }),
  ...bids.flatMap(({ bid, lines }) => {
    const hours = quantityOf(lineOf(lines, "grooming"));
    return [
      input(`hours ${bid}`, { kind: "normal", mean: hours, deviation: hours / 8 }, hours, {
        ...{ kind: "amount", of: [{ bid, line: "grooming" }], part: "quantity", move: { kind: "set" } },
      }),
      input(
        `life ${bid}`,
        { kind: "discrete", values: lives.map((value, at) => ({ value, chance: lifeChances[at] ?? 0 })) },
        10,
        { kind: "life", of: [{ bid, line: "carpet" }] },
      ),
    ];
  }),
];

/** Milliseconds of the processor, those of the engine’s own helpers among them: the clock counts what others do too. */
function processorTime(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

const median = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[values.length >> 1] ?? Number.NaN;
const model = linesModel(bids, inputs, { area, conventions });
const work = (seed: number) => costOutcome(drawnToEnd(drawCosts(model, { seed, samples })));
const first = processorTime();
work(0);
const firstTime = processorTime() - first;
const all = Array.from({ length: runs }, (_, run) => {
  const start = processorTime();
  const outcome = work(run + 1);
  return { milliseconds: processorTime() - start, outcome };
});
const ours = median(all.map(({ milliseconds }) => milliseconds));

/** Cents of a price per area or a lump sum. */
const cents = (line: PriceLine): number => amountCents(line.amount, area);
const asked = {
  ...{ samples, runs, years, lives, lifeChances },
  shared: {
    ...{ index: [0.9, 1, 1.3], wage, fee, rate: [0.02, 0.03, 0.05] },
    topUpPrice: { mean: perPound(0.4), variation: 0.25 },
    ...{ carpetGrowth: [0, 0.03], labourGrowth: [0, 0.02], repairGrowth: [0.01, 0.03] },
  },
  bids: bids.map(({ lines }) => {
    const of = (id: string) => cents(lineOf(lines, id));
    const carpet = lineOf(lines, "carpet");
    const hours = quantityOf(lineOf(lines, "grooming"));
    return {
      ...{ area, carpet: of("carpet"), base: of("base"), baseLife: 30, pad: of("pad"), padLife: 20 },
      renewalSaving: carpet.kind === "replacement-chain" ? (carpet.renewalSaving?.value ?? 0) : 0,
      additions: lines.reduce((sum, line) => (line.kind === "at-base-date" ? sum + cents(line) : sum), 0),
      hours: { mean: hours, deviation: hours / 8 },
      ...{ topUp: quantityOf(lineOf(lines, "top-up")), water: of("water"), test: of("impact-test") },
      ...{ repairs: of("repairs"), clean: of("deep-clean"), cleanYears: [2, 4, 6, 8, 12, 14, 16, 18] },
    };
  }),
};
const one = { OMP_NUM_THREADS: "1", OPENBLAS_NUM_THREADS: "1", MKL_NUM_THREADS: "1" };
const python = spawnSync(process.env.PYTHON ?? "/usr/bin/python3", ["test/load/cost-sampling.py"], {
  ...{ input: JSON.stringify(asked), encoding: "utf8", env: { ...process.env, ...one } },
});

console.log(
  `${samples.toLocaleString("en-US")} samples of ${bids.length} bids over ${years} years with ${inputs.length} uncertain inputs; processor time on both sides`,
);
console.log(
  `  here ${ours.toFixed(0)} ms (median of ${runs}; first of the process ${firstTime.toFixed(0)} ms), ${all[0]?.outcome.bids.map(({ how }) => how).join(", ")}`,
);
if (python.status !== 0) console.log(`  numpy was not measured: ${python.error?.message ?? python.stderr.trim()}`);
else {
  const { numpy, times, means } = JSON.parse(python.stdout) as {
    numpy: string;
    times: Record<string, number>;
    means: Record<string, readonly number[]>;
  };
  const furthest = (those: readonly number[]) =>
    Math.max(
      ...(all[0]?.outcome.bids.map(
        ({ mean }, at) => Math.abs(mean.value - (those[at] ?? 0)) / (Math.SQRT2 * mean.standardError),
      ) ?? []),
    );
  for (const [name, milliseconds] of Object.entries(times))
    console.log(
      `  numpy ${numpy}, ${name}: ${milliseconds.toFixed(0)} ms, ratio ${(ours / milliseconds).toFixed(2)}; means agree to ${furthest(means[name] ?? []).toFixed(1)} standard errors`,
    );
}
