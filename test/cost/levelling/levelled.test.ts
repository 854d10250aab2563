import { describe, expect, test } from "vitest";
import { costingSchema, priceLinesSchema, resolvedLines, scopeStandings, startingChecklist } from "#lib/cost";
import { area, costsOf, figurePlug, price } from "../costing";
import { lumpSum } from "../lines";

const base = price("base", "$500,000");
const entry = (item: string, standing: string, changes: object = {}, bid = "a") => ({
  bid,
  item,
  standing,
  ...changes,
});
const rowOf = (cost: ReturnType<typeof costsOf>, item: string, bid = 0) =>
  cost.bids[bid]?.scope.find((row) => row.item === item);

describe("the starting checklist", () => {
  test("names each item once", () => {
    expect(new Set(startingChecklist.map(({ id }) => id)).size).toBe(startingChecklist.length);
    expect(startingChecklist.length).toBeGreaterThan(14);
  });
  test("has words for every standing", () =>
    expect(Object.values(scopeStandings).map(({ label }) => label)).toEqual([
      "Included",
      "Excluded",
      "Unclear",
      "By the owner",
      "Not asked yet",
    ]));
});

describe("levelling", () => {
  test("adds nothing where nobody has asked", () => {
    const [cost] = costsOf([[base]]).bids;
    expect(cost?.priceAtBaseDate).toMatchObject({ kind: "known", value: 50_000_000 });
    expect(cost?.scope.every(({ standing }) => standing === "not-asked")).toBe(true);
  });

  test("adds the owner's figure for what is excluded, marked as the owner's and traceable", () => {
    const cost = costsOf([[base]], { levelling: [entry("drainage", "excluded", { plug: figurePlug("$40,000") })] });
    const [bid] = cost.bids;
    expect(bid?.priceAtBaseDate).toMatchObject({ kind: "known", value: 54_000_000 });
    expect(bid?.priceAsBid).toMatchObject({ kind: "known", value: 50_000_000 });
    const plug = bid?.lines.find(({ origin }) => origin.kind === "plug");
    expect(plug).toMatchObject({
      line: { label: "Drainage (excluded from the bid)", givenBy: "owner-estimate", category: "owners-addition" },
      origin: { kind: "plug", item: "drainage", by: "figure" },
    });
    expect(rowOf(cost, "drainage")?.outcome).toEqual({
      kind: "plugged",
      line: "plug-drainage",
      by: "figure",
      figure: null,
    });
    const working = bid?.priceAtBaseDate.kind === "known" ? bid.priceAtBaseDate.working : null;
    expect(working?.inputs.at(-1)?.from).toEqual({ kind: "costing", field: "levelling.a.drainage" });
  });

  test("takes a plug that is paid every year", () => {
    const plug = { kind: "figure", price: { kind: "yearly", amount: { kind: "lump-sum", price: "$1,000" } } };
    const [cost] = costsOf([[base]], { levelling: [entry("grooming-contract", "by-owner", { plug })] }).bids;
    expect(cost?.yearly.slice(0, 3)).toEqual([50_000_000, 100_000, 100_000]);
  });

  test("does not count a plug while the bid includes the item", () => {
    const levelling = [entry("drainage", "included", { plug: figurePlug("$40,000") })];
    expect(costsOf([[base]], { levelling }).bids[0]?.priceAtBaseDate).toMatchObject({ value: 50_000_000 });
  });

  test("gives a lower bound and a question where an item has no figure", () => {
    const cost = costsOf([[base]], { levelling: [entry("drainage", "unclear")] });
    const [bid] = cost.bids;
    expect(bid?.priceAtBaseDate).toMatchObject({ kind: "at-least", low: 50_000_000 });
    expect(bid?.presentValue.kind).toBe("at-least");
    expect(bid?.priceAsBid.kind).toBe("known");
    expect(rowOf(cost, "drainage")?.outcome).toEqual({
      kind: "open",
      because: "The bid leaves it unclear and no figure stands in for it yet.",
      question:
        "Does your price include drainage? If so, on which page of your bid does it stand; if not, what would it cost?",
    });
    const working = bid?.presentValue.kind === "at-least" ? bid.presentValue.working : null;
    expect(working?.assumptions.at(-1)).toBe("No figure stands for drainage yet, so the cost is at least this.");
  });

  test("asks the owner's own question where there is one", () => {
    const plug = { kind: "question", asked: " Who lays the drains? " };
    const cost = costsOf([[base]], { levelling: [entry("drainage", "excluded", { plug })] });
    expect(rowOf(cost, "drainage")?.outcome).toMatchObject({ kind: "open", question: "Who lays the drains?" });
  });

  test("says so where an item is no longer on the checklist or its line does not count", () => {
    const [bid] = costsOf([[base]], {
      checklist: [{ id: "carpet", label: "Carpet" }],
      levelling: [
        entry("drainage", "excluded", { plug: figurePlug("$1") }),
        entry("carpet", "included", { line: "gone" }),
      ],
    }).bids;
    expect(bid?.notes).toEqual([
      "“drainage” was levelled and is no longer on the checklist, so it does not count.",
      "The price line “gone” that should hold “carpet” is not among the lines that count.",
    ]);
    expect(bid?.priceAtBaseDate).toMatchObject({ kind: "known", value: 50_000_000 });
  });

  test("keeps a plug apart from a line of the same name", () => {
    const [bid] = costsOf([[base, price("plug-drainage", "$5")]], {
      levelling: [entry("drainage", "excluded", { plug: figurePlug("$40,000") })],
    }).bids;
    expect(bid?.lines.map(({ line }) => line.id)).toEqual(["base", "plug-drainage", "plug-drainage-x"]);
    expect(bid?.priceAtBaseDate).toMatchObject({ value: 54_000_500 });
  });
});

