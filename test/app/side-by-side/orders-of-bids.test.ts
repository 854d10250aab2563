import { expect, test } from "vitest";
import { ordersOf } from "../../../app/project/[id]/side-by-side/_comparison/orders-of-bids";
import { bid, sideBySide } from "./project";

const { evaluation } = sideBySide([bid("A", [], "3 lb/ft²"), bid("B", [], "9 lb/ft²"), bid("C", [], "3–9 lb/ft²")]);

test("bids stand as entered", () => expect(ordersOf(evaluation).entered).toEqual(["bid-a", "bid-b", "bid-c"]));

// 3, 9 and the middle of 3 and 9, which is 6
test("by infill mass the most comes first, a range by its middle", () =>
  expect(ordersOf(evaluation).infill).toEqual(["bid-b", "bid-c", "bid-a"]));

test("bids without the figure stay as entered, behind the others", () =>
  expect(ordersOf(evaluation).cost).toEqual(["bid-a", "bid-b", "bid-c"]));

test("every order holds every bid once", () => {
  for (const order of Object.values(ordersOf(evaluation)))
    expect(order.toSorted()).toEqual(["bid-a", "bid-b", "bid-c"]);
});

test("by place those that fail a gate stand last", () => {
  const { ranking } = evaluation;
  expect(ordersOf(evaluation).place).toEqual([...ranking.places.map((place) => place.bid), ...ranking.failing]);
});
