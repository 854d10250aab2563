import { type DimensionDefinition, type DimensionName, dimensions } from "./dimensions";

/** What a written unit is, seen from one dimension. */
type UnitReading = Readonly<
  | { kind: "known"; unit: string }
  | { kind: "ambiguous"; units: readonly string[] }
  | { kind: "elsewhere"; measures: readonly DimensionName[] }
  | { kind: "unknown"; near: readonly string[] }
>;

/** Words that mean the same in every dimension, so that the tables need not repeat every combination. */
const canonical: Readonly<Record<string, string>> = {
  lbs: "lb",
  pound: "lb",
  pounds: "lb",
  "#": "lb",
  ounce: "oz",
  ounces: "oz",
  inch: "in",
  inches: "in",
  '"': "in",
  foot: "ft",
  feet: "ft",
  "'": "ft",
  yard: "yd",
  yards: "yd",
  yds: "yd",
  metre: "m",
  metres: "m",
  meter: "m",
  meters: "m",
  millimetre: "mm",
  millimetres: "mm",
  millimeter: "mm",
  millimeters: "mm",
  gram: "g",
  grams: "g",
  kilogram: "kg",
  kilograms: "kg",
  litre: "L",
  litres: "L",
  liter: "L",
  liters: "L",
  gallon: "gal",
  gallons: "gal",
  hour: "h",
  hours: "h",
  hr: "h",
  hrs: "h",
  weeks: "week",
  wk: "week",
  years: "year",
  yr: "year",
  yrs: "year",
  sf: "ft2",
  sqft: "ft2",
  sy: "yd2",
  sqyd: "yd2",
  sqm: "m2",
  cf: "ft3",
  cuft: "ft3",
  cy: "yd3",
  usd: "$",
  us$: "$",
  dollar: "$",
  dollars: "$",
  cents: "cent",
  "¢": "cent",
  deg: "°",
  degree: "°",
  degrees: "°",
  sq: "sq",
  cu: "cu",
  square: "sq",
  cubic: "cu",
  per: "/",
  a: "/",
  an: "/",
};

/**
 * The form in which spellings are compared: words that mean the same made one, "square foot" as "ft2", "per" as "/",
 * spaces, hyphens and points inside a unit as "·". Upper and lower case stay.
 */
function spellingKey(spelling: string): string {
  const parts = spelling
    .replaceAll("²", "2")
    .replaceAll("³", "3")
    .replaceAll("^", "")
    .replaceAll(".", " ")
    .match(/[^\s/·()-]+|[/()]/g);
  let key = "";
  let power = "";
  for (const part of parts ?? []) {
    const word = canonicalWord(part);
    if (word === "sq" || word === "cu") {
      power = word === "sq" ? "2" : "3";
      continue;
    }
    key += `${joint(key, word)}${word}${power}`;
    power = "";
  }
  return power === "" ? key : `${key}${joint(key, "sq")}${power === "2" ? "sq" : "cu"}`;
}

function canonicalWord(part: string): string {
  const lower = part.toLowerCase();
  return Object.hasOwn(canonical, lower) ? (canonical[lower] ?? part) : part;
}

const joint = (before: string, word: string) =>
  before === "" || /[/(°]$/.test(before) || /^[/()]/.test(word) ? "" : "·";

type Spellings = Readonly<{
  written: ReadonlyMap<string, readonly string[]>;
  lower: ReadonlyMap<string, readonly string[]>;
}>;

const names = Object.keys(dimensions) as DimensionName[];

const spellingsOf = new Map<DimensionName, Spellings>(
  names.map((name) => {
    const written = new Map<string, readonly string[]>();
    const lower = new Map<string, readonly string[]>();
    const definition: DimensionDefinition = dimensions[name];
    for (const [symbol, { spellings }] of Object.entries(definition.units)) {
      for (const spelling of [symbol, ...spellings]) {
        const key = spellingKey(spelling);
        written.set(key, [...new Set([...(written.get(key) ?? []), symbol])]);
        lower.set(key.toLowerCase(), [...new Set([...(lower.get(key.toLowerCase()) ?? []), symbol])]);
      }
    }
    return [name, { written, lower }];
  }),
);

/** The units of the dimension that the text can stand for: exactly as written first, then without regard to case. */
function unitsFor(dimension: DimensionName, key: string): readonly string[] {
  const spellings = spellingsOf.get(dimension);
  return spellings?.written.get(key) ?? spellings?.lower.get(key.toLowerCase()) ?? [];
}

/** Reads a unit. "T" for instance is a tonne to some and a short ton to others, so it is reported as ambiguous. */
export function unitReading(dimension: DimensionName, written: string): UnitReading {
  const key = spellingKey(written);
  const [unit, ...more] = unitsFor(dimension, key);
  if (unit !== undefined)
    return more.length === 0 ? { kind: "known", unit } : { kind: "ambiguous", units: [unit, ...more] };
  const measures = key === "" ? [] : names.filter((name) => isHintAt(name, key) && unitsFor(name, key).length > 0);
  return measures.length > 0 ? { kind: "elsewhere", measures } : { kind: "unknown", near: nearUnits(dimension, key) };
}

function isHintAt(dimension: DimensionName, key: string): boolean {
  const { yearly }: DimensionDefinition = dimensions[dimension];
  return yearly === undefined || /\/y(?:ear)?$/.test(key);
}

/** Longer texts are sentences, not misspelt units. */
const longestMisspelling = 24;

function nearUnits(dimension: DimensionName, key: string): readonly string[] {
  const lower = key.toLowerCase();
  if (lower.length > longestMisspelling) return [];
  const allowed = lower.length < 3 ? 0 : lower.length < 6 ? 1 : 2;
  const candidates = [...(spellingsOf.get(dimension)?.lower ?? [])].flatMap(([spelling, symbols]) => {
    const steps = editSteps(lower, spelling);
    return steps <= allowed ? symbols.map((symbol) => ({ symbol, steps })) : [];
  });
  const nearest = candidates.toSorted((one, other) => one.steps - other.steps).map(({ symbol }) => symbol);
  return [...new Set(nearest)].filter((symbol) => symbol !== "" && symbol !== "1").slice(0, 3);
}

/** Letters to insert, drop or change to get from one text to the other. @source Levenshtein distance */
function editSteps(from: string, to: string): number {
  let row = Array.from({ length: to.length + 1 }, (_, column) => column);
  for (const [line, letter] of [...from].entries()) {
    const next = [line + 1];
    for (const [column, other] of [...to].entries()) {
      const change = (row[column] ?? 0) + (letter === other ? 0 : 1);
      next.push(Math.min(change, (row[column + 1] ?? 0) + 1, (next[column] ?? 0) + 1));
    }
    row = next;
  }
  return row.at(-1) ?? 0;
}
