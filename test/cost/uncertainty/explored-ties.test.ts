import { describe, expect, test } from "vitest";
import { costsAlong, exploredTies, priceLinesSchema, tieBrackets, tieWithin } from "#lib/cost";
import { lineTexts, setting } from "../lines";
import { workedBids, setting as workedSetting } from "./worked";

const carpet = (price: string, life: string) => ({
  ...{ kind: "replacement-chain", id: "carpet", label: "Carpet", givenBy: "bid", life, lifeGivenBy: "bid" },
  amount: { kind: "lump-sum", price },
  residual: "none",
});
const bid = (name: string, price: string, life: string) => ({
  bid: name,
  lines: priceLinesSchema.parse([carpet(price, life)]),
});
// 20 years at 3 %: A buys at 0 and 10, B at 0 alone. derived: SPV(3 %, 10) = 0.744094 (reference, 1.3)
const [a, b] = [bid("bid-a", "$100,000", "10"), bid("bid-b", "$200,000", "20")];
const ties = exploredTies(a, b, setting());
const tieOf = (input: string) => ties.find((one) => one.input === input);

describe("exploredTies", () => {
  test("finds the price at which two bids cost the same, to the last digits", () => {
    const price = tieOf("bid-b carpet price");
    expect(price).toMatchObject({ label: "Carpet", bid: "bid-b", toldIn: "share", entered: 1 });
    expect(price?.tied).toMatchObject({ kind: "line", inside: true, at: expect.closeTo(1.744094 / 2, 6) });
  });

  test("finds that no rate from 0 % makes them equal, since later costs only get lighter", () =>
    expect(tieOf("real-rate")?.tied).toMatchObject({ kind: "crossings", at: [0] }));

  test("tries lives in whole years", () => {
    const life = tieOf("bid-a carpet life");
    expect(life).toMatchObject({ toldIn: "years", entered: 10 });
    expect(life?.tied.kind).toBe("steps");
  });

  test("lists the nearest first and what never ties last", () => {
    const distances = ties.map(({ distance }) => distance ?? 2);
    expect(distances).toEqual(distances.toSorted((one, other) => one - other));
  });
});

test("costs along an input are those of the bids, and cross where the tie is", () => {
  const tie = tieOf("bid-b carpet price");
  if (tie === undefined) throw new Error("no tie");
  const along = costsAlong(a, b, tie, setting());
  expect(along.at(0)).toEqual({ value: 0, first: expect.closeTo(17_440_939, 0), second: 0 });
  expect(along.find(({ value }) => value === 1)?.second).toBeCloseTo(20_000_000, 6);
});

// UPV*(3 %, 2 %, 20) = 18.081229 and UPV(3 %, 20) = 14.877475 (reference, 1.3): their ratio is 1.2153426
test("finds the growth at which a yearly price costs as much as a higher one that keeps its value", () => {
  const yearly = (name: string, price: string) => ({
    bid: name,
    lines: priceLinesSchema.parse([{ ...lineTexts.yearly, label: "Care", amount: { kind: "lump-sum", price } }]),
  });
  const growth = exploredTies(yearly("a", "$100,000"), yearly("b", "$121,534.26"), setting()).find(
    ({ input }) => input === "a line growth",
  );
  expect(growth).toMatchObject({ label: "Care: growth a year", toldIn: "rate", entered: 0 });
  expect(growth?.tied).toMatchObject({ kind: "crossings", at: [expect.closeTo(0.02, 6)], ...tieBrackets.growth });
});

// reference, BE-wage-AB: at a wage of $384.39 an hour, 8.0081 times the $48 of both bids
test("moves what both bids spend on one thing together, and looks as far as it is asked to", () => {
  const [first, second] = workedBids;
  if (first === undefined || second === undefined) throw new Error("two bids were worked");
  const ties = exploredTies(first, second, workedSetting);
  const wage = ties.find(({ input }) => input === "spent-on-grooming");
  expect(wage).toMatchObject({ bid: null, toldIn: "share", entered: 1, distance: null });
  expect(wage?.tied).toMatchObject({ kind: "line", inside: false, from: 0, to: 3 });
  const further = tieWithin(first, second, { input: "spent-on-grooming", from: 0, to: 10 }, workedSetting);
  expect(further.tied).toMatchObject({ kind: "line", inside: true, to: 10 });
  expect(further.tied.kind === "line" && 48 * (further.tied.at ?? 0)).toBeCloseTo(384.39, 2);
  expect(ties.map(({ input }) => input)).not.toContain("spent-on-freight");
});
