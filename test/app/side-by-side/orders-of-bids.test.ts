import { describe, expect, test } from "vitest";
import { evaluate, type ProjectFile, projectFileSchema } from "#lib/evaluation";
import { ordersOf } from "../../../app/project/[id]/side-by-side/_comparison/orders-of-bids";
import { workedProject } from "../../evaluation/worked-project";
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

describe("by life-cycle cost", () => {
  const priced = (letter: string, price: string): ProjectFile["bids"][number] => ({
    ...bid(letter, []),
    prices: [
      {
        ...{ kind: "at-base-date", id: "field", label: "Field", givenBy: "bid", category: "investment" },
        amount: { kind: "lump-sum", price },
      },
    ],
  });
  /** The bids by cost; those that are open leave an item of scope out that nobody has put a figure on. */
  const byCost = (prices: Readonly<Record<string, string>>, open: readonly string[]) => {
    const levelling = open.map((letter) => ({
      bid: `bid-${letter.toLowerCase()}`,
      item: "drainage",
      standing: "excluded",
    }));
    const evaluated = evaluate(
      projectFileSchema.parse({
        ...workedProject,
        bids: Object.entries(prices).map(([letter, price]) => priced(letter, price)),
        costing: { checklist: [{ id: "drainage", label: "Drainage" }], levelling },
      }),
    );
    const kinds = Object.fromEntries(evaluated.bids.map(({ letter, cost }) => [letter, cost.presentValue.kind]));
    expect(kinds).toEqual(
      Object.fromEntries(Object.keys(prices).map((letter) => [letter, open.includes(letter) ? "at-least" : "known"])),
    );
    return ordersOf(evaluated)
      .cost.map((id) => id.slice(-1).toUpperCase())
      .join("");
  };

  test("the least comes first, and a cost that is only a least stands at that least", () => {
    expect(byCost({ A: "$900,000", B: "$800,000", C: "$700,000" }, [])).toBe("CBA");
    expect(byCost({ A: "$900,000", B: "$800,000", C: "$700,000" }, ["B"])).toBe("CBA");
    expect(byCost({ A: "$900,000", B: "$800,000", C: "$700,000" }, ["A", "B", "C"])).toBe("CBA");
  });

  test("among equal costs one that may still rise stands behind, wherever it was entered", () => {
    expect(byCost({ A: "$800,000", B: "$800,000", C: "$700,000" }, ["A"])).toBe("CBA");
    expect(byCost({ A: "$800,000", B: "$800,000", C: "$700,000" }, ["B"])).toBe("CAB");
  });
});
