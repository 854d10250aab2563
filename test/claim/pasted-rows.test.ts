import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { explainPaste, parsePastedRows } from "#lib/claim";
import { anyText } from "./bid-claims";

const rowsOf = (text: string) => {
  const parsed = parsePastedRows(text);
  return parsed.ok ? parsed.value : explainPaste(parsed.problem);
};

/** Writes cells as a spreadsheet puts them on the clipboard: quotes only around what needs them. */
const asCopied = (rows: readonly (readonly string[])[]): string =>
  rows
    .map((row) => row.map((cell) => (/[\t\r\n"]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell)).join("\t"))
    .map((line) => `${line}\r\n`)
    .join("");

describe("parsePastedRows", () => {
  test.each([
    ["", []],
    [
      "a\tb\r\nc\td\r\n",
      [
        ["a", "b"],
        ["c", "d"],
      ],
    ],
    ["a\nb", [["a"], ["b"]]],
    ["a\t\tb\n", [["a", "", "b"]]],
    ["a\n\nb\n", [["a"], [""], ["b"]]],
    ['"two\nlines"\t"a\ttab"\n', [["two\nlines", "a\ttab"]]],
    ['"say ""soft"""\tx', [['say "soft"', "x"]]],
    ['2.25"\tpile', [['2.25"', "pile"]]],
    ['"never closed\tb\nc', [['"never closed', "b"], ["c"]]],
    ['"quoted" and more\tb', [['"quoted" and more', "b"]]],
  ])("reads %j", (text, rows) => expect(rowsOf(text)).toEqual(rows));

  test("reads back what a spreadsheet copied", () => {
    const cell = fc.oneof(fc.string(), fc.string({ unit: fc.constantFrom('"', "\t", "\n", "\r", "a", "½", " ") }));
    const table = fc.array(fc.array(cell, { minLength: 1, maxLength: 5 }), { maxLength: 6 });
    fc.assert(
      fc.property(table, (rows) => {
        expect(rowsOf(asCopied(rows))).toEqual(rows);
      }),
    );
  });

  test("never throws", () => {
    const text = fc.oneof(anyText, fc.string({ unit: fc.constantFrom('"', "\t", "\n", "\r", "a") }));
    fc.assert(fc.property(text, (pasted) => typeof parsePastedRows(pasted).ok === "boolean"));
    expect(parsePastedRows(`"${'a""'.repeat(66_000)}`).ok).toBe(true);
  });

  test("reads up to 2,000 rows and 200,000 characters and says so beyond", () => {
    expect(rowsOf("a\n".repeat(2000))).toHaveLength(2000);
    expect(rowsOf("a\n".repeat(2001))).toBe(
      "The pasted block has 2,001 rows; at most 2,000 are read at once. Paste it in parts.",
    );
    expect(rowsOf("a".repeat(200_000))).toHaveLength(1);
    expect(rowsOf("a".repeat(200_001))).toBe(
      "The pasted block has 200,001 characters; at most 200,000 are read at once. Paste it in parts.",
    );
  });
});
