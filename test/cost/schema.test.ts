import { describe, expect, test } from "vitest";
import { z } from "zod";
import { costConventionsSchema, costLines, priceLineSchema, priceLinesSchema } from "#lib/cost";
import { conventionsText } from "../checks/cost-example";
import { lineTexts, lumpSum } from "./lines";

const issues = (schema: z.ZodType, text: unknown) => {
  const parsed = schema.safeParse(text);
  return parsed.success ? [] : parsed.error.issues.map(({ path, message }) => `${path.join(".")}: ${message}`);
};
const lineIssues = (kind: keyof typeof lineTexts, changes: Readonly<Record<string, unknown>>) =>
  issues(priceLineSchema, { ...lineTexts[kind], ...changes });

describe("costConventionsSchema", () => {
  test("reads conventions as a form holds them", () => {
    const { studyPeriod, realRate, ...rest } = costConventionsSchema.parse(conventionsText);
    expect(studyPeriod).toEqual({ asEntered: "20 years", years: 20 });
    expect(realRate).toMatchObject({ asEntered: "3 %", value: 0.03 });
    expect(rest).toEqual({
      ...{ currency: "USD", baseDate: "2026-07-01", timing: "end-of-year", money: "constant" },
      ...{ serviceStart: { asEntered: "0 years", years: 0 }, nominalRate: null, inflation: null },
      ...{ rateTable: null, rateSource: "" },
    });
  });

  test("takes the real rate out of a nominal one by Fisher's identity, never by subtraction", () => {
    const text = { ...conventionsText, realRate: "", nominalRate: "5.575 %", inflation: "2.5 %" };
    const { realRate, nominalRate } = costConventionsSchema.parse(text);
    expect(nominalRate?.value).toBeCloseTo(0.05575, 12);
    expect(realRate.value).toBeCloseTo(0.03, 12);
    expect(realRate.asEntered).toBe("3 % (from 5.575 % nominal and 2.5 % inflation)");
  });

  test.each(["1", "20", "60 years", "20 yr", "20-year", "20 YEARS", " 20 years "])(
    "reads %j as a study period",
    (text) => {
      expect(issues(costConventionsSchema, { ...conventionsText, studyPeriod: text })).toEqual([]);
    },
  );

  test.each([
    [
      { studyPeriod: "0 years" },
      "studyPeriod: “0 years” was read for the study period; expected a whole number of years from 1 to 60.",
    ],
    [
      { studyPeriod: "61" },
      "studyPeriod: “61” was read for the study period; expected a whole number of years from 1 to 60.",
    ],
    [
      { studyPeriod: "-5 years" },
      "studyPeriod: “-5 years” was read for the study period; expected a whole number of years, for example “10 years”.",
    ],
    [
      { studyPeriod: "8.5 years" },
      "studyPeriod: “8.5 years” was read for the study period; expected a whole number of years, for example “10 years”.",
    ],
    [{ studyPeriod: 20 }, "studyPeriod: Write the study period as a whole number of years."],
    [{ realRate: "-100 %" }, "realRate: “-100 %” was read for the real rate; expected −50 % to 30 % a year."],
    [{ realRate: "30.5 %" }, "realRate: “30.5 %” was read for the real rate; expected −50 % to 30 % a year."],
    [
      { realRate: "3" },
      "realRate: “3” has no unit, so it could mean 3 % or 3 times the whole. Write it with a percent sign, for instance “3 %”.",
    ],
    [
      { baseDate: "2026-02-30" },
      "baseDate: “2026-02-30” is not a day of the calendar. Expected year-month-day, for instance 2026-11-25.",
    ],
    [
      { currency: "JPY" },
      "currency: “JPY” was read for the currency; expected one of the codes USD, CAD, AUD, NZD, EUR, GBP.",
    ],
    [
      { studyPeriod: "1,000 years" },
      "studyPeriod: “1,000 years” was read for the study period; expected a whole number of years, for example “10 years”.",
    ],
    [
      { studyPeriod: "1000 years" },
      "studyPeriod: “1000 years” was read for the study period; expected a whole number of years from 1 to 60.",
    ],
    [{ realRate: "" }, "realRate: Write the real rate per year, for example “3 %”."],
    [
      { realRate: "", nominalRate: "-100 %" },
      "nominalRate: “-100 %” was read for the nominal rate; expected −50 % to 50 % a year.",
    ],
    [{ inflation: "-100 %" }, "inflation: “-100 %” was read for general inflation; expected −20 % to 30 % a year."],
    [
      { realRate: "", nominalRate: "5 %" },
      "inflation: A nominal rate holds general inflation; write the inflation, for example “2.5 %”.",
    ],
    [
      { nominalRate: "5 %", inflation: "2 %" },
      "nominalRate: A real and a nominal rate are both written; expected one of them, the other follows from inflation.",
    ],
    [
      { serviceStart: "20 years" },
      "serviceStart: Service starts 20 years after the base date and the study ends after 20; expected at least one year of service.",
    ],
    [
      { serviceStart: "-1 years" },
      "serviceStart: “-1 years” was read for the start of service; expected a whole number of years, for example “10 years”.",
    ],
    [{ timing: "monthly" }, "timing: Choose end-of-year or mid-year for what recurs every year."],
    [{ money: "current" }, "inflation: Current money carries general inflation; write it, for example “2.5 %”."],
    [{ money: "mixed" }, "money: Choose constant money, without inflation, or current money, with inflation in it."],
  ])("says what it expected instead of %j", (changes, sentence) => {
    expect(issues(costConventionsSchema, { ...conventionsText, ...changes })).toEqual([sentence]);
  });

  test.each(["-50 %", "-1 %", "0 %", "30 %"])("reads a real rate of %s", (realRate) => {
    expect(issues(costConventionsSchema, { ...conventionsText, realRate })).toEqual([]);
  });
});

