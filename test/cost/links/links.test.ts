import { describe, expect, test } from "vitest";
import { type LinkFacts, linkDefaults, linkIds, technicalLinks } from "#lib/cost";
import { known, unknown } from "#lib/figure";
import { measured } from "#lib/quantity";
import { costsOf, linkFacts, price } from "../costing";

const base = price("base", "$500,000");
const carpet = price("carpet", "$100,000", {
  ...{ kind: "replacement-chain", category: undefined, life: "10 years", lifeGivenBy: "bid", label: "Carpet" },
  ...{ removalAtStudyEnd: "full", residual: "none" },
});
const chain = (changes: object) => {
  const { category: _, ...line } = { ...carpet, ...changes } as Record<string, unknown>;
  return line;
};
const working = { formula: "given", inputs: [], assumptions: [], source: "invented" };

/** What one link does in one bid: its row, and what is paid in year 0 and year 1 in dollars. */
function linked(
  link: string,
  linkParameters: object,
  {
    lines = [base],
    facts,
    ...more
  }: { lines?: readonly object[]; facts?: LinkFacts; levelling?: unknown; own?: object; choice?: object } = {},
) {
  const { levelling = [], own = {}, choice = { kind: "computed" } } = more;
  const costing = { linkParameters, levelling, links: [{ bid: "a", link, choice, own }] };
  const [bid] = costsOf([lines as never], costing, {}, facts ?? linkFacts()).bids;
  const paid = (year: number) => Number(((bid?.yearly[year] ?? 0) / 100).toFixed(4));
  return { bid, row: bid?.links.find((one) => one.link === link), first: paid(0) - 500_000, second: paid(1), paid };
}

