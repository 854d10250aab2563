import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { priceLinesSchema } from "#lib/cost";
import { explainForm, type FilledForm, mergedBid, readBidForm } from "#lib/document";
import { type BidText, evaluate, projectFileSchema, startingBid, startingProject } from "#lib/evaluation";
import { plainDate } from "#lib/quantity";
import { priceColumns } from "../../lib/document/bid-form/price-columns";
import { pricesSheet } from "../../lib/document/bid-form/prices-sheet";
import { pricesTable, singleCells } from "../../lib/document/bid-form/sheets";
import { addressOf, type Cell, type Sheet } from "../../lib/document/workbook/cell";
import { expected, typed } from "./form-files";

type Price = BidText["prices"][number];

function formOf(cells: Readonly<Record<string, string>>): FilledForm {
  const form = readBidForm(typed({ Prices: cells }), expected);
  if (!form.ok) throw new Error(explainForm(form.problem));
  return form.value;
}

const problemsOf = ({ cells }: Pick<FilledForm, "cells">) =>
  cells.flatMap(({ address, problem }) => (problem === null ? [] : [`${address}: ${problem}`]));

const idFor = (stem: string, taken: readonly string[]) => `${stem}-${taken.length}`;
const laidOver = (bid: BidText, form: FilledForm) =>
  mergedBid(bid, form, { ownMaterials: [], idFor, unmentioned: "keep" });

const once = "Once, at the base date";
/** A bid of 80,000 ft² with every place that a price can have; sums and products are right. */
const places = {
  ...{ B1: "$404,800.00", B2: "Four hundred four thousand eight hundred dollars" },
  ...{ A5: "Turf system", D5: once, E5: "Investment", G5: "$4.50/ft²", I5: "$360,000" },
  ...{ A6: "Poor ground", B6: "Allowance", D6: once, E6: "Investment", G6: "$40,000" },
  ...{ A7: "Logos", B7: "Alternate that adds", D7: once, E7: "Investment", G7: "$6,750" },
  ...{ A8: "No spare rolls", B8: "Alternate that deducts", D8: once, E8: "Investment", G8: "$5,000" },
  ...{ A9: "Rock", B9: "Unit price for extra work", D9: once, E9: "Investment" },
  ...{ F9: "120 yd³", G9: "$62.50/yd³", I9: "$7,500.00" },
  ...{ A10: "Bond", B10: "Bond", D10: once, E10: "Investment", G10: "1.2 %", H10: "the bid with what is accepted" },
  ...{
    A11: "Care",
    B11: "Option",
    C11: "2027-12-31",
    D11: "Every year",
    E11: "Operation and maintenance",
    G11: "$900",
  },
};

