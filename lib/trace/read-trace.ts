import { failed, type In, measured, type Result, succeeded } from "#lib/quantity";
import { traceLimits } from "./limits";
import {
  standardGravity,
  type Trace,
  type TraceFormat,
  type TraceMapping,
  type TraceProblem,
  timeUnits,
} from "./model";
import { cellsOf, linesOf, numberOf, traceFormat } from "./trace-format";

/** A cell of a column with the line it stands on. */
type Sample = Readonly<{ line: number; read: string; value: number }>;

/** A step may be this much shorter or longer than the usual one: rounded times are uneven, a lost sample is a whole step. */
const stepTolerance = 0.5;

/**
 * The trace in a file. Every line from the first number to the last has to be a sample; nothing is skipped or filled in.
 * @returns the trace, or the first line that does not read with what was expected there
 */
export function traceFromText(text: string, mapping: TraceMapping): Result<Trace, TraceProblem> {
  const format = traceFormat(text);
  if (!format.ok) return format;
  const problem = mappingProblem(mapping, format.value);
  if (problem !== null) return failed(problem);
  const lines = linesOf(text);
  const samples = lines.length - format.value.firstDataLine + 1;
  if (samples < traceLimits.fewestSamples) return failed({ kind: "too-few-samples", samples });
  if (samples > traceLimits.mostSamples) return failed({ kind: "too-many-samples", samples });
  const interval = intervalOf(lines, format.value, mapping.time);
  if (!interval.ok) return interval;
  const levels = columnOf(lines, format.value, mapping.acceleration.column);
  if (!levels.ok) return levels;
  const scaled = levelsInG(levels.value, mapping.acceleration);
  return scaled.ok ? succeeded({ interval: measured("time", interval.value), levels: scaled.value }) : scaled;
}

function mappingProblem({ time, acceleration }: TraceMapping, { columns }: TraceFormat): TraceProblem | null {
  const wanted = time.kind === "column" ? [acceleration.column, time.column] : [acceleration.column];
  const missing = wanted.find((column) => !(Number.isInteger(column) && column >= 1 && column <= columns));
  if (missing !== undefined) return { kind: "column-missing", column: missing, columns };
  if (time.kind === "column" && time.column === acceleration.column)
    return { kind: "same-column", column: time.column };
  return null;
}

function columnOf(
  lines: readonly string[],
  { separator, decimal, firstDataLine }: TraceFormat,
  column: number,
): Result<readonly Sample[], TraceProblem> {
  const samples: Sample[] = [];
  for (let line = firstDataLine; line <= lines.length; line += 1) {
    const whole = lines[line - 1] ?? "";
    const read = cellsOf(whole, separator)[column - 1];
    if (read === undefined || read === "")
      return failed({ kind: "cell-missing", line, column, read: whole.trim().slice(0, 60) });
    const value = numberOf(read, decimal);
    if (value === null) return failed({ kind: "not-a-number", line, column, read: read.slice(0, 60), decimal });
    samples.push({ line, read, value });
  }
  return succeeded(samples);
}

function levelsInG(
  samples: readonly Sample[],
  { unit, sign }: TraceMapping["acceleration"],
): Result<readonly In<"g">[], TraceProblem> {
  const factor = (unit === "g" ? 1 : 1 / standardGravity) * (sign === "as-recorded" ? 1 : -1);
  const beyond = samples.find(({ value }) => !(Math.abs(value * factor) <= traceLimits.strongestLevel));
  if (beyond !== undefined) return failed({ kind: "level-out-of-reach", line: beyond.line, read: beyond.read });
  return succeeded(samples.map(({ value }) => measured("impactLevel", value * factor)));
}

/** Seconds between two samples: as stated, or from a column of times that rise evenly. */
function intervalOf(
  lines: readonly string[],
  format: TraceFormat,
  time: TraceMapping["time"],
): Result<number, TraceProblem> {
  if (time.kind === "sample-rate") {
    const rate = time.samplesPerSecond;
    return inReach(rate) ? succeeded(1 / rate) : failed({ kind: "sample-rate-out-of-reach", read: rate });
  }
  const times = columnOf(lines, format, time.column);
  if (!times.ok) return times;
  const problem = unevenness(times.value, timeUnits[time.unit]);
  if (problem !== null) return failed(problem);
  const first = times.value[0]?.value ?? 0;
  const last = times.value.at(-1)?.value ?? 0;
  const interval = ((last - first) * timeUnits[time.unit]) / (times.value.length - 1);
  return inReach(1 / interval) ? succeeded(interval) : failed({ kind: "sample-rate-out-of-reach", read: 1 / interval });
}

const inReach = (rate: number) => rate >= traceLimits.slowestRate && rate <= traceLimits.fastestRate;

/** The first time that does not follow from the ones before it at an even pace. */
function unevenness(times: readonly Sample[], unit: number): TraceProblem | null {
  const steps = times.slice(1).map(({ value }, index) => value - (times[index]?.value ?? value));
  const back = steps.findIndex((step) => !(step > 0));
  const problemAt = (index: number) => ({ line: times[index]?.line ?? 0, read: times[index]?.read ?? "" });
  if (back >= 0) return { kind: "time-not-rising", ...problemAt(back + 1), before: times[back]?.read ?? "" };
  const usual = steps.toSorted((a, b) => a - b)[Math.floor(steps.length / 2)] ?? 0;
  const origin = times[0]?.value ?? 0;
  const even = ((times.at(-1)?.value ?? 0) - origin) / steps.length;
  const uneven = steps.findIndex(
    (step, index) =>
      Math.abs(step - usual) > stepTolerance * usual ||
      Math.abs((times[index + 1]?.value ?? 0) - origin - (index + 1) * even) > even,
  );
  if (uneven < 0) return null;
  return {
    kind: "time-uneven",
    ...problemAt(uneven + 1),
    step: (steps[uneven] ?? 0) * unit,
    usualStep: usual * unit,
  };
}