describe("technical links", () => {
  test("are off unless the owner chooses them", () => {
    const [bid] = costsOf([[base]]).bids;
    expect(bid?.links.map(({ kind }) => kind)).toEqual(linkIds.map(() => "off"));
  });

  test("say what they do, and start from rules of thumb with a stated source only", () => {
    for (const { label, does } of Object.values(technicalLinks)) {
      expect(label).not.toBe("");
      expect(does).toMatch(/\.$/);
    }
    expect(linkDefaults.payload).toBe("22 short tons");
  });

  // by hand: 240,000 lb ÷ 44,000 lb = 5.45, so 6 loads at 1,900
  test("freight counts whole truck loads", () => {
    const { row, first } = linked("freight", { freightPerLoad: "$1,900" });
    expect(first).toBe(11_400);
    expect(row?.kind).toBe("computed");
  });

  test("freight of exactly full trucks needs no further one", () => {
    const facts = linkFacts({ infillMass: known("mass", measured("mass", 88_000, "lb"), working) });
    expect(linked("freight", { freightPerLoad: "$1,900" }, { facts }).first).toBe(3_800);
  });

  // by hand: 240,000 lb × (2 % + 1 %) × 0.40
  test("top-up takes shares of the mass every year", () => {
    const { second, row } = linked("infill-top-up", { topUpPrice: "$0.40/lb" });
    expect(second).toBe(2_880);
    const told = row?.kind === "computed" ? row.working : null;
    expect(told?.inputs.map(({ label, text }) => `${label}: ${text}`)).toEqual([
      "Mass of the infill: 240,000 lb (108,862 kg)",
      "Share moved off its place a year: 2 %",
      "Share carried off a year: 1 %",
      "Price of infill: $0.40/lb",
    ]);
  });

  test("a bid's own parameter goes before the project's", () => {
    const own = { displacementShare: "0 %" };
    expect(linked("infill-top-up", { topUpPrice: "$0.40/lb" }, { own }).second).toBe(960);
  });

  test("a range of mass is taken at its middle, and that is said", () => {
    const infillMass = {
      kind: "range",
      dimension: "mass",
      low: measured("mass", 200_000, "lb"),
      high: measured("mass", 300_000, "lb"),
      working,
    } as const;
    const { second, row } = linked("infill-top-up", { topUpPrice: "$0.40/lb" }, { facts: linkFacts({ infillMass }) });
    expect(second).toBe(3_000);
    expect(row?.kind === "computed" ? row.working.assumptions[0] : "").toBe(
      "The middle of 200,000–300,000 lb is taken for the mass of the infill.",
    );
  });

  // by hand: (240,000 + 0.5 × 80,000) lb = 140 short tons × (60 + 25 − 10)
  test("disposal weighs carpet and infill and prices each removal", () => {
    const parameters = { tippingFee: "$60/short ton", haul: "$25/short ton", recyclingCredit: "$10/short ton" };
    const { paid, row } = linked("removal-and-disposal", parameters, { lines: [base, chain({})] });
    expect(row).toMatchObject({ kind: "computed", line: "carpet" });
    expect([paid(10) - 100_000, paid(20)]).toEqual([10_500, 10_500]);
  });

  test("disposal never takes the place of the bidder's own price for removal", () => {
    const removal = { kind: "lump-sum", price: "$30,000" };
    const { row, paid } = linked(
      "removal-and-disposal",
      { tippingFee: "$60/short ton" },
      { lines: [base, chain({ removal, removalGivenBy: "bid" })] },
    );
    expect(row).toMatchObject({
      kind: "not-counted",
      because: "“Carpet” holds the bidder’s own price for removal, so none is computed.",
    });
    expect(paid(20)).toBe(30_000);
  });

  test("a shock layer is renewed with every second carpet, whatever life is entered for it", () => {
    const pad = chain({
      id: "pad",
      label: "Shock layer",
      life: "8 years",
      amount: { kind: "lump-sum", price: "$40,000" },
    });
    const lives = { lives: 2, from: { kind: "claim", bid: "a", claim: "lives" } } as const;
    const { bid, row } = linked(
      "shock-layer",
      {},
      { lines: [base, chain({ life: "6 years" }), pad], facts: linkFacts({ shockLayerLives: lives }) },
    );
    expect(row).toMatchObject({ kind: "computed", line: "pad" });
    expect(bid?.lines.find(({ line }) => line.id === "pad")?.line).toMatchObject({
      life: { years: 12, asEntered: "2 lives of “Carpet” (6 years)" },
    });
    // the carpet is renewed in 6, 12 and 18; the shock layer in 12 alone
    expect([6, 8, 12, 16, 18].map((year) => (bid?.yearly[year] ?? 0) / 100)).toEqual([100_000, 0, 140_000, 0, 100_000]);
  });

  // by hand: 1,800 h × 10 % × 48 and 1,800 h × 6 % × 48
  test("grooming follows the hours of use and the class of the infill", () => {
    expect(linked("grooming", { wage: "$48/h" }).second).toBe(8_640);
    expect(linked("grooming", { wage: "$48/h" }, { facts: linkFacts({ weightClass: "heavy" }) }).second).toBe(5_184);
  });

  // by hand: 10 locations at 6 a visit are 2 visits, twice a year, at 1,150
  test("hardness tests follow the test plan", () => {
    const parameters = { testVisitPrice: "$1,150", testVisitsPerYear: "2", locationsPerVisit: "6" };
    expect(linked("impact-tests", parameters).second).toBe(4_600);
  });

  // by hand: 0.25 in over 80,000 ft² is 1,666.67 ft³ = 12,467.53 gal; 20 times at 9 a thousand gallons
  test("water for cooling follows depth, area and days", () => {
    const parameters = { coolingDepth: "0.25 in", coolingsPerYear: "20", waterPrice: "$9/kgal" };
    expect(linked("cooling-water", parameters).second).toBeCloseTo(2_244.1558, 3);
  });

  test.each([
    ["freight", {}, "This needs the price of a truck load; the owner has not given it."],
    ["infill-top-up", {}, "This needs the price of infill by mass; the owner has not given it."],
    [
      "removal-and-disposal",
      { tippingFee: "$60/t" },
      "The bid has no price line of a carpet with a life, so there is nothing to remove.",
    ],
    ["shock-layer", {}, "The bid has no price line of a shock layer with a life."],
    ["grooming", {}, "This needs the wage of an hour; the owner has not given it."],
    [
      "cooling-water",
      { coolingDepth: "1 mm" },
      "This needs the number of coolings a year; the owner has not given it.",
    ],
  ])("%s says what it lacks and counts nothing", (link, parameters, because) => {
    const { row, first, second } = linked(link, parameters);
    expect(row).toMatchObject({ kind: "not-counted", because });
    expect([first, second]).toEqual([0, 0]);
  });

  test("an unknown mass is said and not guessed", () => {
    const infillMass = unknown("mass", { kind: "not-claimed", what: "the infill mass" });
    const { row } = linked("freight", { freightPerLoad: "$1" }, { facts: linkFacts({ infillMass }) });
    expect(row).toMatchObject({ because: "The bid does not state the infill mass. Ask the bidder for it." });
  });
});

