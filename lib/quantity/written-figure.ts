import { unitDefinition } from "./convert";
import type { DimensionName } from "./dimensions";
import { endsUnit } from "./limits";
import type { QuantityProblem } from "./problem";
import { failed, type Result, succeeded } from "./result";
import { unitReading } from "./spelling";
import { type WrittenNumber, writtenNumber } from "./written-number";

/** One number with the unit text around it, not looked up yet: a range may name the unit on the other side. */
export type WrittenFigure = Readonly<{
  /** With its sign. */
  value: number;
  /** A currency sign in front of the number, else "". */
  currency: string;
  /** What stands after the number, else "". */
  unitText: string;
  text: string;
  end: number;
}>;

/** The figure that starts at `start`, for example "12' 6\"", "$4.85/ft²", "-2.5 %". */
export function writtenFigure(
  dimension: DimensionName,
  text: string,
  start: number,
): Result<WrittenFigure, QuantityProblem> {
  const opening = /^([+-]? ?)((?:us\$|usd|[$€£¥]) ?)?([+-] ?)?/i.exec(text.slice(start, start + 10));
  const [whole = "", sign = "", currency = "", laterSign = ""] = opening ?? [];
  const number = writtenNumber(text, start + whole.length);
  if (!number.ok) return failed(numberProblem(dimension, text, start, number.problem));
  const unitText = unitTextAt(dimension, text, number.value.end);
  const end = number.value.end + unitText.length;
  const negative = `${sign}${laterSign}`.includes("-");
  const figure = {
    value: negative ? -number.value.value : number.value.value,
    currency: currency.trim(),
    unitText: unitText.trim(),
    text: text.slice(start, end).trim(),
    end,
  };
  return succeeded(withInches(dimension, text, start, figure));
}

type Found = Exclude<ReturnType<typeof writtenNumber>, { ok: true }>["problem"];

function numberProblem(dimension: DimensionName, text: string, start: number, problem: Found): QuantityProblem {
  if (problem.kind !== "number-missing") return { dimension, ...problem };
  const distance = text.slice(start).search(/\d/);
  if (distance < 0) return { kind: "number-missing", dimension, read: text };
  return { kind: "text-before", dimension, read: text.slice(start, start + distance).trim() };
}

/** The text of the unit after a number, up to what can't belong to a unit. */
function unitTextAt(dimension: DimensionName, text: string, start: number): string {
  let end = start;
  while (end < text.length && !unitEndsAt(dimension, text, start, end)) end += 1;
  return text.slice(start, end);
}

function unitEndsAt(dimension: DimensionName, text: string, start: number, at: number): boolean {
  const character = text[at] ?? "";
  const before = text[at - 1] ?? "";
  if ("±~<>=,;:!?+".includes(character)) return true;
  if (character === "(") return !/[/·]$/.test(text.slice(start, at));
  if (character === ")") return !text.slice(start, at).includes("(");
  if (character === "-") return !/^-[a-z]/i.test(text.slice(at, at + 2)) || before === " ";
  if (/\d/.test(character)) return !digitBelongsToUnit(text, start, at);
  if (!/[a-z]/i.test(character) || /[a-z]/i.test(before)) return false;
  const word = /^[a-z]+/i.exec(text.slice(at))?.[0] ?? "";
  const unitSoFar = text.slice(start, at).trim();
  if (before === "-" || unitSoFar === "G") return false; // "g-max" and "G max" name the unit, "165 g max" a limit
  const first = unitSoFar === "";
  return endsUnit(word) && !(first && unitReading(dimension, word).kind === "known");
}

/** "ft2", "m^2", the "1" of "1/in", and the length of "per 10 cm" and "/100 mm". */
function digitBelongsToUnit(text: string, start: number, at: number): boolean {
  const before = text.slice(start, at);
  if (/^ ?1\/[a-z]/i.test(text.slice(at, at + 3)) && before.trim() === "") return true;
  if (/(?:\/|\bper) ?\d{0,2}$/i.test(before) && /^\d{1,3} ?[cm]m\b/i.test(text.slice(at))) return true;
  return before !== "" && /[a-z^]$/i.test(before);
}

