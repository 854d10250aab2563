import { expect, test } from "vitest";
import { matrixMove } from "../../../app/project/[id]/levelling/_components/matrix-keys";

const press = (key: string, more = {}) => ({
  key,
  ...{ altKey: false, ctrlKey: false, metaKey: false, shiftKey: false },
  ...more,
});
const size = { rows: 3, columns: 2 };

test.each([
  ["ArrowDown", { row: 2, column: 0 }],
  ["ArrowUp", { row: 0, column: 0 }],
  ["ArrowRight", { row: 1, column: 1 }],
])("%s leads to the next cell", (key, to) => expect(matrixMove(press(key), { row: 1, column: 0 }, size)).toEqual(to));

test.each([
  ["the edge stays where it is", press("ArrowLeft"), { row: 1, column: 0 }],
  ["the last row stays where it is", press("ArrowDown"), { row: 2, column: 1 }],
  ["a letter is left to the list of choices", press("e"), { row: 1, column: 0 }],
  ["Alt opens the list of choices", press("ArrowDown", { altKey: true }), { row: 1, column: 0 }],
])("%s", (_, key, place) => expect(matrixMove(key, place, size)).toBeNull());
