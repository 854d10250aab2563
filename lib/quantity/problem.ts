import { type CurrencyCode, withCurrencySign } from "./currency";
import { type DimensionDefinition, type DimensionName, dimensions } from "./dimensions";

/** The longest text that is read as a quantity, in characters. */
export const longestQuantity = 200;

/**
 * Why a text could not be read as a quantity. Facts only; the words are in `explainQuantity`. Money has the currency that
 * the text names, where it names one.
 */
export type QuantityProblem = Readonly<{ currency?: CurrencyCode }> & QuantityTrouble;

type QuantityTrouble = Readonly<
  | { kind: "nothing-written"; dimension: DimensionName }
  | { kind: "too-long"; dimension: DimensionName; length: number }
  | { kind: "number-missing"; dimension: DimensionName; read: string }
  | { kind: "text-before"; dimension: DimensionName; read: string }
  | { kind: "number-ambiguous"; dimension: DimensionName; read: string; readings: readonly [string, string] }
  | { kind: "number-unclear"; dimension: DimensionName; read: string }
  | { kind: "number-too-large"; dimension: DimensionName; read: string }
  | { kind: "unit-missing"; dimension: DimensionName; read: string }
  | { kind: "unit-unknown"; dimension: DimensionName; read: string; near: readonly string[] }
  | { kind: "unit-ambiguous"; dimension: DimensionName; read: string; readings: readonly string[] }
  | { kind: "wrong-dimension"; dimension: DimensionName; read: string; measures: readonly DimensionName[] }
  | { kind: "range-upside-down"; dimension: DimensionName; low: string; high: string }
  | { kind: "range-incomplete"; dimension: DimensionName; read: string }
  | { kind: "negative-not-allowed"; dimension: DimensionName; read: string }
  | { kind: "bounds-mixed"; dimension: DimensionName; read: string }
  | { kind: "text-left-over"; dimension: DimensionName; read: string; understood: string }
  | { kind: "not-one-number"; dimension: DimensionName; read: string }
>;

/** Says what was read and what was expected, in whole sentences. */
export const explainQuantity = (problem: QuantityProblem): string =>
  problem.currency === undefined ? explained(problem) : withCurrencySign(explained(problem), problem.currency);

function explained(problem: QuantityTrouble): string {
  const { dimension } = problem;
  const label = dimensions[dimension].label;
  switch (problem.kind) {
    case "nothing-written":
      return `Nothing is written here. Expected ${expected(dimension)}.`;
    case "too-long":
      return `The text has ${problem.length} characters; at most ${longestQuantity} are read. Expected ${expected(dimension)}.`;
    case "number-missing":
      return `No number was found in “${problem.read}”. Expected ${expected(dimension)}.`;
    case "text-before":
      return `“${problem.read}” in front of the number was not understood. Expected ${expected(dimension)}, with the number first.`;
    case "number-ambiguous":
      return `“${problem.read}” can be read as ${problem.readings.join(" or as ")}. Write the one you mean, with a comma between thousands and a point before decimals.`;
    case "number-unclear":
      return `“${problem.read}” was not understood as a number. Expected digits with a comma between thousands and a point before decimals, for instance 1,234.5, or a fraction, for instance 2-1/4.`;
    case "number-too-large":
      return `“${problem.read}” is beyond the numbers that can be kept here. Expected ${expected(dimension)} below 1,000,000,000,000,000.`;
    case "unit-missing":
      return dimension === "fraction"
        ? `“${problem.read}” has no unit, so it could mean ${problem.read} % or ${problem.read} times the whole. Write it with a percent sign, for instance “3 %”.`
        : `“${problem.read}” has no unit. Expected ${expected(dimension)}.`;
    case "unit-unknown":
      return problem.near.length > 0
        ? `The unit “${problem.read}” is not known here. Did you mean ${either(problem.near)}?`
        : `The unit “${problem.read}” is not known here. Expected ${expected(dimension)}.`;
    case "unit-ambiguous":
      return `The unit “${problem.read}” can be read as ${problem.readings.join(" or as ")}. Write the one you mean.`;
    case "wrong-dimension":
      return `“${problem.read}” is a unit of ${either(labelsOf(problem.measures))}. Expected ${expected(dimension)}.`;
    case "range-upside-down":
      return `The range runs from “${problem.low}” down to “${problem.high}”. Write the smaller figure first.`;
    case "range-incomplete":
      return `“${problem.read}” starts a range, but only one figure was read. Expected two, for instance “from 2 to 3” or “between 2 and 3”.`;
    case "negative-not-allowed":
      return dimension === "temperature"
        ? `“${problem.read}” is below absolute zero. Expected a temperature that can occur, for instance 70 °F.`
        : `“${problem.read}” is below zero. Expected ${label} of zero or more.`;
    case "bounds-mixed":
      return `“${problem.read}” gives a minimum or a maximum together with another limit. Expected one of the two, for instance “at least 2” or “2 to 3”.`;
    case "text-left-over":
      return `“${problem.understood}” was understood, “${problem.read}” after it was not. Expected ${expected(dimension)} and nothing else.`;
    case "not-one-number":
      return `“${problem.read}” is not one single number. Expected ${expected(dimension)}, without a range, a limit or a tolerance.`;
  }
}

/** "mass per area, for instance in lb/ft², kg/m², g/m² or oz/yd²" */
export function expected(dimension: DimensionName): string {
  const { label } = dimensions[dimension];
  const units = exampleUnits(dimension);
  return units.length > 0 ? `${label}, for instance in ${either(units)}` : `${label} as a plain number`;
}

/** The reader's units of both systems first, then others; the SI unit only where readers see it. At most four. */
function exampleUnits(dimension: DimensionName): readonly string[] {
  const { us, metric, si, units }: DimensionDefinition = dimensions[dimension];
  const others = Object.keys(units).filter((symbol) => symbol !== si);
  return [...new Set([us.unit, metric.unit, ...others])]
    .filter((symbol) => symbol !== "" && symbol !== "1")
    .slice(0, 4);
}

const labelsOf = (names: readonly DimensionName[]) => [...new Set(names.map((name) => dimensions[name].label))];

function either(choices: readonly string[]): string {
  const last = choices.at(-1) ?? "";
  return choices.length < 2 ? last : `${choices.slice(0, -1).join(", ")} or ${last}`;
}
