import { failed, type Result, succeeded } from "#lib/quantity";
import { distributions } from "./distributions";
import type { Distribution, DistributionKind, WrittenFigure } from "./model";

/** Reads one figure in the unit that is counted in, or says in a sentence what was expected. */
export type ReadFigure = (text: string) => Result<number, string>;

const chancePattern = /^\s*(-?\d*\.?\d+)\s*%\s*$/;

/** "25 %" → 0.25; null where the text is no percentage. */
const chanceOf = (text: string): number | null => {
  const digits = chancePattern.exec(text)?.[1];
  return digits === undefined ? null : Number(digits) / 100;
};

/** The pieces of a text that belong to one figure each. A slash between spaces parts them, as units have slashes too. */
function pieces(text: string): readonly string[] {
  const spaced = text.split(/\s+(?:\/|to|±|\+\/-|\+-)\s+|\s*(?:±|\+\/-)\s*/);
  const parts = spaced.length > 1 || /[a-z²³]/i.test(text) ? spaced : text.split("/");
  return parts.map((part) => part.trim()).filter((part) => part !== "");
}

/** "8: 25 %, 10: 75 %" → the figures with their chances. A comma inside a number is followed by a digit. */
function valuesWithChances(text: string, read: ReadFigure): Result<readonly WrittenFigure[], string> {
  const figures: WrittenFigure[] = [];
  for (const pair of text.split(/;|,(?!\d)/).map((one) => one.trim())) {
    if (pair === "") continue;
    const at = pair.lastIndexOf(":");
    const value = read((at < 0 ? pair : pair.slice(0, at)).trim());
    if (!value.ok) return value;
    figures.push({ text: pair, value: value.value, chance: at < 0 ? null : chanceOf(pair.slice(at + 1)) });
  }
  return succeeded(figures);
}

function plainFigures(
  text: string,
  read: ReadFigure,
  kind: DistributionKind,
): Result<readonly WrittenFigure[], string> {
  const figures: WrittenFigure[] = [];
  for (const [index, part] of pieces(text).entries()) {
    const share = chanceOf(part);
    const asShare = kind === "lognormal" && index === 1; // the spread is a share whatever the mean counts
    if (asShare) {
      figures.push({ text: part, value: share ?? Number.NaN, chance: share });
      continue;
    }
    const value = read(part);
    if (!value.ok) return value;
    figures.push({ text: part, value: value.value, chance: null });
  }
  return succeeded(figures);
}

/**
 * "4.20 / 4.85 / 6.00" → a distribution of the kind asked for, or the sentence that helps.
 * @param read reads one figure in the caller's unit
 */
export function parseDistribution<K extends DistributionKind>(
  kind: K,
  text: string,
  read: ReadFigure,
): Result<Distribution<K>, string> {
  const figures = kind === "discrete" ? valuesWithChances(text, read) : plainFigures(text, read, kind);
  if (!figures.ok) return figures;
  const terms = distributions[kind].fromFigures(figures.value);
  return typeof terms === "string" ? failed(terms) : succeeded({ kind, ...terms } as Distribution<K>);
}

/** "1,250.5" → 1250.5: a figure without a unit. */
export function readPlainNumber(text: string): Result<number, string> {
  const value =
    /^[+-]?(\d{1,3}(,\d{3})+|\d+)?(\.\d+)?$/.test(text) && /\d/.test(text)
      ? Number(text.replaceAll(",", ""))
      : Number.NaN;
  return Number.isFinite(value)
    ? succeeded(value)
    : failed(`“${text}” was read as a figure; expected a number, for example “4.85”.`);
}
