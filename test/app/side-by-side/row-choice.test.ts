import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type CellGist,
  gistOf,
  isChosen,
  isEqual,
  rowChoices,
} from "../../../app/project/[id]/side-by-side/_comparison/row-choice";

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

describe("laws of the choices", () => {
  const cells = fc.array(fc.constantFrom(says("a"), says("b"), gap, question, nothing), { maxLength: 6 });
  const choices = Object.keys(rowChoices) as (keyof typeof rowChoices)[];

  test("the order of the bids plays no part", () =>
    fc.assert(
      fc.property(cells, fc.constantFrom(...choices), (row, choice) => {
        expect(isChosen(row.toReversed(), choice)).toBe(isChosen(row, choice));
        expect(isEqual(row.toReversed())).toBe(isEqual(row));
      }),
    ));

  test("an equal row is no difference, no gap and in no question", () =>
    fc.assert(
      fc.property(cells, (row) => {
        if (!isEqual(row)) return;
        for (const choice of ["differences", "gaps", "questions"] as const) expect(isChosen(row, choice)).toBe(false);
      }),
    ));

  test("one more bid takes no row out of the differences, gaps or questions", () =>
    fc.assert(
      fc.property(
        cells,
        fc.constantFrom(says("a"), gap, question),
        fc.constantFrom(...choices),
        (row, more, choice) => {
          if (isChosen(row, choice)) expect(isChosen([...row, more], choice)).toBe(true);
        },
      ),
    ));
});

describe("what a cell comes to", () => {
  const cell = { status: null, said: [], marks: [], hasWorking: false, hasReasons: false } as const;
  const said = [{ text: "2.00", unit: " in", qualifier: "new", level: 1 }];
  const mark = { severity: "note", title: "Light infill", isSettled: false, count: 1 } as const;

  test("is its figure with the unit, the status and the open findings", () =>
    expect(gistOf({ ...cell, said, status: "over-claimed", marks: [mark] })).toEqual({
      text: "2.00 in (new) – over-claimed – Light infill",
      isGap: false,
      isInQuestion: true,
    }));

  test("is in no question where an answer settled the finding", () =>
    expect(gistOf({ ...cell, said, marks: [{ ...mark, isSettled: true }] })).toEqual({
      text: "2.00 in (new)",
      isGap: false,
      isInQuestion: false,
    }));
});