describe("a form with the places of its prices", () => {
  const form = formOf(places);

  test("gives each price its place, its share and its extension as typed", () => {
    expect(problemsOf(form)).toEqual([]);
    expect(form).toMatchObject({
      statedTotal: "$404,800.00",
      statedTotalInWords: "Four hundred four thousand eight hundred dollars",
    });
    expect(
      form.prices.map(({ label, role, statedExtension, amount }) => [label, role, statedExtension, amount]),
    ).toEqual([
      ["Turf system", undefined, "$360,000", { kind: "per-area", price: "$4.50/ft²" }],
      ["Poor ground", { kind: "allowance" }, undefined, { kind: "lump-sum", price: "$40,000" }],
      ["Logos", { kind: "alternate-add" }, undefined, { kind: "lump-sum", price: "$6,750" }],
      ["No spare rolls", { kind: "alternate-deduct" }, undefined, { kind: "lump-sum", price: "$5,000" }],
      ["Rock", { kind: "unit-price" }, "$7,500.00", { kind: "per-unit", quantity: "120 yd³", unitPrice: "$62.50/yd³" }],
      ["Bond", { kind: "bond" }, undefined, { kind: "share", share: "1.2 %", of: "accepted-bid" }],
      ["Care", { kind: "option", expires: "2027-12-31" }, undefined, { kind: "lump-sum", price: "$900" }],
    ]);
    expect(form.cells.find(({ address, sheet }) => sheet === "Prices" && address === "B2")).toMatchObject({
      about: "The sum",
      reading: "404,800.00",
    });
  });

  test("says in which row a place or a share is missing or unknown, and what is idle", () => {
    const slips = formOf({
      ...{ A5: "Turf", B5: "Alternative", D5: once, E5: "Investment", G5: "$1" },
      ...{ A6: "Bond", B6: "Bond", D6: once, E6: "Investment", G6: "1.2 %" },
      ...{ A7: "Rock", B7: "Unit price for extra work", D7: once, E7: "Investment", G7: "$62.50/yd³" },
      ...{ A8: "Care", B8: "Option", D8: "Every year", E8: "Testing", G8: "$900" },
      ...{ A9: "Seams", C9: "2027-12-31", D9: once, E9: "Investment", G9: "$10", I9: "$10" },
      ...{ B1: "404,800" },
    });
    expect(problemsOf(slips)).toEqual([
      "B1: “404,800” has no unit. Expected money, for instance in $.",
      "B5: “Alternative” was read. Expected one of “Base bid”, “Alternate that adds”, “Alternate that deducts”, “Allowance”, “Unit price for extra work”, “Bond”, “Tax”, “Freight”, “Option”, or nothing for the base bid.",
      "H6: Nothing was read. Expected one of “the base bid”, “the bid with what is accepted” beside a price that is a share.",
      "F7: Write the quantity with its unit, for example “4,000 lb”.",
      "C8: “” is not a day of the calendar. Expected year-month-day, for instance 2026-11-25.",
      "C9: “2027-12-31” is the last day of an option, and the place of this price is no option. It is kept in the note of the line.",
      "I9: “$10” is the product of a quantity or an area and a unit price, and this price has none. It is kept in the note of the line.",
    ]);
    expect(slips.prices[4]?.note).toBe("Also in row 9 of the filled form: Open until: “2027-12-31”; Extension: “$10”.");
    // a place that nobody knows keeps the price from counting as base bid
    expect(priceLinesSchema.safeParse(slips.prices.slice(0, 1)).success).toBe(false);
  });

  test("changes nothing in the bid that it has made, and keeps what the owner decided", () => {
    const made = laidOver(startingBid("A", "First bidder"), form).bid;
    expect(laidOver(made, form).changes.filter(({ kind }) => kind !== "unchanged")).toEqual([]);
    const decided: BidText = {
      ...made,
      prices: made.prices.map((price): Price => {
        if (price.role?.kind === "alternate-add") return { ...price, role: { ...price.role, accepted: "yes" } };
        if (price.role?.kind === "option") return { ...price, role: { ...price.role, taken: "yes" } };
        if (price.label === "Turf system") return { ...price, role: { kind: "freight" } };
        return price;
      }),
    };
    const later = laidOver(decided, formOf({ ...places, C11: "2028-06-30", G7: "$7,000", B1: "$404,900" }));
    expect(later.changes.flatMap(({ what, texts }) => texts.map((text) => ({ what, ...text })))).toEqual([
      { what: "The bid", field: "Sum of the bid in figures", from: "$404,800.00", to: "$404,900" },
      { what: "Logos", field: "Price", from: "$6,750", to: "$7,000" },
      { what: "Care", field: "Open until", from: "2027-12-31", to: "2028-06-30" },
    ]);
    const roles = Object.fromEntries(later.bid.prices.map(({ label, role }) => [label, role]));
    expect(roles).toMatchObject({
      "Turf system": { kind: "freight" }, // the form is silent on it
      Logos: { kind: "alternate-add", accepted: "yes" },
      Care: { kind: "option", expires: "2028-06-30", taken: "yes" },
    });
  });
});

