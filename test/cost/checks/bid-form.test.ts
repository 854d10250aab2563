import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  abnormalPrices,
  amountInWords,
  bidFormArithmetic,
  costingSchema,
  priceLinesSchema,
  priceScreen,
} from "#lib/cost";
import { parseExact } from "#lib/quantity";
import { area, price } from "../costing";

describe("a sum in words", () => {
  test.each([
    ["One million two hundred thousand dollars", 120_000_000],
    ["Six hundred forty-two thousand eight hundred fifty-two dollars", 64_285_200],
    ["One Million, Two Hundred Thousand and 00/100 Dollars", 120_000_000],
    ["nine hundred and ninety-nine dollars and 99/100", 99_999],
    ["Twelve thousand dollars and fifty cents", 1_200_050],
    ["seventeen thousand", 1_700_000],
    ["a hundred dollars only", 10_000],
    ["two million five euros", 200_000_500],
    ["zero dollars", 0],
    ["ten thousand no/100 dollars", 1_000_000],
  ])("“%s” is read", (text, cents) => expect(amountInWords(text)).toEqual({ ok: true, value: cents }));

  test("names the word that is not understood", () =>
    expect(amountInWords("one milion dollars")).toEqual({
      ok: false,
      problem:
        "“one milion dollars” was read as a sum in words; “milion” is not understood there. Expected for example “one million two hundred thousand dollars”.",
    }));

  const small =
    "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split(
      " ",
    );
  const ten = "- - twenty thirty forty fifty sixty seventy eighty ninety".split(" ");
  /** Words for a whole number, written the other way round than they are read. */
  const inWords = (number: number): string => {
    if (number < 20) return small[number] ?? "";
    if (number < 100) return `${ten[Math.floor(number / 10)]}${number % 10 === 0 ? "" : `-${small[number % 10]}`}`;
    const [size, name] = number < 1000 ? [100, "hundred"] : number < 1e6 ? [1000, "thousand"] : [1e6, "million"];
    const rest = number % size;
    return `${inWords(Math.floor(number / size))} ${name}${rest === 0 ? "" : ` ${inWords(rest)}`}`;
  };

  test("any whole sum comes back from its words", () =>
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 999_999_999 }), (number) => {
        expect(amountInWords(`${inWords(number)} dollars`)).toEqual({ ok: true, value: number * 100 });
      }),
    ));
});

const total = (text: string) => {
  const parsed = parseExact("money", text);
  if (!parsed.ok) throw new Error(text);
  return parsed.value;
};
const found = (
  lines: readonly object[],
  stated: { total?: string; words?: string } = {},
  currency: "USD" | "EUR" | "CAD" = "USD",
) => {
  const form = priceLinesSchema.parse(lines);
  return bidFormArithmetic(
    {
      ...{ bid: "a", form, lines: form, statedTotalInWords: stated.words ?? "" },
      statedTotal: stated.total === undefined ? null : total(stated.total),
    },
    { area, currency },
  );
};
const sentences = (...asked: Parameters<typeof found>) => found(...asked).map(({ sentence }) => sentence);
const base = price("base", { kind: "per-area", price: "$5/ft²" }, { label: "Base" });