describe("a plug at the median of the other bids", () => {
  const training = (text: string | object, changes: object = {}) =>
    price("training", text, { label: "Training", ...changes });
  const levelling = (...bids: string[]) => [
    entry("training", "excluded", { plug: { kind: "median" } }),
    ...bids.map((bid) => entry("training", "included", { line: "training" }, bid)),
  ];
  const plugOf = (cost: ReturnType<typeof costsOf>) =>
    cost.bids[0]?.lines.find(({ origin }) => origin.kind === "plug")?.line;

  test("is the middle of three prices", () => {
    const others = ["$2,000", "$9,000", "$3,000"].map((text) => [base, training(text)]);
    const cost = costsOf([[base], ...others], { levelling: levelling("b", "c", "d") });
    expect(cost.bids[0]?.priceAtBaseDate).toMatchObject({ kind: "known", value: 50_300_000 });
    expect(plugOf(cost)).toMatchObject({ givenBy: "owner-estimate", category: "owners-addition" });
    const outcome = rowOf(cost, "training")?.outcome;
    const figure = outcome?.kind === "plugged" ? outcome.figure : null;
    expect(figure?.kind === "known" ? figure.working.inputs.map(({ label, text }) => `${label}: ${text}`) : []).toEqual(
      [
        "Bid B, Training: $2,000 = $2,000.00",
        "Bid C, Training: $9,000 = $9,000.00",
        "Bid D, Training: $3,000 = $3,000.00",
      ],
    );
  });

  test("is the mean of two, paid as the cheaper one is paid", () => {
    const others = ["$2,000", "$3,000"].map((text) => [base, training(text, { kind: "yearly", category: "testing" })]);
    const cost = costsOf([[base], ...others], { levelling: levelling("b", "c") });
    expect(plugOf(cost)).toMatchObject({ kind: "yearly" });
    expect(cost.bids[0]?.yearly[1]).toBe(250_000);
  });

  test("compares unit prices and multiplies by the quantity wanted", () => {
    const byUnit = (quantity: string, unitPrice: string) => [base, training({ kind: "per-unit", quantity, unitPrice })];
    const wanted = [
      { ...levelling("b", "c")[0], plug: { kind: "median", quantity: "10 h" } },
      ...levelling("b", "c").slice(1),
    ];
    const cost = costsOf([[base], byUnit("4 h", "$100/h"), byUnit("40 h", "$80/h")], { levelling: wanted });
    expect(cost.bids[0]?.priceAtBaseDate).toMatchObject({ value: 50_090_000 });
  });

  test.each([
    [[], "No other bid names a price line for this item, so there is no median. Give a figure or ask."],
    [["b", "c"], "The other bids are paid for this item in unlike ways, so there is no median. Give a figure."],
  ])("says why there is none", (bids, because) => {
    const others = [
      [base, training("$2,000")],
      [base, training("$200", { kind: "yearly", category: "testing" })],
    ];
    const cost = costsOf([[base], ...others], { levelling: levelling(...bids) });
    expect(rowOf(cost, "training")?.outcome).toMatchObject({ kind: "open", because });
    expect(cost.bids[0]?.priceAtBaseDate.kind).toBe("at-least");
  });
});

