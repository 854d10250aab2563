import fc from "fast-check";
import { parseCsv } from "hucre/csv";
import { describe, expect, test } from "vitest";
import { commaSeparated, parseCommaSeparated, unguarded } from "#lib/claim";

const mark = "\uFEFF";
const cell = fc.oneof(
  fc.string(),
  fc.string({ unit: fc.constantFrom("=", "+", "-", "@", "'", '"', ",", "\t", "\r", "\n", "a", "1") }),
);
const table = fc.array(fc.array(cell, { minLength: 1, maxLength: 5 }), { maxLength: 6 });

describe("commaSeparated", () => {
  test("ends each row with CR and LF and quotes what holds commas, quotes or line ends", () => {
    expect(commaSeparated([["a", 'b "c"', "d,e"], ["f\ng"]])).toBe(`${mark}a,"b ""c""","d,e"\r\n"f\ng"\r\n`);
  });

  test.each([
    ["=1+1", "'=1+1"],
    ["+1", "'+1"],
    ["-0.5", "'-0.5"],
    ["@SUM(A1)", "'@SUM(A1)"],
    ["'=1", "''=1"],
    ["'tis", "'tis"],
    ["2-1/4 in", "2-1/4 in"],
  ])("writes %s as %s and reads it back", (text, written) => {
    expect(commaSeparated([[text]])).toBe(`${mark}${written}\r\n`);
    expect(unguarded(written)).toBe(text);
  });

  test("leaves no cell that a spreadsheet takes for a formula", () => {
    fc.assert(
      fc.property(table, (rows) => {
        for (const text of parseCsv(commaSeparated(rows), { delimiter: "," }).flat())
          expect(String(text ?? "")).not.toMatch(/^[=+\-@\t\r]/);
      }),
    );
  });
});

describe("parseCommaSeparated", () => {
  test("gives back every table that was written", () => {
    fc.assert(
      fc.property(table, (rows) => {
        expect(parseCommaSeparated(commaSeparated(rows))).toEqual(rows);
      }),
    );
  });

  test("keeps every character of any text but the marks between cells and rows", () => {
    const marks = /[",\r\n'\uFEFF]/g;
    fc.assert(
      fc.property(fc.oneof(fc.string(), cell), (text) => {
        expect(parseCommaSeparated(text).flat().join("").replace(marks, "")).toBe(text.replace(marks, ""));
      }),
    );
  });

  test("drops nothing behind a closing quote", () => {
    expect(parseCommaSeparated('"2" in,new')).toEqual([["2", " in", "new"]]);
  });
});
