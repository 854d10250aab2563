import { describe, expect, test } from "vitest";
import { type CellGist, isChosen, isEqual } from "../../app/project/[id]/side-by-side/_comparison/row-choice";

const says = (text: string): CellGist => ({ text, isGap: false, isInQuestion: false });
const gap: CellGist = { text: "not shown", isGap: true, isInQuestion: false };
const inQuestion: CellGist = { text: "not comparable", isGap: false, isInQuestion: true };
const nothing = says("");

describe("isChosen", () => {
  test("takes every row while all rows are asked for", () => expect(isChosen([nothing], "all")).toBe(true));

  test("takes a row for its differences where two bids say different things", () => {
    expect(isChosen([says("2 in"), says("2.5 in")], "differences")).toBe(true);
    expect(isChosen([says("2 in"), says("2 in")], "differences")).toBe(false);
  });

  test("takes no difference between a bid and an empty cell", () =>
    expect(isChosen([says("2 in"), nothing], "differences")).toBe(false));

  test("takes a figure that can't be compared for a difference", () =>
    expect(isChosen([inQuestion, inQuestion], "differences")).toBe(true));

  test("takes a row for its gaps where one bid leaves something out", () => {
    expect(isChosen([says("2 in"), gap], "gaps")).toBe(true);
    expect(isChosen([says("2 in"), nothing, inQuestion], "gaps")).toBe(false);
  });

  test("takes a row for its questions where one figure is in question", () => {
    expect(isChosen([says("2 in"), inQuestion], "questions")).toBe(true);
    expect(isChosen([says("2 in"), gap], "questions")).toBe(false);
  });
});

describe("isEqual", () => {
  test("is true where every bid says the same", () => expect(isEqual([says("2 in"), says("2 in")])).toBe(true));
  test("is false where one bid says nothing", () => expect(isEqual([says("2 in"), nothing])).toBe(false));
  test("is false where the same words are in question", () => expect(isEqual([inQuestion, inQuestion])).toBe(false));
  test("is false for one bid alone: it has nothing to be equal to", () => expect(isEqual([says("2 in")])).toBe(false));
});
