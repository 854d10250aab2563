import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type BidOrders, bidOrders } from "../../../app/project/[id]/side-by-side/_comparison/bid-order";
import { rowChoices } from "../../../app/project/[id]/side-by-side/_comparison/row-choice";
import {
  addressOf,
  choiceFrom,
  columnsOf,
  movedBid,
  neighbourOf,
  startingChoice,
  type TableChoice,
} from "../../../app/project/[id]/side-by-side/_comparison/table-choice";

const entered = ["bid-a", "bid-b", "bid-c", "bid-d", "bid-e"];
const orders: BidOrders = {
  entered,
  place: ["bid-c", "bid-a", "bid-e", "bid-b", "bid-d"],
  cost: ["bid-d", "bid-c", "bid-b", "bid-a", "bid-e"],
  infill: ["bid-b", "bid-a", "bid-c", "bid-e", "bid-d"],
};
const keys = <Key extends string>(words: Record<Key, string>) => Object.keys(words) as Key[];
const read = (address: string) => choiceFrom(new URLSearchParams(address), orders);
const start = startingChoice(orders);

const anyOrder = fc.shuffledSubarray(entered, { minLength: entered.length });
const anyChoice: fc.Arbitrary<TableChoice> = fc.record({
  rows: fc.constantFrom(...keys(rowChoices)),
  hidesEqual: fc.boolean(),
  shown: fc.subarray(entered, { minLength: 1 }),
  order: fc.oneof(fc.constantFrom(...keys(bidOrders)), anyOrder),
  pinned: fc.constantFrom("", ...entered),
});

describe("the address of the table", () => {
  test("is bare for what the page starts with", () => expect(addressOf(start, orders)).toBe(""));

  test("says what was chosen in words", () =>
    expect(
      addressOf({ rows: "gaps", hidesEqual: true, shown: ["bid-a", "bid-c"], order: "cost", pinned: "bid-c" }, orders),
    ).toBe("rows=gaps&equal=hidden&bid=bid-a&bid=bid-c&order=cost&pin=bid-c"));

  test("is read back to the same choice, whatever was chosen", () =>
    fc.assert(
      fc.property(anyChoice, (choice) => {
        expect(read(addressOf(choice, orders))).toEqual(choice);
      }),
    ));

  test("passes over what this project does not have", () =>
    expect(read("rows=none&bid=bid-z&order=bid-z&pin=bid-z&equal=yes&move=up.bid-a")).toEqual(start));

  test("keeps a bid that came later at the end of an order made by hand", () =>
    expect(read("order=bid-e,bid-d,bid-c,bid-b").order).toEqual(["bid-e", "bid-d", "bid-c", "bid-b", "bid-a"]));

  test("moves a bid where a press without script asks for it", () =>
    expect(columnsOf(read("order=entered&move=right.bid-a"), orders)).toEqual([
      "bid-b",
      "bid-a",
      "bid-c",
      "bid-d",
      "bid-e",
    ]));
});

describe("columns", () => {
  test("follow the order, without the bids that are left out", () =>
    expect(columnsOf(read("order=place&bid=bid-a&bid=bid-b&bid=bid-c"), orders)).toEqual(["bid-c", "bid-a", "bid-b"]));

  test("begin with the bid that is kept in front", () =>
    expect(columnsOf(read("order=cost&pin=bid-b"), orders)).toEqual(["bid-b", "bid-d", "bid-c", "bid-a", "bid-e"]));

  test("are every bid that is shown, once", () =>
    fc.assert(
      fc.property(anyChoice, (choice) => {
        expect(columnsOf(choice, orders).toSorted()).toEqual(choice.shown);
      }),
    ));
});

describe("moving a bid", () => {
  const anyBid = fc.constantFrom(...entered);
  const anySide = fc.constantFrom("left" as const, "right" as const);

  test("there and back leaves the columns as they were", () =>
    fc.assert(
      fc.property(anyChoice, anyBid, anySide, (choice, bid, side) => {
        const back = side === "left" ? "right" : "left";
        const moved = movedBid(choice, orders, bid, side);
        if (moved === choice) return;
        expect(columnsOf(movedBid(moved, orders, bid, back), orders)).toEqual(columnsOf(choice, orders));
      }),
    ));

  test("changes places with the column beside it, past bids that are left out, and moves no other", () =>
    fc.assert(
      fc.property(anyChoice, anyBid, anySide, (choice, bid, side) => {
        const before = columnsOf(choice, orders);
        const after = columnsOf(movedBid(choice, orders, bid, side), orders);
        const neighbour = neighbourOf(choice, orders, bid, side);
        if (neighbour === null) {
          expect(after).toEqual(before);
          return;
        }
        expect(after.indexOf(bid)).toBe(before.indexOf(bid) + (side === "left" ? -1 : 1));
        const others = (columns: readonly string[]) => columns.filter((id) => id !== bid && id !== neighbour);
        expect(others(after)).toEqual(others(before));
      }),
    ));

  test("stops at the edges and at the bid that is kept in front", () => {
    expect(neighbourOf(start, orders, "bid-a", "left")).toBeNull();
    expect(neighbourOf(start, orders, "bid-e", "right")).toBeNull();
    const pinned = read("pin=bid-c");
    expect(neighbourOf(pinned, orders, "bid-a", "left")).toBeNull();
    expect(neighbourOf(pinned, orders, "bid-c", "right")).toBeNull();
    expect(neighbourOf(pinned, orders, "bid-b", "right")).toBe("bid-d");
  });
});
