import { thinSpace } from "./plain-characters";
import { failed, type Result, succeeded } from "./result";

/** A number as it stands in the text. `end` is the index after it. */
export type WrittenNumber = Readonly<{ value: number; text: string; end: number }>;

/** Why digits could not be read as one number. */
type NumberProblem = Readonly<
  | { kind: "number-missing" }
  | { kind: "number-ambiguous"; read: string; readings: readonly [string, string] }
  | { kind: "number-unclear"; read: string }
  | { kind: "number-too-large"; read: string }
>;

/** No figure of the trade comes near; above it a number would lose whole units. */
const largest = 1e15;
/** Above it "3/8" is more likely two figures side by side than a fraction. */
const largestDenominator = 128;

/** The unsigned number that starts at `start`: "1,234.5", "3/8", "2-1/4", "2 1/4", "1.2e3", "1.2 × 10³". US convention. */
export function writtenNumber(text: string, start: number): Result<WrittenNumber, NumberProblem> {
  const digits = digitRun(text, start);
  if (digits.end === start) return failed({ kind: "number-missing" });
  const fraction = isWhole(digits.text) ? fractionAfter(text, start, digits) : null;
  if (fraction !== null) return fraction;
  const value = plainValue(digits.text);
  if (!value.ok) return value;
  const power = powerAfter(text, digits.end);
  const scaled = value.value * 10 ** power.exponent;
  const read = text.slice(start, power.end);
  if (!(scaled <= largest)) return failed({ kind: "number-too-large", read });
  return succeeded({ value: scaled, text: read, end: power.end });
}

type Run = Readonly<{ text: string; end: number }>;

const isDigit = (character: string | undefined) => character !== undefined && character >= "0" && character <= "9";
const isWhole = (text: string) => /^\d+$/.test(text);

/** Digits with the separators between them. A plain space counts where exactly three digits follow. */
function digitRun(text: string, start: number): Run {
  let end = start;
  while (
    isDigit(text[end]) ||
    (isSeparator(text[end]) && isDigit(text[end + 1])) ||
    spaceBetweenThousands(text, start, end)
  ) {
    end += 1;
  }
  return { text: text.slice(start, end), end };
}

const isSeparator = (character: string | undefined) =>
  character === "." || character === "," || character === thinSpace;

function spaceBetweenThousands(text: string, start: number, at: number): boolean {
  if (text[at] !== " " || at === start || !/^\d{1,3}( \d{3})*$/.test(text.slice(start, at))) return false;
  return /^ \d{3}(?![\d/])/.test(text.slice(at, at + 5));
}

/** What the digits are worth by the US convention, or the two ways to read them. */
function plainValue(written: string): Result<number, NumberProblem> {
  const text = written.replaceAll(thinSpace, ",");
  const grouped = /^[1-9]\d{0,2}(,\d{3})+(\.\d+)?$/.test(text);
  if (grouped || /^\d*(\.\d+)?$/.test(text)) return succeeded(Number(text.replaceAll(",", "")));
  const read = written.replaceAll(thinSpace, " ");
  if (/^\d{1,3}( \d{3})+$/.test(read)) return failed({ kind: "number-ambiguous", read, readings: spaceReadings(read) });
  const commaAsPoint = /^[\d. ]*,\d+$/.test(read) ? read.replaceAll(/[. ]/g, "").replace(",", ".") : null;
  const pointAsPoint = /^[\d, ]*(\.\d+)?(,\d+)?$/.test(read) ? read.replaceAll(/[, ]/g, "") : null;
  if (commaAsPoint === null || pointAsPoint === null) return failed({ kind: "number-unclear", read });
  return failed({ kind: "number-ambiguous", read, readings: [inUsDigits(commaAsPoint), inUsDigits(pointAsPoint)] });
}

const inUsDigits = (text: string) => new Intl.NumberFormat("en-US", { maximumFractionDigits: 20 }).format(Number(text));
const spaceReadings = (read: string) =>
  [inUsDigits(read.replaceAll(" ", "")), `the separate numbers ${read.split(" ").join(" and ")}`] as const;

/** "3/8" after whole digits, "-1/4" and " 1/4" as the rest of a mixed number; null where no fraction follows. */
function fractionAfter(text: string, start: number, whole: Run): Result<WrittenNumber, NumberProblem> | null {
  if (text[whole.end] === "/") {
    const below = digitsAt(text, whole.end + 1);
    return below.text === "" ? null : quotient(text.slice(start, below.end), 0, whole, below);
  }
  if (text[whole.end] !== "-" && text[whole.end] !== " ") return null;
  const above = digitsAt(text, whole.end + 1);
  const below = text[above.end] === "/" ? digitsAt(text, above.end + 1) : { text: "", end: above.end };
  if (above.text === "" || below.text === "" || Number(above.text) >= Number(below.text)) return null;
  if (text[whole.end] === "-" && Number(whole.text) === 0) return null; // "0-1/4 in" is a range from nothing
  return quotient(text.slice(start, below.end), Number(whole.text), above, below);
}

function quotient(read: string, whole: number, above: Run, below: Run): Result<WrittenNumber, NumberProblem> {
  const [numerator, denominator] = [Number(above.text), Number(below.text)];
  if (denominator === 0) return failed({ kind: "number-unclear", read });
  const value = whole + numerator / denominator;
  if (!(value <= largest)) return failed({ kind: "number-too-large", read });
  if (numerator < denominator && denominator <= largestDenominator)
    return succeeded({ value, text: read, end: below.end });
  const rounded = new Intl.NumberFormat("en-US", { maximumSignificantDigits: 6 }).format(value);
  return failed({
    kind: "number-ambiguous",
    read,
    readings: [`the fraction ${rounded}`, `the separate numbers ${above.text} and ${below.text}`],
  });
}

function digitsAt(text: string, start: number): Run {
  let end = start;
  while (isDigit(text[end])) end += 1;
  return { text: text.slice(start, end), end };
}

const superscripts = "⁰¹²³⁴⁵⁶⁷⁸⁹";

/** "e3", "E-7", " x 10^3", " x 10⁻³" after a number. An "e" that no digit follows is a letter of the unit. */
function powerAfter(text: string, start: number): Readonly<{ exponent: number; end: number }> {
  const next = text.slice(start, start + 16);
  const found =
    /^[eE]([+-]?\d{1,3})(?!\d)/.exec(next) ??
    /^ ?[x·] ?10\^([+-]?\d{1,3})(?!\d)/.exec(next) ??
    /^ ?[x·] ?10(⁻?[⁰¹²³⁴⁵⁶⁷⁸⁹]{1,3})/.exec(next);
  if (found === null) return { exponent: 0, end: start };
  const digits = (found[1] ?? "")
    .replace("⁻", "-")
    .replace(/[⁰¹²³⁴⁵⁶⁷⁸⁹]/g, (digit) => `${superscripts.indexOf(digit)}`);
  return { exponent: Number(digits), end: start + found[0].length };
}
