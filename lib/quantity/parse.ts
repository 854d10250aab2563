import { siOf, unitDefinition } from "./convert";
import { writtenCurrency } from "./currency";
import { type DimensionDefinition, type DimensionName, dimensions, type SiUnit } from "./dimensions";
import { type Qualifier, qualifierAfter, qualifierBefore } from "./limits";
import { inPlainCharacters } from "./plain-characters";
import { longestQuantity, type QuantityProblem } from "./problem";
import type { ExactQuantity, Quantity, Reading } from "./quantity";
import { failed, type Result, succeeded } from "./result";
import type { In } from "./unit";
import { unitOf, type WrittenFigure, writtenFigure } from "./written-figure";

/**
 * Reads a figure as the trade writes it: "9 lb/ft²", "2-1/4 in", "≥ 9 psf", "2–3 lb/ft²", "9 lb/ft² ± 5 %", "$4.85/ft²".
 * "About 9" is read as exactly 9 and "more than 9" as at least 9; `asEntered` keeps the words.
 */
export function parseQuantity<D extends DimensionName>(
  dimension: D,
  text: string,
): Result<Quantity<D>, QuantityProblem> {
  const asEntered = text.trim();
  if (asEntered === "") return failed({ kind: "nothing-written", dimension });
  if (asEntered.length > longestQuantity) return failed({ kind: "too-long", dimension, length: asEntered.length });
  const typed = inPlainCharacters(asEntered)
    .replaceAll(/ {2,}/g, " ")
    .replaceAll(/\+ ?\/? ?-/g, "±");
  // whether a currency is the project's is asked where both are known
  const { code, plain } = dimension.startsWith("money") ? writtenCurrency(typed) : { code: null, plain: typed };
  const statement = statementIn(dimension, plain);
  if (!statement.ok) {
    const problem = asTyped(statement.problem, plain, asEntered);
    return failed(code === null ? problem : { ...problem, currency: code });
  }
  const { unit, reading } = statement.value;
  // The numbers were converted to the SI unit of the dimension just before.
  return succeeded({ asEntered, dimension, unit, reading: reading as Reading<SiUnit<D>> });
}

/** Reads a figure that has to be one number. "About 9" is 9; ranges, limits and tolerances are refused. */
export function parseExact<D extends DimensionName>(
  dimension: D,
  text: string,
): Result<ExactQuantity<D>, QuantityProblem> {
  const parsed = parseQuantity(dimension, text);
  if (!parsed.ok) return parsed;
  const { asEntered, unit, reading } = parsed.value;
  if (reading.kind !== "exact") return failed({ kind: "not-one-number", dimension, read: asEntered });
  return succeeded({ asEntered, dimension, unit, value: reading.value });
}

/** Where a problem is about the whole text, people see it the way they typed it. */
const asTyped = (problem: QuantityProblem, plain: string, asEntered: string): QuantityProblem =>
  "read" in problem && problem.read === plain ? { ...problem, read: asEntered } : problem;

type Statement = Readonly<{ unit: string; reading: Reading }>;
type Parsed<T> = Result<T, QuantityProblem>;
/** A figure or pair of figures with the index after it and what was not understood of its unit text. */
type Body = Statement & Readonly<{ end: number; left: string }>;

/** The qualifiers before, the figure or figures, the qualifiers after, and nothing else. */
function statementIn(dimension: DimensionName, text: string): Parsed<Statement> {
  const opening = qualifiersFrom(text, 0, qualifierBefore);
  const body = bodyAt(dimension, text, opening);
  if (!body.ok) return body;
  const { unit, reading, end, left } = body.value;
  if (left !== "") return failed(leftOver(dimension, text, text.lastIndexOf(left, end)));
  const start = skipped(text, end, /^ ?\(? ?/);
  const closing = qualifiersFrom(text, start, qualifierAfter);
  const after = skipped(text, closing.found.length > 0 ? closing.end : end, /^ ?\)?\.? ?/);
  if (after < text.length) return failed(leftOver(dimension, text, closing.found.length > 0 ? after : end));
  const limits = [...opening.found, ...closing.found].filter((found) => found === "at-least" || found === "at-most");
  const limited = limitedBy(dimension, text, reading, limits);
  return limited.ok ? succeeded({ unit, reading: limited.value }) : limited;
}

type Qualifiers = Readonly<{ found: readonly Qualifier[]; end: number }>;

function qualifiersFrom(text: string, start: number, read: typeof qualifierBefore): Qualifiers {
  const found: Qualifier[] = [];
  let end = start;
  for (let hit = read(text, end); hit !== null; hit = read(text, end)) {
    found.push(hit.qualifier);
    end = hit.end;
  }
  return { found, end };
}

function limitedBy(
  dimension: DimensionName,
  read: string,
  reading: Reading,
  limits: readonly ("at-least" | "at-most")[],
): Parsed<Reading> {
  const [limit, ...more] = limits;
  if (limit === undefined) return succeeded(reading);
  if (more.length > 0 || reading.kind !== "exact") return failed({ kind: "bounds-mixed", dimension, read });
  return succeeded(limit === "at-least" ? { kind: limit, low: reading.value } : { kind: limit, high: reading.value });
}