describe("costingSchema", () => {
  const issues = (costing: unknown) =>
    costingSchema.safeParse(costing).error?.issues.map(({ path, message }) => `${path.join(".")}: ${message}`) ?? [];

  test("takes an empty object for a costing in which nothing is decided", () => {
    expect(costingSchema.parse({})).toMatchObject({ levelling: [], links: [], baseAlternative: null });
  });

  test.each([
    [
      {
        checklist: [
          { id: "a", label: "A" },
          { id: "a", label: "B" },
        ],
      },
      "checklist.1.id: Another item is already called “a”; expected a name that no other item has.",
    ],
    [
      { levelling: [entry("drainage", "excluded"), entry("drainage", "unclear")] },
      "levelling.1.item: The item “drainage” is entered twice for the bid “a”; expected one entry for each.",
    ],
    [
      { levelling: [entry("drainage", "maybe")] },
      "levelling.0.standing: Choose how the bid stands to the item: included, excluded, unclear, by-owner or not-asked.",
    ],
    [
      { levelling: [entry("drainage", "excluded", { plug: figurePlug("dear") })] },
      "levelling.0.plug.price.amount.price: No number was found in “dear”. Expected money, for instance in $.",
    ],
    [
      { linkParameters: { carryOffShare: "200 %" } },
      "linkParameters.carryOffShare: “200 %” was read for the share of infill carried off a year; expected 0 % to 100 %.",
    ],
    [
      { linkParameters: { tippingFee: "-$5/short ton" } },
      "linkParameters.tippingFee: “-$5/short ton” is below zero; expected zero or more.",
    ],
    [{ linkParameters: { payload: "0 t" } }, "linkParameters.payload: “0 t” was read as 0 t. Expected more than 0 kg."],
    [
      {
        links: [
          { bid: "a", link: "grooming" },
          { bid: "a", link: "grooming" },
        ],
      },
      "links.1.link: The link “grooming” is set twice for the bid “a”; expected one setting for each.",
    ],
    [
      { comparedWith: { kind: "last-year" } },
      "comparedWith.kind: Choose what the bids are compared with: nothing, base-alternative or bid.",
    ],
  ])("says what it expected", (costing, sentence) => expect(issues(costing)).toEqual([sentence]));
});

describe("lives taken from other parts", () => {
  const part = (id: string, amount: string, changes: object) => ({
    ...{ kind: "replacement-chain", id, label: id, givenBy: "bid", lifeGivenBy: "bid" },
    ...{ amount: lumpSum(amount), life: "10 years" },
    ...changes,
  });

  test("are followed through a part that takes its own from a third", () => {
    const lines = priceLinesSchema.parse([
      part("carpet", "$100", { life: "8 years" }),
      part("pad", "$50", {}),
      part("mat", "$20", { reuse: { line: "pad", lives: "1" } }),
    ]);
    // as the technical link for a shock layer leaves it: the pad stays under two carpets
    const tied = lines.map((line) =>
      line.id === "pad" && line.kind === "replacement-chain"
        ? { ...line, reuse: { line: "carpet", lives: { asEntered: "2", years: 2 } } }
        : line,
    );
    const lives = resolvedLines(tied, area).map((line) => (line.kind === "replacement-chain" ? line.life.years : null));
    expect(lives).toEqual([8, 16, 16]);
  });

  test("end where two parts wait for each other", () => {
    const lines = priceLinesSchema.parse([part("pad", "$50", {}), part("mat", "$20", {})]);
    const tied = lines.map((line) => {
      const reuse = { line: line.id === "pad" ? "mat" : "pad", lives: { asEntered: "2", years: 2 } };
      return line.kind === "replacement-chain" ? { ...line, reuse } : line;
    });
    expect(() => resolvedLines(tied, area)).not.toThrow();
  });

  test("go with a median", () => {
    const { bids } = costsOf(
      [
        [part("carpet", "$100", { life: "8 years" }), part("pad", "$50", { reuse: { line: "carpet", lives: "2" } })],
        [part("carpet", "$100", { life: "8 years" })],
      ],
      {
        checklist: [{ id: "shock-layer", label: "Shock layer" }],
        levelling: [
          entry("shock-layer", "included", { line: "pad" }),
          entry("shock-layer", "excluded", { plug: { kind: "median", quantity: "" } }, "b"),
        ],
      },
    );
    const plug = bids[1]?.lines.find(({ origin }) => origin.kind === "plug")?.line;
    expect(plug?.kind === "replacement-chain" ? plug.life.years : null).toBe(16);
  });
});
