import fc from "fast-check";
import { expect, test } from "vitest";
import { statusWords } from "../../../app/_components/status";
import { type Cell, emptyCell, shownCell } from "../../../app/project/[id]/side-by-side/_comparison/model";
import { packedTable, unpackedTable } from "../../../app/project/[id]/side-by-side/_comparison/packed-table";
import { bid, claim, sideBySide } from "./project";

const word = fc.constantFrom("", "2.00", " in", "new", "year 5", "“tall”");
const cell: fc.Arbitrary<Cell> = fc.record({
  bid: fc.constant("bid-a"),
  status: fc.constantFrom(null, ...statusWords),
  statements: fc.array(
    fc.record({
      id: word,
      text: word,
      unit: word,
      qualifier: word,
      level: fc.integer({ min: 0, max: 5 }),
      facts: fc.constant([]),
    }),
  ),
  working: fc.constantFrom(null, { formula: "a = b", inputs: [], assumptions: [], source: "derived" }),
  lines: fc.array(fc.string(), { maxLength: 2 }),
  marks: fc.array(
    fc.record({
      key: word,
      severity: fc.constantFrom("can't be true", "needs an answer", "note"),
      title: word,
      sentence: word,
      question: word,
      isSettled: fc.boolean(),
    }),
  ),
});

test("a table unpacks to what was packed, whatever its cells hold", () => {
  const head = { id: "row", label: "Row", unit: "in", under: "", apart: false };
  fc.assert(
    fc.property(fc.array(cell, { minLength: 1 }), (cells) => {
      const groups = [{ id: "group", label: "Group", rows: [{ ...head, cells }] }];
      expect(unpackedTable(packedTable(groups))).toEqual([
        { id: "group", label: "Group", rows: [{ ...head, cells: cells.map(shownCell) }] },
      ]);
    }),
  );
});

test("a text that many bids share travels once, and what only opens does not travel", () => {
  const bids = ["A", "B", "C"].map((letter) =>
    bid(letter, [claim("pile-height", "2 in", { document: "Report 14", words: "two inches tall" })]),
  );
  const sent = JSON.stringify(packedTable(sideBySide(bids).groups));
  expect(sent.split('"2.00"').length - 1).toBe(1);
  expect(sent).not.toContain("Report 14");
  expect(sent).not.toContain("two inches tall");
});

test("an empty cell stays one", () => {
  const row = { id: "row", label: "Row", unit: "", under: "", apart: false, cells: [emptyCell("bid-a")] };
  const [group] = unpackedTable(packedTable([{ id: "group", label: "Group", rows: [row] }]));
  expect(group?.rows[0]?.cells).toEqual([{ status: null, said: [], marks: [], hasWorking: false, hasReasons: false }]);
});

test("findings of one title stand once with their number", () => {
  const mark = {
    key: "",
    severity: "note",
    title: "Same figures",
    isSettled: false,
    sentence: "",
    question: "",
  } as const;
  const cell = { ...emptyCell("bid-a"), marks: [mark, { ...mark, key: "other" }, { ...mark, isSettled: true }] };
  expect(shownCell(cell).marks.map(({ isSettled, count }) => [isSettled, count])).toEqual([
    [false, 2],
    [true, 1],
  ]);
});