describe("the sums of a bid form", () => {
  test("say nothing where they agree, to a cent for each line", () => {
    const lines = [{ ...base, statedExtension: "$400,000" }, price("bond", "$4,800", { role: { kind: "bond" } })];
    expect(sentences(lines, { total: "$404,800", words: "Four hundred four thousand eight hundred dollars" })).toEqual(
      [],
    );
    expect(sentences(lines, { total: "$404,799.98" })).toEqual([]);
  });

  test("say which product differs, and that the unit price goes before it", () =>
    expect(sentences([{ ...base, statedExtension: "$40,000" }])).toEqual([
      "“Base” states $40,000.00; $5/ft² × 80,000 ft² comes to $400,000.00, $360,000.00 more. The unit price goes before its product.",
    ]));

  test("say that the stated sum differs from its lines", () => {
    const [finding] = found([base], { total: "$410,000" });
    expect(finding).toMatchObject({
      ...{ key: "sum", check: "sum", severity: "differs", priceLines: ["base"] },
      sentence:
        "The form states a sum of $410,000.00; its lines come to $400,000.00, $10,000.00 less. The lines count here.",
      question:
        "Your form states a sum of $410,000.00, while its lines come to $400,000.00. Which of them stands, and is a line missing?",
    });
  });

  test("leave alternates, unit prices, options and the owner's lines out of the sum of the form", () => {
    const lines = [
      base,
      price("more", "$9,000", { role: { kind: "alternate-add", accepted: "yes" } }),
      price("own", "$700", { givenBy: "owner-estimate" }),
      price("care", "$500", { kind: "yearly", category: "testing" }),
    ];
    expect(sentences(lines, { total: "$400,000" })).toEqual([]);
  });

  test("say that words and figures differ, and that words go first", () =>
    expect(sentences([base], { total: "$400,000", words: "Forty thousand dollars" })).toEqual([
      "The form writes “Forty thousand dollars”, which is $40,000.00, and $400,000.00 in figures. Words go before figures.",
    ]));

  test("say which price is written in another currency", () => {
    const euros = { ...base, amount: { kind: "per-area", price: "€5/ft²" } };
    expect(sentences([euros])).toEqual([
      "“Base” is written as “€5/ft²”; the project is costed in US dollars. What counts of it has no cost until it is written in them.",
    ]);
    expect(sentences([euros], {}, "EUR")).toEqual([]);
    expect(sentences([base], {}, "CAD")).toEqual([]);
    expect(sentences([price("base", "US$5", { label: "Base" })], {}, "CAD")).toEqual([
      "“Base” is written as “US$5”; the project is costed in Canadian dollars. What counts of it has no cost until it is written in them.",
    ]);
  });
});

describe("prices that stand out", () => {
  const costing = costingSchema.parse({
    checklist: [{ id: "drainage", label: "Drainage" }],
    levelling: ["a", "b", "c", "d"].map((bid) => ({ bid, item: "drainage", standing: "included", line: "drainage" })),
  });
  const screened = (amounts: readonly object[], totals: readonly number[]) =>
    abnormalPrices(
      amounts.map((amount, index) => {
        const letter = "ABCD"[index] ?? "";
        const lines = priceLinesSchema.parse([price("drainage", amount, { label: "Drainage" })]);
        return { id: letter.toLowerCase(), letter, lines, priceAsBid: (totals[index] ?? 0) * 100 };
      }),
      { area, currency: "USD", costing },
    );
  const said = (...asked: Parameters<typeof screened>) =>
    [...screened(...asked)].flatMap(([bid, notes]) => notes.map(({ sentence }) => `${bid}: ${sentence}`));
  const lump = (text: string) => ({ kind: "lump-sum", price: text });

  test("are noted as no verdict, with the median of at least three bids", () => {
    const amounts = ["$40,000", "$44,000", "$90,000"].map(lump);
    expect(said(amounts, [1_000_000, 1_050_000, 700_000])).toEqual([
      "c: The price as bid, $700,000, lies 30 % below $1,000,000, the median of 3 bids. That is no verdict; ask whether the same work is meant.",
      "c: The price of “Drainage” lies 105 % above the median of 3 bids for drainage. That is no verdict; ask what it holds.",
    ]);
  });

  test("are not looked for among two bids", () => {
    expect(priceScreen.fewestBids).toBe(3);
    expect(said([lump("$1"), lump("$900,000")], [1, 900_000])).toEqual([]);
  });

  test("are unit prices where all bids price the item by unit", () => {
    const byUnit = (unitPrice: string, quantity = "100 h") => ({ kind: "per-unit", quantity, unitPrice });
    expect(said([byUnit("$50/h"), byUnit("$55/h", "900 h"), byUnit("$140/h")], [100, 100, 100])).toEqual([
      "c: The unit price of “Drainage” lies 155 % above the median of 3 bids for drainage. That is no verdict; ask what it holds.",
    ]);
  });
});
