import { expect, test } from "vitest";
import type { ExploredTie } from "#lib/cost";
import { shownIn, tieInWords, tiesAt } from "../../../app/project/[id]/cost/two-bids/_components/tie-words";

const question = { first: "bid-a", second: "bid-b", input: "x", from: 0, to: 3 };
const tie = (tied: Partial<ExploredTie["tied"]>, more: Partial<ExploredTie> = {}): ExploredTie => ({
  ...{ input: "x", label: "Carpet", bid: "bid-a", toldIn: "share", entered: 1, distance: 0.1 },
  tied: { ...question, stretches: [], ...tied } as ExploredTie["tied"],
  ...more,
});
const letterOf = (id: string) => id.slice(-1).toUpperCase();

test("values are told in the way of their input", () =>
  expect([shownIn("share", 1.185), shownIn("years", 1), shownIn("years", 12), shownIn("rate", 0.042)]).toEqual([
    "119 %",
    "1 year",
    "12 years",
    "4.2 %",
  ]));

test.each([
  [tie({ kind: "line", at: 1.2, inside: true }), "120 %"],
  [tie({ kind: "line", at: 4, inside: false }), ""],
  [tie({ kind: "crossings", at: [0.02, 0.06] }, { toldIn: "rate" }), "2 % and 6 %"],
  [tie({ kind: "steps", between: [[9, 10]] }, { toldIn: "years" }), "between 9 and 10 years"],
  [tie({ kind: "always-equal" }), "everywhere"],
])("a tie stands as a value", (of, words) => expect(tiesAt(of)).toBe(words));

test("an answer begins with a capital and names the bids by their letters", () =>
  expect(
    tieInWords(
      tie({
        ...{ kind: "line", at: 1.2, inside: true },
        stretches: [
          { from: 0, to: 1.2, cheaper: "first" },
          { from: 1.2, to: 3, cheaper: "second" },
        ],
      }),
      letterOf,
    ),
  ).toBe("Bid A and bid B cost the same at 120 %. Below that bid A costs less, above it bid B."));
