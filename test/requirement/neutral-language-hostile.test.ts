import { describe, expect, test } from "vitest";
import { readLanguage } from "#lib/requirement";

const million = 1_000_000;
const filled = (part: string) => part.repeat(Math.ceil(million / part.length)).slice(0, million);

/** Noise that is the same in every run. */
function noise(): string {
  let state = 11;
  let text = "";
  while (text.length < million) {
    state = (state * 1_664_525 + 1_013_904_223) % 2 ** 32;
    text += String.fromCharCode(32 + ((state >>> 16) % 220));
  }
  return text;
}

/** Texts made to cost much: no stops, many half matches, many matches, deep gaps, one long line or word. */
const hostile: Readonly<Record<string, string>> = {
  "one word": filled("a"),
  "one number": filled("1"),
  "number with separators": filled("1.1,"),
  "capitals without end": filled("Aaa Bbb Ccc "),
  "many matches in one sentence": filled("patented exclusive best "),
  "half matches": filled("made by the only other or any 11 years business within "),
  "warranty and years": filled("warranty a b c d e f g 12 "),
  "empty lines": filled("\n"),
  "spaces in a line": filled(" "),
  items: filled("\nA. "),
  apostrophes: filled("a'"),
  marks: filled("™®.;-"),
  brackets: filled("("),
  units: filled("2.2375 in pile height oz/yd² "),
  noise: noise(),
};

const namesToWatch = ["firm alpha", "a"];

describe("a text made to be slow", () => {
  test("of a million characters costs a bounded number of steps a character", () => {
    for (const text of [hostile.units, hostile["one word"]])
      expect(readLanguage(text ?? "", namesToWatch).steps).toBeLessThan(100 * million);
  });

  for (const [name, text] of Object.entries(hostile))
    test(`${name}: twice the text costs twice the steps`, () => {
      const [once, twice] = [100_000, 200_000].map((length) => readLanguage(text.slice(0, length), namesToWatch).steps);
      expect(twice).toBeLessThan(2.2 * (once ?? 0) + 10_000);
      expect(twice).toBeLessThan(100 * 200_000);
    });
});