function bodyAt(dimension: DimensionName, text: string, { found, end }: Qualifiers): Parsed<Body> {
  const first = writtenFigure(dimension, text, end);
  if (!first.ok) return first;
  const tolerance = skippedOrNull(text, first.value.end, /^ ?\(? ?± ?/);
  if (tolerance !== null) return withTolerance(dimension, text, first.value, tolerance);
  const connector = found.includes("between") ? /^ ?and /i : /^(?: ?- ?| to |to )/i;
  const second = skippedOrNull(text, first.value.end, connector);
  if (second !== null) return rangeFrom(dimension, text, first.value, second);
  if (found.includes("between") || found.includes("from"))
    return failed({ kind: "range-incomplete", dimension, read: text });
  return exactly(dimension, first.value);
}

function exactly(dimension: DimensionName, figure: WrittenFigure): Parsed<Body> {
  const value = siValue(dimension, figure);
  if (!value.ok) return value;
  const { unit, left, si } = value.value;
  return succeeded({ unit, left, end: figure.end, reading: { kind: "exact", value: si } });
}

type Value = Readonly<{ unit: string; left: string; si: In<string> }>;

function siValue(dimension: DimensionName, figure: WrittenFigure): Parsed<Value> {
  const found = unitOf(dimension, figure);
  if (!found.ok) return found;
  const { unit, left } = found.value;
  const si = siOf(dimension, figure.value, unit);
  const definition: DimensionDefinition = dimensions[dimension];
  if (si < 0 && definition.signed !== true)
    return failed({ kind: "negative-not-allowed", dimension, read: figure.text });
  return succeeded({ unit, left, si: si as In<string> });
}

/** "2–3 lb/ft²" names the unit once, "$2–3/ft²" the currency on one side and the rest on the other. */
function rangeFrom(dimension: DimensionName, text: string, low: WrittenFigure, start: number): Parsed<Body> {
  const high = writtenFigure(dimension, text, start);
  if (!high.ok) return high.problem.kind === "number-missing" ? failed(leftOver(dimension, text, low.end)) : high;
  const currency = low.currency === "" ? high.value.currency : low.currency;
  const from = siValue(dimension, {
    ...low,
    currency: low.unitText.startsWith("$") ? "" : currency,
    unitText: low.unitText === "" ? high.value.unitText : low.unitText,
  });
  if (!from.ok) return from;
  if (from.value.left !== "") return failed(leftOver(dimension, text, text.lastIndexOf(from.value.left, low.end)));
  const to = siValue(dimension, {
    ...high.value,
    currency: high.value.currency === "" ? currency : high.value.currency,
    unitText: high.value.unitText === "" ? low.unitText : high.value.unitText,
  });
  if (!to.ok) return to;
  const { unit, si } = from.value;
  if (si > to.value.si) return failed({ kind: "range-upside-down", dimension, low: low.text, high: high.value.text });
  return succeeded({
    unit,
    left: to.value.left,
    end: high.value.end,
    reading: { kind: "range", low: si, high: to.value.si },
  });
}

/** "± 0.5", "± 0.5 lb/ft²" or "± 5 %"; the unit may stand on either side. */
function withTolerance(dimension: DimensionName, text: string, figure: WrittenFigure, start: number): Parsed<Body> {
  const tolerance = writtenFigure(dimension, text, start);
  if (!tolerance.ok)
    return tolerance.problem.kind === "number-missing" ? failed(leftOver(dimension, text, figure.end)) : tolerance;
  const percent = dimension === "fraction" ? null : /^(?:%|percent) ?/i.exec(tolerance.value.unitText);
  const ownUnit = percent === null ? tolerance.value.unitText : tolerance.value.unitText.slice(percent[0].length);
  const value = siValue(dimension, { ...figure, unitText: figure.unitText === "" ? ownUnit : figure.unitText });
  if (!value.ok) return value;
  const { unit, si, left } = value.value;
  if (left !== "" && figure.unitText !== "")
    return failed(leftOver(dimension, text, text.lastIndexOf(left, figure.end)));
  const spread = toleranceOf(
    dimension,
    { ...tolerance.value, unitText: ownUnit },
    unit,
    percent === null ? null : figure.value,
  );
  if (!spread.ok) return spread;
  return succeeded({
    unit,
    left: spread.value.left,
    end: skipped(text, tolerance.value.end, /^ ?\)/),
    reading: { kind: "plus-or-minus", value: si, tolerance: spread.value.si as In<string> },
  });
}

/** A tolerance is a difference, so a unit's own zero (°F) does not enter. `percentOf` is the number it is a share of. */
function toleranceOf(
  dimension: DimensionName,
  tolerance: WrittenFigure,
  unit: string,
  percentOf: number | null,
): Parsed<Readonly<{ si: number; left: string }>> {
  const own = tolerance.unitText === "" ? succeeded({ unit, left: "" }) : unitOf(dimension, tolerance);
  if (!own.ok) return own;
  const { factor } = unitDefinition(dimension, percentOf === null ? own.value.unit : unit);
  const size = percentOf === null ? tolerance.value : Math.abs(percentOf) * (tolerance.value / 100);
  if (size < 0) return failed({ kind: "negative-not-allowed", dimension, read: tolerance.text });
  return succeeded({ si: size * factor, left: own.value.left });
}

function leftOver(dimension: DimensionName, text: string, from: number): QuantityProblem {
  const understood = text.slice(0, from).trim();
  const read = text.slice(from).trim();
  return understood === ""
    ? { kind: "number-missing", dimension, read }
    : { kind: "text-left-over", dimension, read, understood };
}

function skippedOrNull(text: string, start: number, what: RegExp): number | null {
  const hit = what.exec(text.slice(start));
  return hit === null ? null : start + hit[0].length;
}

const skipped = (text: string, start: number, what: RegExp) => skippedOrNull(text, start, what) ?? start;
