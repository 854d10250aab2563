import { expect, test } from "vitest";
import { costBridge } from "#lib/cost";
import { bridgeWords } from "../../../app/project/[id]/cost/two-bids/_components/bridge-words";

const bid = (investment: number, testing: number, residual: number) => [
  { category: "investment" as const, label: "Investment", presentValue: investment, shown: investment },
  { category: "testing" as const, label: "Testing", presentValue: testing, shown: testing },
  { category: "residual" as const, label: "Residual value", presentValue: residual, shown: residual },
];
const words = (one: ReturnType<typeof bid>, other: ReturnType<typeof bid>, open: readonly string[] = []) =>
  bridgeWords(costBridge(one, other), { first: "A", second: "B", currency: "USD", open });

test("says by how much, through what, and what stands against it", () =>
  expect(words(bid(60_000_00, 1_000_00, -5_000_00), bid(75_000_00, 2_000_00, -9_000_00))).toBe(
    "Bid B costs $12,000 more than bid A (21 %), above all through investment ($15,000) and testing ($1,000). The other way goes residual value ($4,000).",
  ));

test("says where a difference is too small to decide", () =>
  expect(words(bid(100_000_00, 0, 0), bid(98_000_00, 0, 0))).toBe(
    "Bid B costs $2,000 less than bid A (2.0 %), above all through investment ($2,000). A difference under 10 % of the lower cost does not decide (US GSA P100).",
  ));

test("says where nothing differs", () =>
  expect(words(bid(1, 2, 0), bid(1, 2, 0))).toBe("Bid B costs as much as bid A."));

test.each([
  [["A"], "Bid B costs at most $1 more than bid A"],
  [["B"], "Bid B costs at least $1 more than bid A"],
])("says what a cost that is only a least makes of the difference: %s", (open, begins) =>
  expect(words(bid(100, 0, 0), bid(200, 0, 0), open)).toContain(begins),
);
