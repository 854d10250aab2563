import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  explainTies,
  gridSteps,
  type InputTarget,
  linesModel,
  rootBetween,
  type TiedValues,
  tiedValues,
} from "#lib/cost";
import { lineInput, perSquareFoot, setting, workedBids } from "./worked";

function tied(id: string, base: number, target: InputTarget, from: number, to: number, second = "b"): TiedValues {
  const input = lineInput({ id, base, distribution: { kind: "fixed", value: base }, target });
  return tiedValues(linesModel(workedBids, [input], setting), { first: "a", second, input: id, from, to });
}
const words = { nameOf: (bid: string) => `Bid ${bid.toUpperCase()}`, input: "the figure" };
const dollars = (value: number) => `$${(value / perSquareFoot(1)).toFixed(2)}/ft²`;
const percent = (value: number) => `${(100 * value).toFixed(2)} %`;
const years = (value: number) => `${value} years`;
const carpetOf = (...bids: readonly string[]) => bids.map((bid) => ({ bid, line: "carpet" }));
const price = (...bids: readonly string[]): InputTarget => ({
  kind: "amount",
  of: carpetOf(...bids),
  part: "price",
  move: { kind: "set" },
});

describe("tiedValues", () => {
  test("gives the exact value where both costs are straight lines, and says who is cheaper on either side", () => {
    const found = tied("carpet", perSquareFoot(4.85), price("a"), 0, perSquareFoot(9));
    expect(found).toMatchObject({ kind: "line", inside: true });
    expect(explainTies(found, { ...words, show: dollars })).toBe(
      "Bid A and Bid B cost the same at $5.57/ft², looked for from $0.00/ft² to $9.00/ft². Below that Bid A costs less, above it Bid B.",
    );
  });

  test("says that the tie lies outside what was looked at", () => {
    const found = tied("carpet", perSquareFoot(4.85), price("a"), 0, perSquareFoot(5));
    expect(explainTies(found, { ...words, show: dollars })).toBe(
      "Never from $0.00/ft² to $5.00/ft²: there Bid A costs less throughout. Bid A and Bid B cost the same at $5.57/ft², outside what was looked at.",
    );
  });

  test("says that an input that moves both alike can't decide", () => {
    const found = tied(
      "base",
      perSquareFoot(3),
      { kind: "amount", of: [{ bid: "c", line: "base" }], part: "price", move: { kind: "set" } },
      1,
      9000,
    );
    expect(explainTies(found, { ...words, show: dollars })).toBe(
      "the figure moves both alike, so it can’t decide: Bid A costs less at every value.",
    );
  });

  test("goes through the whole years of a life", () => {
    const found = tied("life", 10, { kind: "life", of: carpetOf("a") }, 6, 14);
    expect(found).toMatchObject({ kind: "steps", between: [[8, 9]] });
    expect(explainTies(found, { ...words, show: years })).toBe(
      "The cheaper one is Bid B from 6 years to 8 years, then Bid A from 9 years to 14 years.",
    );
    const never = tied("life", 10, { kind: "life", of: carpetOf("a") }, 10, 14);
    expect(explainTies(never, { ...words, show: years })).toBe(
      "Never from 10 years to 14 years: there Bid A costs less throughout.",
    );
  });

  test("finds the growth of a price at which the order turns, and the rates at which it never does", () => {
    const growth = tied("growth", 0, { kind: "escalation", of: carpetOf("a") }, -0.02, 0.06);
    expect(growth.kind === "crossings" && growth.at.length).toBe(1);
    expect(explainTies(growth, { ...words, show: percent })).toMatch(
      /^Bid A and Bid B cost the same at \d\.\d\d %\. The cheaper one is Bid A from -2\.00 % to \d\.\d\d %, then Bid B from \d\.\d\d % to 6\.00 %\.$/,
    );
    const rate = tied("rate", 0.03, { kind: "real-rate" }, 0, 0.15);
    expect(explainTies(rate, { ...words, show: percent })).toBe(
      "Never from 0.00 % to 15.00 %: there Bid A costs less throughout.",
    );
  });

  test("says that a bid ties with itself everywhere", () => {
    const found = tied("rate", 0.03, { kind: "real-rate" }, 0, 0.1, "a");
    expect(explainTies(found, { ...words, show: percent })).toBe(
      "Bid A and Bid A cost the same at every value of the figure from 0.00 % to 10.00 %.",
    );
  });

  test("refuses a bracket that is turned round, and what is not in the model", () => {
    expect(() => tied("rate", 0.03, { kind: "real-rate" }, 0.1, 0)).toThrow(RangeError);
    expect(() => tied("rate", 0.03, { kind: "real-rate" }, 0, 0.1, "z")).toThrow(RangeError);
    expect(gridSteps).toBeGreaterThan(100);
  });
});

describe("rootBetween", () => {
  test("finds the root of curves to the last digits", () => {
    fc.assert(
      fc.property(fc.double({ min: -3, max: 3, noNaN: true }), fc.integer({ min: 0, max: 3 }), (root, shape) => {
        const curve = [
          (x: number) => x - root,
          (x: number) => x ** 3 - root ** 3,
          (x: number) => Math.exp(x) - Math.exp(root),
          (x: number) => Math.atan(20 * (x - root)),
        ][shape] as (x: number) => number;
        const found = rootBetween(curve, -4, 5);
        // a flat cube is 0 in floating point well around its root
        expect(Math.abs(found - root)).toBeLessThan(shape === 1 ? 1e-4 : 1e-12);
      }),
    );
  });
});
