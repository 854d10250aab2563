import { describe, expect, test } from "vitest";
import { baseValues, costAt, costingSchema, linesModel, priceLinesSchema, uncertainInputs } from "#lib/cost";
import { setting } from "../lines";

const lines = priceLinesSchema.parse([
  {
    ...{ kind: "replacement-chain", id: "carpet", label: "Carpet", givenBy: "bid", life: "10", lifeGivenBy: "bid" },
    ...{ amount: { kind: "per-area", price: "$4.85/ft²" }, removal: { kind: "per-area", price: "$0.85/ft²" } },
  },
  {
    ...{ kind: "yearly", id: "grooming", label: "Grooming", givenBy: "owner-estimate" },
    ...{ category: "operation-and-maintenance", purpose: "grooming" },
    amount: { kind: "per-unit", quantity: "110 h", unitPrice: "$48/h" },
  },
]);
const bids = [{ bid: "bid-a", lines }];
const stated = (target: object, kind = "pert", figures = "90 % / 100 % / 125 %") =>
  costingSchema.parse({ uncertainty: { inputs: [{ id: "one", label: "One", target, kind, figures, driver: "" }] } })
    .uncertainty;
const problemsOf = (target: object, kind: string, figures: string) => {
  const parsed = costingSchema.safeParse({
    uncertainty: { inputs: [{ id: "one", label: "One", target, kind, figures, driver: "" }] },
  });
  return parsed.error?.issues.map(({ message }) => message);
};

describe("uncertainInputs", () => {
  test.each([
    ["a line's unit price", { kind: "line", bid: "bid-a", line: "grooming", part: "unit-price" }],
    ["a category", { kind: "category", category: "operation-and-maintenance" }],
    ["the removal of every part", { kind: "parts", part: "removal-price" }],
    ["what is spent on grooming", { kind: "purpose", purpose: "grooming" }],
  ])("moves %s in proportion, and leaves the cost as it is at 100 %%", (_, target) => {
    const { inputs, notes } = uncertainInputs(bids, stated(target), 0.03);
    expect([inputs.length, notes]).toEqual([1, []]);
    const [model, plain] = [linesModel(bids, inputs, setting()), linesModel(bids, [], setting())];
    const cost = (of: typeof model, values: Float64Array) => {
      const [bid] = of.bids;
      if (bid === undefined) throw new Error("no bid");
      return costAt(of, bid, values);
    };
    expect(cost(model, baseValues(model.inputs))).toBeCloseTo(cost(plain, new Float64Array()), 6);
    expect(cost(model, Float64Array.of(1.25))).toBeGreaterThan(cost(plain, new Float64Array()));
  });

  test("knows what a line is spent on by its words where it names no purpose, as the links do", () => {
    const unnamed = lines.map((line) => ({ ...line, purpose: "" as const }));
    const { inputs } = uncertainInputs(
      [{ bid: "bid-a", lines: unnamed }],
      stated({ kind: "purpose", purpose: "grooming" }),
      0.03,
    );
    expect(inputs.map(({ target }) => target)).toEqual([
      {
        ...{ kind: "amount", of: [{ bid: "bid-a", line: "grooming" }], part: "price" },
        move: { kind: "in-proportion" },
      },
    ]);
  });

  test("begins a life, a growth and the rate at what is entered", () => {
    const base = (target: object, kind: string, figures: string) =>
      uncertainInputs(bids, stated(target, kind, figures), 0.03).inputs[0]?.base;
    expect(base({ kind: "life", bid: "bid-a", line: "carpet" }, "discrete", "8: 25 %, 10: 75 %")).toBe(10);
    expect(base({ kind: "growth", bid: "bid-a", line: "grooming" }, "triangular", "0 % / 1 % / 3 %")).toBe(0);
    expect(base({ kind: "real-rate" }, "triangular", "2 % / 3 % / 5 %")).toBe(0.03);
  });

  test("says where an input moves nothing", () =>
    expect(
      uncertainInputs(bids, stated({ kind: "line", bid: "bid-a", line: "gone", part: "price" }), 0.03).notes,
    ).toEqual(["“One” moves no price that counts, so it is left out."]));
});

describe("what is uncertain, as written", () => {
  test.each([
    [
      ...["a life by a curve", { kind: "life", bid: "bid-a", line: "carpet" }, "pert", "8 / 10 / 12"],
      "A life is a whole number of years: choose values with chances, for example “8: 25 %, 10: 75 %”.",
    ],
    [
      ...["a rate without ends", { kind: "real-rate" }, "normal", "3 % ± 1 %"],
      "A rate needs a lowest and a highest value, because rates near −100 % mean nothing: choose a way with both.",
    ],
    [
      ...["a rate of −100 %", { kind: "real-rate" }, "triangular", "-100 % / 3 % / 5 %"],
      "The lowest rate is at or below −50 % a year; expected one above it.",
    ],
    [
      ...["a price in money", { kind: "parts", part: "price" }, "pert", "$4.20 / $4.85 / $6.00"],
      "“$4.20” was read; expected a share in per cent, for example “125 %”.",
    ],
  ] as const)("refuses %s", (_, target, kind, figures, message) =>
    expect(problemsOf(target, kind, figures)).toEqual([message]),
  );
});
