import { describe, expect, test } from "vitest";
import { costingSchema } from "#lib/cost";
import { blankEntry, levelledValues } from "../../../app/project/[id]/levelling/_components/levelled-values";

const checklist = [
  { id: "drainage", label: "Drainage" },
  { id: "carpet", label: "Carpet" },
];
const bids = ["bid-a", "bid-b"];
const excluded = { bid: "bid-b", item: "drainage", standing: "excluded", plug: { kind: "none" } } as const;

describe("levelledValues", () => {
  test("has one entry for each item in each bid, row by row", () =>
    expect(levelledValues({}, { checklist, bids }).levelling.map(({ item, bid }) => `${item} ${bid}`)).toEqual([
      ...["drainage bid-a", "drainage bid-b"],
      ...["carpet bid-a", "carpet bid-b"],
    ]));
  test("keeps what was decided, in its place", () => {
    const { levelling } = levelledValues({ levelling: [excluded] }, { checklist, bids });
    expect(levelling[1]).toEqual({ ...blankEntry("bid-b", "drainage"), standing: "excluded" });
  });
  test("keeps what was decided on an item that is gone, and gives it back with the item", () => {
    const [, carpet] = checklist;
    if (carpet === undefined) throw new Error("no carpet");
    const without = levelledValues({ levelling: [excluded] }, { checklist: [carpet], bids });
    expect(without.levelling.at(-1)).toEqual(excluded);
    expect(levelledValues(without, { checklist, bids }).levelling[1]?.standing).toBe("excluded");
  });
  test("leaves the rest of the costing as it is, and reads", () => {
    const values = levelledValues({ comparedWith: { kind: "bid", bid: "bid-a" } }, { checklist, bids });
    expect(costingSchema.parse(values).comparedWith).toEqual({ kind: "bid", bid: "bid-a" });
  });
});