describe("what is priced already", () => {
  const upkeep = { kind: "yearly", category: "operation-and-maintenance" };
  const wage = { wage: "$48/h" };

  test("a link leaves the bidder's own line alone, and the note stands there while it is off", () => {
    const lines = [base, price("care", "$3,000", { ...upkeep, label: "Grooming contract" })];
    const because =
      "The bidder’s own price line “Grooming contract” is for the same purpose, so the link does not count.";
    expect(linked("grooming", wage, { lines }).row).toMatchObject({ kind: "not-counted", because });
    expect(linked("grooming", wage, { lines }).second).toBe(3_000);
    expect(linked("grooming", wage, { lines, choice: { kind: "off" } }).row).toMatchObject({
      kind: "off",
      note: because,
    });
  });

  test("what is bought once is not what is paid every year, whatever it is called", () => {
    const machine = price("groomer", "$18,500", { label: "Grooming machine" });
    const own = price("test", "$4,200", { label: "G-max test at acceptance", givenBy: "owner-estimate" });
    const { bid, second, row } = linked("grooming", wage, { lines: [base, machine, own] });
    expect(row?.kind).toBe("computed");
    expect(second).toBe(8_640);
    expect(bid?.leftOut).toEqual([]);
    const tests = linked("impact-tests", { testVisitPrice: "$1,150" }, { lines: [base, own] });
    expect(tests.row?.kind).toBe("computed");
    expect(tests.bid?.leftOut).toEqual([]);
  });

  test("a purpose that is entered goes before the words of the label", () => {
    const lines = [
      base,
      price("brushes", "$3,000", { ...upkeep, label: "Brushes for the grooming machine", purpose: "freight" }),
    ];
    expect(linked("grooming", wage, { lines }).second).toBe(3_000 + 8_640);
  });

  test("a link takes the place of the owner's own estimate, which is listed", () => {
    const lines = [base, price("care", "$3,000", { ...upkeep, label: "Grooming", givenBy: "owner-estimate" })];
    const { bid, second, row } = linked("grooming", wage, { lines });
    expect(second).toBe(8_640);
    expect(bid?.leftOut.map(({ line, because }) => [line.id, because])).toEqual([
      ["care", "The technical link for grooming takes its place."],
    ]);
    expect(row).toMatchObject({ note: "It takes the place of the owner’s estimate “Grooming”." });
  });

  test.each([
    [
      "excluded",
      { plug: { kind: "figure", price: { kind: "yearly", amount: { kind: "lump-sum", price: "$900" } } } },
      "A plug stands in for grooming contract already, so the link does not count.",
      900,
    ],
    ["included", {}, "The bid includes grooming contract, so the link does not count.", 0],
  ])("a link counts nothing that the checklist holds as %s", (standing, changes, because, paid) => {
    const levelling = [{ bid: "a", item: "grooming-contract", standing, ...changes }];
    const { row, second } = linked("grooming", wage, { levelling });
    expect(row).toMatchObject({ kind: "not-counted", because });
    expect(second).toBe(paid);
  });

  test("a stated figure counts in the place of the computed one", () => {
    const choice = { kind: "stated", price: { kind: "yearly", amount: { kind: "lump-sum", price: "$7,000" } } };
    const { row, second } = linked("grooming", wage, { choice });
    expect(row?.kind).toBe("stated");
    expect(second).toBe(7_000);
  });
});
