import { describe, expect, test } from "vitest";
import { type PrintedBlock, printedAsText, writtenNumbers } from "#lib/document";
import { blocks, sample } from "./sample";

const at = (level: number): PrintedBlock => ({ kind: "paragraph", text: "x", number: { scheme: "section", level } });

describe("writtenNumbers", () => {
  test("counts parts, articles and paragraphs, each anew under the one above", () => {
    const levels = [0, 1, 2, 3, 3, 4, 5, 2, 1, 2, 0, 1];
    expect(writtenNumbers(levels.map(at))).toEqual([
      "PART 1",
      "1.1",
      "A.",
      "1.",
      "2.",
      "a.",
      "1)",
      "B.",
      "1.2",
      "A.",
      "PART 2",
      "2.1",
    ]);
  });

  test("goes on after Z with AA and BB, as word processors do", () => {
    const numbers = writtenNumbers(Array.from({ length: 53 }, () => at(2)));
    expect([numbers[25], numbers[26], numbers[27], numbers[52]]).toEqual(["Z.", "AA.", "BB.", "AAA."]);
  });

  test("refuses a level that the scheme does not have", () => {
    expect(() => writtenNumbers([at(6)])).toThrow(new RangeError("section has no level 6"));
  });
});

describe("printedAsText", () => {
  const text = printedAsText(sample);

  test("keeps within 88 characters a line and ends with one line end", () => {
    for (const line of text.split("\n")) expect(line.length).toBeLessThanOrEqual(88);
    expect(text).toMatch(/[^\n]\n$/);
  });

  test("writes numbers, notes, words of a comparison and tables so that they can be read aloud", () => {
    for (const wanted of [
      "PART 1  GENERAL",
      "1.1  SUMMARY",
      "A.  This Section includes:",
      "            1)  By weigh ticket.",
      "    [Note to the specifier: Say which sections the project has.]",
      "A.  The limit is [-165 g-]{+160 g+}, and “each point” counts.",
      "  - Property 4. Bid A: 3 mm; Bid B: –",
    ])
      expect(text).toContain(wanted);
  });

  test("says every block", () => {
    for (const block of blocks)
      if (block.kind === "paragraph" && typeof block.text === "string") expect(text).toContain(block.text);
  });
});
