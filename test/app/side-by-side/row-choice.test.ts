import { describe, expect, test } from "vitest";
import { type CellGist, isChosen, isEqual } from "../../../app/project/[id]/side-by-side/_comparison/row-choice";

const says = (text: string): CellGist => ({ text, isGap: false, isInQuestion: false });
const gap: CellGist = { text: "not shown", isGap: true, isInQuestion: false };
const question: CellGist = { text: "not comparable", isGap: false, isInQuestion: true };
const nothing = says("");

describe("rows that differ", () => {
  test.each([
    ["two bids say different things", [says("8 years"), says("10 years")], true],
    ["two bids say the same", [says("8 years"), says("8 years")], false],
    ["a bid that says nothing differs from nobody", [says("8 years"), gap], false],
    ["a figure that can't be compared is a difference", [says("118 g"), question], true],
    ["no bid says anything", [nothing, nothing], false],
  ])("%s", (_, cells, expected) => expect(isChosen(cells, "differences")).toBe(expected));
});

test("gaps are chosen by what is not shown alone", () => {
  expect(isChosen([says("a"), gap], "gaps")).toBe(true);
  expect(isChosen([says("a"), question], "gaps")).toBe(false);
});

test("questions are chosen by what can't be compared or was found", () => {
  expect(isChosen([says("a"), question], "questions")).toBe(true);
  expect(isChosen([says("a"), gap], "questions")).toBe(false);
});

test("every row belongs to all rows", () => expect(isChosen([nothing], "all")).toBe(true));

describe("rows that are equal", () => {
  test.each([
    ["all bids say the same", [says("a"), says("a")], true],
    ["one bid is silent", [says("a"), gap], false],
    ["one bid has no cell of its own", [says("a"), nothing], false],
    ["all bids are silent", [gap, gap], false],
    ["the same words are in question", [question, question], false],
    ["one bid alone has nobody to be equal to", [says("a")], false],
  ])("%s", (_, cells, expected) => expect(isEqual(cells)).toBe(expected));
});