/** Feet followed by inches become one figure in feet: `12' 6"`, `5 ft 3-1/2 in`, `12'-6"`. */
function withInches(dimension: DimensionName, text: string, start: number, feet: WrittenFigure): WrittenFigure {
  if (!isUnit(dimension, feet, "ft")) return feet;
  const gap = /^(?:-|, ?| )?/.exec(text.slice(feet.end, feet.end + 2))?.[0].length ?? 0;
  const number = writtenNumber(text, feet.end + gap);
  if (!number.ok || number.value.value >= 12) return feet;
  const unitText = unitTextAt(dimension, text, number.value.end);
  const end = number.value.end + unitText.length;
  const inches = { ...feet, unitText: unitText.trim() };
  if (!isUnit(dimension, inches, "in")) return feet;
  return { ...feet, value: feetAndInches(feet.value, number.value), text: text.slice(start, end).trim(), end };
}

function isUnit(dimension: DimensionName, figure: WrittenFigure, unit: string): boolean {
  if (dimension !== "length" && dimension !== "distance") return false;
  const reading = unitReading(dimension, figure.unitText);
  return reading.kind === "known" && reading.unit === unit;
}

function feetAndInches(feet: number, inches: WrittenNumber): number {
  const parts = inches.value * (unitDefinition("length", "in").factor / unitDefinition("length", "ft").factor);
  return feet < 0 ? feet - parts : feet + parts;
}

/** The symbol of the unit, and what was left of the unit text after it: "lb/ft² of infill" leaves "of infill". */
type FoundUnit = Readonly<{ unit: string; left: string }>;

/** Looks up the unit of a figure; words after a known unit are handed back, not guessed at. */
export function unitOf(dimension: DimensionName, figure: WrittenFigure): Result<FoundUnit, QuantityProblem> {
  const written = withCurrency(figure, figure.unitText);
  if (written === "") return unitLeftOut(dimension, figure);
  const cuts = [figure.unitText.length, ...spacesFromTheEnd(figure.unitText)];
  const readings = cuts.map((cut) => {
    const read = withCurrency(figure, figure.unitText.slice(0, cut));
    return { read, left: figure.unitText.slice(cut).trim(), reading: unitReading(dimension, read) };
  });
  for (const { read, left, reading } of readings) {
    if (reading.kind === "known") return succeeded({ unit: reading.unit, left });
    if (reading.kind === "ambiguous")
      return failed({ kind: "unit-ambiguous", dimension, read, readings: reading.units });
  }
  for (const { read, reading } of readings) {
    if (reading.kind === "elsewhere")
      return failed({ kind: "wrong-dimension", dimension, read, measures: reading.measures });
  }
  const near = readings.flatMap(({ reading }) => (reading.kind === "unknown" ? reading.near : []));
  return failed({
    kind: "unit-unknown",
    dimension,
    read: written,
    near: isForeign(figure) ? [] : [...new Set(near)].slice(0, 3),
  });
}

/** Another currency is not a misspelt dollar. */
const isForeign = ({ currency, unitText }: WrittenFigure) => /[€£¥]/.test(`${currency}${unitText}`);

const withCurrency = ({ currency }: WrittenFigure, unitText: string) =>
  /^[a-z]/i.test(unitText) ? `${currency} ${unitText}`.trim() : `${currency}${unitText}`;

const spacesFromTheEnd = (text: string) => [...text.matchAll(/ /g)].map(({ index }) => index).toReversed();

function unitLeftOut(dimension: DimensionName, figure: WrittenFigure): Result<FoundUnit, QuantityProblem> {
  const reading = unitReading(dimension, "");
  if (reading.kind === "known") return succeeded({ unit: reading.unit, left: "" });
  if (dimension === "fraction" && figure.value === 0) return succeeded({ unit: "%", left: "" });
  return failed({ kind: "unit-missing", dimension, read: figure.text });
}
