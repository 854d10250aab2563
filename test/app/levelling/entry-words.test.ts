import { expect, test } from "vitest";
import { isOpen, plugInWords } from "../../../app/project/[id]/levelling/_components/entry-words";

const figure = (price: string, kind: "at-base-date" | "yearly" = "at-base-date") =>
  ({ kind: "figure", price: { kind, amount: { kind: "lump-sum", price } } }) as const;

test.each([
  [figure("$22,700"), "plug $22,700"],
  [figure("$4,200", "yearly"), "plug $4,200 a year"],
  [figure(""), "no figure yet"],
  [{ kind: "median", quantity: "" } as const, "plug: median of the others"],
  [{ kind: "question", asked: "" } as const, "asked, no figure yet"],
  [{ kind: "none" } as const, "no figure yet"],
])("a plug %j reads “%s”", (plug, words) => expect(plugInWords({ plug })).toBe(words));

test("an item is open where a price is lacking and nothing stands in for it", () => {
  expect(isOpen({ standing: "excluded", plug: { kind: "none" } })).toBe(true);
  expect(isOpen({ standing: "unclear", plug: { kind: "question", asked: "" } })).toBe(true);
  expect(isOpen({ standing: "excluded", plug: figure("$1") })).toBe(false);
  expect(isOpen({ standing: "included", plug: { kind: "none" } })).toBe(false);
});
