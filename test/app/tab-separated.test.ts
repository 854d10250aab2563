import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { guardedCell, tabSeparated } from "../../app/project/[id]/side-by-side/_comparison/tab-separated";

describe("guardedCell", () => {
  // the characters that may start a formula: OWASP, CSV Injection
  test.each([
    ["=1+1", "'=1+1"],
    ["+1 800 555", "'+1 800 555"],
    ["-2+3", "'-2+3"],
    ["@SUM(A1:A9)", "'@SUM(A1:A9)"],
    ["\t=1+1", "'=1+1"],
    ["\r=1+1", "'=1+1"],
    ["\tplain", "'plain"],
    ["\rplain", "'plain"],
    ["  =1+1", "'=1+1"],
    ["＝1+1", "'＝1+1"],
  ])("puts an apostrophe before what could start a formula: %j", (text, cell) => expect(guardedCell(text)).toBe(cell));

  test.each(["118 g", "9.50 lb/ft²", "≥ 8 lbf", "$1,163,735", "", "“−3 °C” as written", "1=1"])(
    "leaves %j as it is",
    (text) => expect(guardedCell(text)).toBe(text),
  );

  test.each(["-3", "+2.5", "-1,250.75", "-3 %"])("leaves the number %j a number", (text) =>
    expect(guardedCell(text)).toBe(text),
  );

  test("keeps text on one line and in one cell", () => expect(guardedCell("one\ttwo\r\nthree")).toBe("one two three"));

  test("doubles the quotes of a cell that begins with one, so that it is read back as written", () =>
    expect(guardedCell('"soft" sand')).toBe('"""soft"" sand"'));

  test("never lets a cell start with a sign of a formula, unless it is a number", () => {
    const text = fc.string({
      unit: fc.constantFrom("=", "+", "-", "@", "\t", "\r", "\n", " ", '"', "1", ",", "A", "("),
    });
    fc.assert(
      fc.property(text, (typed) => {
        const cell = guardedCell(typed);
        expect(cell).not.toMatch(/[\t\r\n]/);
        if (/^[=+\-@]/.test(cell)) expect(Number(cell.replaceAll(",", ""))).not.toBeNaN();
      }),
    );
  });
});

test("sets tabs between cells and line ends between rows", () =>
  expect(
    tabSeparated([
      ["", "Bid A", "Bid B"],
      ["Pile height", "2.50 in", "=2+2"],
    ]),
  ).toBe("\tBid A\tBid B\nPile height\t2.50 in\t'=2+2"));
