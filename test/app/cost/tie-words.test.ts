import { describe, expect, test } from "vitest";
import { type Amount, type ExploredTie, priceLineSchema } from "#lib/cost";
import { askedBracket } from "../../../app/project/[id]/cost/two-bids/_components/asked-bracket";
import {
  shownAt,
  shownIn,
  type TieSetting,
  tieInWords,
  tiesAt,
} from "../../../app/project/[id]/cost/two-bids/_components/tie-words";
import { lineTexts } from "../../cost/lines";

const question = { first: "bid-a", second: "bid-b", input: "x", from: 0, to: 3 };
const tie = (tied: Partial<ExploredTie["tied"]>, more: Partial<ExploredTie> = {}): ExploredTie => ({
  ...{ input: "x", label: "Carpet", bid: "bid-a", toldIn: "share", price: null, entered: 1, distance: 0.1 },
  tied: { ...question, stretches: [], ...tied } as ExploredTie["tied"],
  ...more,
});
const letterOf = (id: string) => id.slice(-1).toUpperCase();
const told = (...open: readonly ("first" | "second")[]): TieSetting => ({
  currency: "USD",
  open: { first: open.includes("first"), second: open.includes("second") },
});
const amount = (text: object): Amount => priceLineSchema.parse({ ...lineTexts["at-base-date"], amount: text }).amount;

test("values are told in the way of their input", () =>
  expect([shownIn("share", 1.185), shownIn("years", 1), shownIn("years", 12), shownIn("rate", 0.042)]).toEqual([
    "119 %",
    "1 year",
    "12 years",
    "4.2 %",
  ]));

test.each([
  [{ kind: "lump-sum", price: "$388,000" }, 1.18, "$457,840 (118 %)"],
  [{ kind: "lump-sum", price: "$388,000" }, 1, "$388,000"],
  [{ kind: "per-area", price: "$4.85/ft²" }, 1.2, "$5.82/ft² (120 %)"],
  [{ kind: "per-unit", quantity: "4,000 lb", unitPrice: "$0.38/lb" }, 0.25, "$0.095/lb (25 %)"],
  [{ kind: "per-unit", quantity: "120", unitPrice: "$62.50" }, 1.1, "$68.75 (110 %)"],
])("a share of %j at %d is told in money", (text, share, words) =>
  expect(shownAt({ toldIn: "share", price: amount(text) }, share, "USD")).toBe(words),
);

test("money is told in the currency of the project", () =>
  expect(shownAt({ toldIn: "share", price: amount({ kind: "per-area", price: "€50/m²" }) }, 1.1, "EUR")).toBe(
    "€55.00/m² (110 %)",
  ));

test.each([
  [tie({ kind: "line", at: 1.2, inside: true }), "120 %"],
  [tie({ kind: "line", at: 4, inside: false }), ""],
  [tie({ kind: "crossings", at: [0.02, 0.06] }, { toldIn: "rate" }), "2 % and 6 %"],
  [tie({ kind: "steps", between: [[9, 10]] }, { toldIn: "years" }), "between 9 and 10 years"],
  [tie({ kind: "always-equal" }), "everywhere"],
])("a tie stands as a value", (of, words) => expect(tiesAt(of, told())).toBe(words));

// A's own price: A is cheaper below 120 %, B above. What is missing adds to a cost and to nothing else.
const rising = tie({
  ...{ kind: "line", at: 1.2, inside: true },
  stretches: [
    { from: 0, to: 1.2, cheaper: "first" },
    { from: 1.2, to: 3, cheaper: "second" },
  ],
});

describe("a tie of costs that are a least", () => {
  test("is at most where more cost of the first bid brings it down, at least where more of the second lifts it", () => {
    expect(tiesAt(rising, told("first"))).toBe("at most 120 %");
    expect(tiesAt(rising, told("second"))).toBe("at least 120 %");
    expect(tiesAt(rising, told("first", "second"))).toBe("120 %, as far as figures stand");
  });

  test("is bounded side by side where two bids cross twice", () => {
    const twice = tie(
      {
        ...{ kind: "crossings", at: [0.02, 0.06], from: 0, to: 0.15 },
        stretches: [
          { from: 0, to: 0.02, cheaper: "first" },
          { from: 0.02, to: 0.06, cheaper: "second" },
          { from: 0.06, to: 0.15, cheaper: "first" },
        ],
      },
      { toldIn: "rate" },
    );
    expect(tiesAt(twice, told("second"))).toBe("at least 2 % and at most 6 %");
  });

  test("claims no side where none is known", () => {
    expect(tiesAt(tie({ kind: "crossings", at: [0] }), told("first"))).toBe("0 %, as far as figures stand");
    expect(tiesAt(tie({ kind: "always-equal" }), told("first"))).toBe("everywhere, as far as figures stand");
    expect(tiesAt(tie({ kind: "steps", between: [[9, 10]] }, { toldIn: "years" }), told("second"))).toBe(
      "between 9 and 10 years, as far as figures stand",
    );
  });

  test("says in words which bid costs at least what counts", () =>
    expect(tieInWords(rising, letterOf, told("second"))).toBe(
      "Bid A and bid B cost the same at 120 %, looked for from 0 % to 300 %. Below that bid A costs less, above it bid B. That is as far as figures stand: bid B costs at least what counts here.",
    ));
});

test("an answer begins with a capital and names the bids by their letters", () =>
  expect(tieInWords(rising, letterOf, told())).toBe(
    "Bid A and bid B cost the same at 120 %, looked for from 0 % to 300 %. Below that bid A costs less, above it bid B.",
  ));

test("a price under nothing is no tie", () =>
  expect(
    tieInWords(
      tie({ kind: "line", at: -2.4, inside: false, stretches: [{ from: 0, to: 3, cheaper: "first" }] }),
      letterOf,
      told(),
    ),
  ).toBe("Never from 0 % to 300 %: there bid A costs less throughout."));

describe("the bracket that a reader asks for", () => {
  const asked = (toldIn: ExploredTie["toldIn"], from: string, to: string) => askedBracket(toldIn, { from, to });
  test("is read in the way of its input", () => {
    expect(asked("share", "50 %", "150")).toEqual({ ok: true, value: { from: 0.5, to: 1.5 } });
    expect(asked("rate", "-2 %", "4.5 %")).toEqual({ ok: true, value: { from: -0.02, to: 0.045 } });
    expect(asked("years", "5", "20 years")).toEqual({ ok: true, value: { from: 5, to: 20 } });
    expect(asked("years", "", "")).toEqual({ ok: true, value: null });
  });
  test.each([
    ["share", "-5 %", "100 %", "“-5 %” was read; expected 0 % to 2,000 % of the entered price."],
    ["rate", "0 %", "a lot", "“a lot” was read; expected −50 % to 100 % a year."],
    ["rate", "-100 %", "5 %", "“-100 %” was read; expected −50 % to 100 % a year."],
    ["years", "0", "5", "“0” was read; expected 1 to 60 whole years."],
    ["years", "9", "", "“” was read; expected 1 to 60 whole years."],
    ["share", "100 %", "100 %", "“100 %” to “100 %” was read; expected a lower value first."],
  ] as const)("of %s from “%s” to “%s” is refused with a sentence", (toldIn, from, to, problem) =>
    expect(asked(toldIn, from, to)).toEqual({ ok: false, problem }),
  );
});
