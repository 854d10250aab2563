import { traceLimits } from "./limits";
import type { TraceProblem } from "./model";

const whole = (number: number) => number.toLocaleString("en-US");
const milliseconds = (seconds: number) => `${Number((seconds * 1000).toPrecision(4))} ms`;
const columnsInWords = (columns: number) => (columns === 1 ? "one column" : `${columns} columns`);

/** Says which line is meant, what was read there and what was expected. */
export function explainTrace(problem: TraceProblem): string {
  switch (problem.kind) {
    case "too-long":
      return `The file has ${whole(problem.length)} characters; at most ${whole(traceLimits.characters)} are read. Cut it down to the impact.`;
    case "no-numbers":
      return `No lines of numbers were found; the file begins with “${problem.read}”. Expected one sample on each line: a time and an acceleration, or an acceleration alone.`;
    case "separator-ambiguous":
      return `Line ${problem.line}, “${problem.read}”, can be read as ${problem.readings.join(" or as ")}. Put a heading above each column, or separate the columns with semicolons or tabs.`;
    case "column-missing":
      return `Column ${problem.column} was asked for; the file has ${columnsInWords(problem.columns)} of numbers.`;
    case "same-column":
      return `Column ${problem.column} is named for the time and for the acceleration. Expected two different columns.`;
    case "sample-rate-out-of-reach":
      return `The samples come at ${whole(Number(problem.read.toPrecision(4)))} a second. Expected ${whole(traceLimits.slowestRate)} to ${whole(traceLimits.fastestRate)} a second; is the unit of the time the right one?`;
    case "cell-missing":
      return `Line ${problem.line} reads “${problem.read}” and has nothing in column ${problem.column}. Expected a number there, as on the lines above.`;
    case "not-a-number":
      return `Line ${problem.line}, column ${problem.column} reads “${problem.read}”. Expected a number with “${problem.decimal}” before decimals, as on the lines above.`;
    case "level-out-of-reach":
      return `Line ${problem.line} gives an acceleration of “${problem.read}”. Expected at most ${whole(traceLimits.strongestLevel)} g; is the unit the right one?`;
    case "time-not-rising":
      return `On line ${problem.line} the time is “${problem.read}” after “${problem.before}”. Expected times that rise from line to line.`;
    case "time-uneven":
      return `Before line ${problem.line}, time “${problem.read}”, the step is ${milliseconds(problem.step)}; the usual one is ${milliseconds(problem.usualStep)}. Expected even steps, without a sample missing.`;
    case "too-few-samples":
      return `The file holds ${problem.samples} ${problem.samples === 1 ? "sample" : "samples"}. Expected at least ${traceLimits.fewestSamples}.`;
    case "too-many-samples":
      return `The file holds ${whole(problem.samples)} samples; at most ${whole(traceLimits.mostSamples)} are read. Cut it down to the impact.`;
  }
}
