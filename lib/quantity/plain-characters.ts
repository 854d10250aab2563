/** Stands between digits where a no-break or thin space was written as a thousands separator. */
export const thinSpace = "\u2009";

const plain: Readonly<Record<string, string>> = {
  "‐": "-",
  "‑": "-",
  "‒": "-",
  "–": "-",
  "—": "-",
  "―": "-",
  "−": "-",
  "“": '"',
  "”": '"',
  "″": '"',
  "‘": "'",
  "’": "'",
  "′": "'",
  "´": "'",
  μ: "µ",
  "⁄": "/",
  "∕": "/",
  "≥": ">=",
  "⩾": ">=",
  "≧": ">=",
  "≤": "<=",
  "⩽": "<=",
  "≦": "<=",
  "≈": "~",
  "≅": "~",
  "∼": "~",
  "×": "x",
  "⋅": "·",
  "∙": "·",
  "•": "·",
  "*": "·",
  º: "°",
  "˚": "°",
  "\u200b": "",
  "\u2060": "",
  "\ufeff": "",
  "\u00ad": "",
};

const noBreakSpaces = "\u00a0\u2007\u2009\u202f";
const isDigit = (character: string | undefined) => character !== undefined && character >= "0" && character <= "9";

/**
 * The text in the few characters that the reading of quantities knows: one kind of dash, of quotation mark, of space;
 * "½" as "1/2", full-width forms as plain ones. Takes one pass.
 */
export function inPlainCharacters(text: string): string {
  const characters = [...text];
  let written = "";
  for (const [index, character] of characters.entries()) {
    written += replacement(character, characters, index, written);
  }
  return written.replaceAll("''", '"').trim();
}

function replacement(character: string, all: readonly string[], index: number, before: string): string {
  if (Object.hasOwn(plain, character)) return plain[character] ?? "";
  if (noBreakSpaces.includes(character)) return separatesThousands(all, index) ? thinSpace : " ";
  if (/\s/.test(character)) return " ";
  if (isVulgarFraction(character)) return vulgarFraction(character, before);
  return isCompatibilityForm(character) ? character.normalize("NFKC") : character;
}

function separatesThousands(all: readonly string[], index: number): boolean {
  const around = [all[index - 1], all[index + 1], all[index + 2], all[index + 3]];
  return around.every(isDigit) && !isDigit(all[index + 4]) && all[index + 4] !== "/" && all[index + 4] !== "⁄";
}

const isVulgarFraction = (character: string) => character.normalize("NFKC").includes("⁄") && character !== "⁄";

function vulgarFraction(character: string, before: string): string {
  const spelledOut = character.normalize("NFKC").replace("⁄", "/");
  return `${isDigit(before.at(-1)) ? " " : ""}${spelledOut}`;
}

/** Full-width forms, and single characters that stand for a unit, such as "㎡" or "℃". */
const isCompatibilityForm = (character: string) => /[\uff01-\uff5e\u3371-\u33df℃℉]/.test(character);
