import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { pastedLines, withLines } from "../../../app/_components/form/pasted-lines";

describe("pastedLines", () => {
  test("joins the cells of a row by a comma, as a corner is written", () =>
    expect(pastedLines("0\t0\r\n120.5\t60\r\n")).toEqual(["0, 0", "120.5, 60"]));

  test("leaves lines that are written as corners already as they are", () =>
    expect(pastedLines("0, 0\n\n 120.5, 60 ")).toEqual(["0, 0", "120.5, 60"]));

  test("finds no line in blank text", () => expect(pastedLines(" \n\t\n")).toEqual([]));
});

describe("withLines", () => {
  test("fills the blank entries after the one that was pasted into", () =>
    expect(withLines(["", "", "", ""], 0, ["0, 0", "9, 0", "9, 5"])).toEqual(["0, 0", "9, 0", "9, 5", ""]));

  test("makes room where more lines come than blank entries stand", () =>
    expect(withLines(["1, 1", ""], 1, ["2, 2", "3, 3", "4, 4"])).toEqual(["1, 1", "2, 2", "3, 3", "4, 4"]));

  test("never takes the place of a written entry other than the one pasted into", () => {
    const texts = fc.array(fc.constantFrom("", "a", "b"), { minLength: 1, maxLength: 6 });
    const lines = fc.array(fc.constantFrom("x", "y"), { minLength: 2, maxLength: 6 });
    fc.assert(
      fc.property(texts, fc.nat(), lines, (before, place, pasted) => {
        const index = place % before.length;
        const others = before.filter((text, at) => at !== index && text !== "");
        const kept = withLines(before, index, pasted).filter((text) => text === "a" || text === "b");
        expect(kept).toEqual(others);
      }),
    );
  });
});