describe("the arithmetic of a filled form", () => {
  const findings = (cells: Readonly<Record<string, string>>) => {
    const start = startingProject({ name: "Field", owner: "Owner", baseDate: plainDate("2026-07-01") });
    const { bid } = laidOver(startingBid("A", "First bidder"), formOf(cells));
    const project = projectFileSchema.parse({
      ...start,
      brief: { ...start.brief, field: { kind: "measured-area", area: "80,000 ft²", how: "given" } },
      bids: [{ ...bid, id: "a" }],
    });
    return evaluate(project).bids[0]?.priceFindings.map(({ sentence }) => sentence);
  };

  test("is silent where products, sum and words agree", () => expect(findings(places)).toEqual([]));

  // 120 × 62.50 = 7,500 [unit-extension]; 80,000 × 4.50 + 40,000 + 1.2 % of it = 404,800
  test("tells a product, a sum and words that differ", () =>
    expect(
      findings({ ...places, I9: "$7,050.00", B1: "$440,800", B2: "Four hundred four thousand eight hundred dollars" }),
    ).toEqual([
      "“Rock” states $7,050.00; 120 yd³ × $62.50/yd³ comes to $7,500.00, $450.00 more. The unit price goes before its product.",
      "The form states a sum of $440,800.00; its lines come to $404,800.00, $36,000.00 less. The lines count here.",
      "The form writes “Four hundred four thousand eight hundred dollars”, which is $404,800.00, and $440,800.00 in figures. Words go before figures.",
    ]));
});

test("a form from before places and sums were asked is refused", () => {
  const old = readBidForm(typed({ Instructions: { B4: "1.997045f6" } }), expected);
  expect(old.ok ? "read" : explainForm(old.problem)).toMatch(/^The form is of version “1\.997045f6”/);
});

// Any prices that a bidder can give, written into the sheet of prices as the columns ask for them.

const money = fc.integer({ min: 0, max: 9_000_000 }).map((cents) => `$${(cents / 100).toFixed(2)}`);
const anyAmount = fc.oneof(
  money.map((price) => ({ kind: "lump-sum", price }) as const),
  money.map((price) => ({ kind: "per-area", price: `${price}/ft²` }) as const),
  fc
    .tuple(fc.integer({ min: 1, max: 9000 }), money)
    .map(([count, price]) => ({ kind: "per-unit", quantity: `${count} lb`, unitPrice: `${price}/lb` }) as const),
);
const anyShare = fc
  .tuple(fc.integer({ min: 0, max: 1000 }), fc.constantFrom("base-bid", "accepted-bid"))
  .map(([tenths, of]) => ({ kind: "share", share: `${tenths / 10} %`, of }) as const);
const plainRole = fc.constantFrom("base-bid", "allowance", "tax", "freight", "alternate-add", "alternate-deduct");
const perUnit = anyAmount.filter(({ kind }) => kind === "per-unit");
const placed = fc.oneof(
  fc.tuple(
    plainRole.map((kind) => ({ kind })),
    anyAmount,
  ),
  fc.tuple(
    fc.constantFrom("bond", "tax").map((kind) => ({ kind })),
    anyShare,
  ),
  fc.tuple(fc.constant({ kind: "unit-price" }), perUnit),
  fc.tuple(
    fc.integer({ min: 2026, max: 2040 }).map((year) => ({ kind: "option", expires: `${year}-06-30` })),
    anyAmount,
  ),
);
const year = fc.integer({ min: 1, max: 20 }).map(String);
const growth = fc.constantFrom("", "2 %", "-1 %");
const spent = fc.constantFrom("investment", "testing", "operation-and-maintenance");
const anyPrice = fc
  .tuple(
    placed,
    fc.oneof(
      fc.record({ kind: fc.constant("at-base-date"), category: spent }),
      fc.record({ kind: fc.constant("in-year"), category: spent, year, escalation: growth }),
      fc.record({
        kind: fc.constant("yearly"),
        category: spent,
        from: fc.constantFrom("", "2"),
        to: fc.constantFrom("", "9"),
        escalation: growth,
      }),
      fc.record({
        kind: fc.constant("periodic"),
        category: spent,
        every: fc.constant("2 years"),
        from: fc.constant(""),
        until: fc.constantFrom("", "18"),
        except: fc.constantFrom("", "10, 12"),
        escalation: growth,
      }),
      fc.record({
        kind: fc.constant("replacement-chain"),
        life: fc.constantFrom("8 years", "12"),
        renewalSaving: fc.constantFrom("", "30 %"),
        removal: fc.option(money.map((price) => ({ kind: "lump-sum", price }) as const)),
        escalation: growth,
      }),
    ),
    fc.record({ document: fc.constantFrom("", "Bid form"), page: fc.constantFrom("", "3"), extended: fc.boolean() }),
  )
  .map(([[role, amount], schedule, { extended, ...source }]) => ({
    ...{ givenBy: "bid", role, amount, ...schedule, ...source },
    ...(extended && (amount.kind === "per-unit" || amount.kind === "per-area") ? { statedExtension: "$12.00" } : {}),
  })) as unknown as fc.Arbitrary<Omit<Price, "id" | "label">>;

