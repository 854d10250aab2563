import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { guardedCell, tabSeparated } from "../../../app/project/[id]/side-by-side/_comparison/tab-separated";

describe("a cell for a spreadsheet", () => {
  // the characters that start a formula: OWASP, CSV Injection
  test.each([
    ["=1+1", "'=1+1"],
    ["+1+1", "'+1+1"],
    ["-1+1", "'-1+1"],
    ["@SUM(A1)", "'@SUM(A1)"],
    ["\t=1+1", "'=1+1"],
    ["\r=1+1", "'=1+1"],
    ["\ttext", "'text"],
    [" =1+1", "'=1+1"],
    ["＝1+1", "'＝1+1"],
  ])("%j gets an apostrophe", (text, expected) => expect(guardedCell(text)).toBe(expected));

  test.each(["-4.85", "+12", "-1,250.50", "-3 %", "9.00 lb/ft²", "−0.87 to 0.55 lb/ft²", "2-1/4 in", ""])(
    "%j stays",
    (text) => expect(guardedCell(text)).toBe(text),
  );

  test("that starts with a quotation mark is quoted, so that the mark is part of the text", () =>
    expect(guardedCell('"tall" pile')).toBe('"""tall"" pile"'));

  test("never starts a formula, whatever it says", () => {
    const looksLikeNumber = /^[+-][\d,.]+( ?%)?$/;
    fc.assert(
      fc.property(fc.string(), (text) => {
        const cell = guardedCell(text);
        return !/^[=+\-@]/.test(cell) || looksLikeNumber.test(cell);
      }),
    );
  });

  test("stays one cell, whatever it says", () => {
    fc.assert(fc.property(fc.string(), (text) => !/[\t\r\n]/.test(guardedCell(text))));
  });
});

test("cells are parted by tabs and rows by line ends", () =>
  expect(
    tabSeparated([
      ["", "Bid A"],
      ["Pile height", "2 in"],
    ]),
  ).toBe("\tBid A\nPile height\t2 in"));