describe("priceLineSchema", () => {
  test("has an entry for every kind of line", () => {
    expect(Object.keys(lineTexts).toSorted()).toEqual(Object.keys(costLines).toSorted());
    for (const text of Object.values(lineTexts)) expect(issues(priceLineSchema, text)).toEqual([]);
  });

  test("takes what is left out for empty, and keeps what was entered", () => {
    expect(
      priceLineSchema.parse({ ...lineTexts.yearly, amount: lumpSum("$1,150"), document: "Form B", page: "3" }),
    ).toEqual({
      ...lineTexts.yearly,
      amount: { kind: "lump-sum", price: { asEntered: "$1,150", dimension: "money", unit: "$", value: 115_000 } },
      document: "Form B",
      page: "3",
      note: "",
      role: { kind: "base-bid" },
      purpose: "",
      statedExtension: null,
      from: null,
      to: null,
      escalation: null,
    });
    expect(priceLineSchema.parse({ ...lineTexts.yearly, from: "", escalation: " " })).toMatchObject({
      from: null,
      escalation: null,
    });
  });

  test("takes a removal for the owner's estimate unless the line says that the bid gives it", () => {
    const removal = lumpSum("$20");
    const parsed = (changes: object) =>
      priceLineSchema.parse({ ...lineTexts["replacement-chain"], removal, ...changes });
    expect(parsed({})).toMatchObject({ removalGivenBy: "owner-estimate" });
    expect(parsed({ removalGivenBy: "bid" })).toMatchObject({ removalGivenBy: "bid" });
  });

  const perUnit = (quantity: string, unitPrice: string) => ({ amount: { kind: "per-unit", quantity, unitPrice } });
  test.each([
    [
      "yearly",
      { amount: lumpSum("$1.005") },
      "amount.price: “$1.005” has a fraction of a cent; expected dollars and whole cents.",
    ],
    [
      "yearly",
      { amount: lumpSum("-$500") },
      "amount.price: “-$500” is below zero; expected zero or more. Enter a credit as a single payment.",
    ],
    [
      "yearly",
      { amount: lumpSum("$1,000,000,001") },
      "amount.price: “$1,000,000,001” is more than $1,000,000,000; expected the price of one field.",
    ],
    [
      "yearly",
      { amount: { kind: "per-area", price: "$100,000/ft²" } },
      "amount.price: “$100,000/ft²” is more than $90,000 a square foot; expected the price of a field’s area.",
    ],
    [
      "yearly",
      { amount: { kind: "by-guess" } },
      "amount.kind: Choose how the price is given: lump-sum, per-area, per-unit or share.",
    ],
    [
      "yearly",
      { amount: { kind: "lump-sum" } },
      "amount.price: Write the price as it is given, for example “$18,500”.",
    ],
    [
      "yearly",
      perUnit("many", "$48/h"),
      "amount.quantity: “many” was read as a quantity; expected a mass, a volume, a time, an area or a plain count, for example “4,000 lb”, “250 kgal” or “110 h”.",
    ],
    [
      "yearly",
      perUnit("120", "-$62.50"),
      "amount.unitPrice: “-$62.50” is below zero; expected zero or more. Enter a credit as a single payment.",
    ],
    [
      "yearly",
      perUnit("2,000,000 h", "$1,000/h"),
      "amount.quantity: “2,000,000 h” at “$1,000/h” comes to more than $1,000,000,000; expected the price of one field.",
    ],
    [
      "yearly",
      { from: "5", to: "3" },
      "to: The last year lies before the first; expected the first year or a later one.",
    ],
    ["yearly", { from: "0" }, "from: “0” was read for the first year; expected a whole number of years from 1 to 100."],
    [
      "yearly",
      { escalation: "40 %" },
      "escalation: “40 %” was read for the growth of a price; expected −50 % to 30 % a year.",
    ],
    [
      "yearly",
      { category: "owners-addition" },
      "givenBy: An owner’s addition is not the bidder’s price; mark it as the owner’s estimate.",
    ],
    ["yearly", { category: "fun" }, "category: Choose what the money is spent for."],
    ["yearly", { givenBy: "rumour" }, "givenBy: Say who gives the figure: the bid, or the owner as an estimate."],
    [
      "yearly",
      { id: "A b" },
      "id: Expected small letters, digits and single hyphens, for example “carpet-and-infill”.",
    ],
    ["yearly", { label: " " }, "label: Say what the line is for."],
    [
      "yearly",
      { kind: "weekly" },
      "kind: Choose how the price is paid: at-base-date, in-year, yearly, periodic, replacement-chain.",
    ],
    [
      "periodic",
      { every: "0 years" },
      "every: “0 years” was read for the interval; expected a whole number of years from 1 to 100.",
    ],
    [
      "periodic",
      { until: "1" },
      "until: The last year lies before the first payment; expected the year of the first payment or a later one.",
    ],
    [
      "periodic",
      { except: "10, soon" },
      "except: “soon” was read for a year to leave out; expected a whole number of years, for example “10 years”.",
    ],
    [
      "replacement-chain",
      { life: "0" },
      "life: “0” was read for the life; expected a whole number of years from 1 to 100.",
    ],
    [
      "replacement-chain",
      { renewalSaving: "120 %" },
      "renewalSaving: “120 %” was read for the saving at renewal; expected 0 % to 100 % of the first cost.",
    ],
    [
      "replacement-chain",
      { removal: lumpSum("-$1") },
      "removal.price: “-$1” is below zero; expected zero or more. Enter a credit as a single payment.",
    ],
    [
      "replacement-chain",
      { removalAtStudyEnd: "maybe" },
      "removalAtStudyEnd: Choose what removal costs at the end of the study: used-life-share, full or none.",
    ],
    [
      "replacement-chain",
      { residual: "all" },
      "residual: Choose the value left at the end of the study: straight-line, stated or none.",
    ],
    [
      "replacement-chain",
      { residual: "stated" },
      "statedResidual: Write what the part is worth at the end of the study, for example “$20,000”. A minus sign means that it costs something then.",
    ],
  ] as const)("says what it expected in a %s line instead of %j", (kind, changes, sentence) => {
    expect(lineIssues(kind, changes)).toEqual([sentence]);
  });

  test.each([
    ["amount.price", { amount: lumpSum(`$${"1".repeat(300)}`) }],
    ["from", { from: "1".repeat(300) }],
    ["label", { label: "a".repeat(121) }],
  ])("wants a text of bearable length in %s", (field, changes) => {
    expect(lineIssues("yearly", changes)).toEqual([
      `${field}: Expected at most ${field === "label" ? 120 : 200} characters.`,
    ]);
  });

  test("names the unit price that belongs to the quantity", () => {
    const [issue] = lineIssues("yearly", perUnit("4,000 lb", "$48/h"));
    expect(issue).toMatch(/^amount\.unitPrice: “\$\/h” is a unit of money per time\. Expected money per mass/);
  });

  test.each([null, [], "a price", 5])("asks for a kind of payment instead of %j", (text) => {
    expect(issues(priceLineSchema, text)).toEqual([
      ": Choose how the price is paid: at-base-date, in-year, yearly, periodic, replacement-chain.",
    ]);
  });
});

describe("priceLinesSchema", () => {
  test("wants each line to have a name of its own", () => {
    expect(issues(priceLinesSchema, [lineTexts.yearly, lineTexts.periodic])).toEqual([
      "1.id: Another line is already called “line”; expected a name that no other line has.",
    ]);
  });

  test("can be published as a JSON Schema of what is entered", () => {
    const published = z.toJSONSchema(priceLinesSchema, { io: "input" });
    expect(published).toMatchObject({ type: "array", items: { oneOf: expect.any(Array) } });
    expect(JSON.stringify(published)).toContain('"life":{"type":"string"');
    expect(z.toJSONSchema(costConventionsSchema, { io: "input" })).toMatchObject({
      properties: { studyPeriod: { type: "string" }, realRate: { type: "string" } },
    });
  });
});