/** What a bidder writes for a price, by the headings of the form. */
function written(price: Price): Readonly<Record<string, string>> {
  const held = price as Readonly<Record<string, unknown>>;
  const text = (field: string) => (typeof held[field] === "string" ? held[field] : "");
  const { amount, role } = price;
  const removal = "removal" in price && price.removal?.kind === "lump-sum" ? price.removal.price : "";
  return {
    "What it is for": price.label,
    "Place in the bid": role?.kind ?? "",
    "Open until": role?.kind === "option" ? role.expires : "",
    "How it is paid": price.kind,
    "Counted under": text("category"),
    "Quantity, if priced by unit": amount.kind === "per-unit" ? amount.quantity : "",
    Price: amount.kind === "per-unit" ? amount.unitPrice : amount.kind === "share" ? amount.share : amount.price,
    "Share of which sum": amount.kind === "share" ? amount.of : "",
    Extension: price.statedExtension ?? "",
    "In year": text("year"),
    Every: text("every"),
    "First year": text("from"),
    "Last year": text("to") || text("until"),
    "Years left out": text("except"),
    Life: text("life"),
    "Saved at renewal": text("renewalSaving"),
    "Removal and disposal": removal,
    "Growth a year": text("escalation"),
    Document: text("document"),
    Page: text("page"),
  };
}

function sheetOf(prices: readonly Price[]): Sheet {
  const cells = new Map<string, Cell>();
  for (const [index, price] of prices.entries()) {
    const texts = written(price);
    for (const [at, { heading }] of priceColumns.entries()) {
      const [row, column] = [pricesTable.headingRow + 1 + index, at + 1];
      const text = texts[heading] ?? "";
      if (text !== "")
        cells.set(addressOf(row, column), { kind: "text", address: addressOf(row, column), row, column, text });
    }
  }
  return { name: singleCells.statedTotal.sheet, cells, merges: [] };
}

test("every price that a bidder can give comes back from the sheet as the same price", () => {
  fc.assert(
    fc.property(fc.array(anyPrice, { maxLength: 8 }), (given) => {
      const prices = given.map(
        (price, index) => ({ ...price, id: `form-price-${index + 5}`, label: `Line ${index}` }) as Price,
      );
      const read = pricesSheet(sheetOf(prices));
      expect(problemsOf(read)).toEqual([]);
      const meant = (lines: readonly Price[]) =>
        priceLinesSchema
          .parse(lines)
          .map((line) => ("lifeGivenBy" in line ? { ...line, lifeGivenBy: "bid", removalGivenBy: "bid" } : line));
      const givenLives = prices.map((price) =>
        price.kind === "replacement-chain" ? { ...price, lifeGivenBy: "bid" as const } : price,
      );
      expect(meant(read.prices)).toEqual(meant(givenLives));
    }),
  );
});
