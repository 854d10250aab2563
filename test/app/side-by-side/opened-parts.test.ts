import { expect, test } from "vitest";
import {
  isOpened,
  openedIn,
  openedInRow,
  partKey,
  wholeRow,
} from "../../../app/project/[id]/side-by-side/_comparison/opened-parts";

test("an address opens the rows it names", () =>
  expect([...openedIn(new URLSearchParams("open=3&rows=gaps&open=12"))]).toEqual(["3", "12"]));

test("a row knows what of it is open, and takes no other row's for its own", () =>
  expect(openedInRow(new Set(["1", "1.0.why", "12", "12.3.0"]), 1)).toBe("1 1.0.why"));

test.each([
  ["12", 12],
  ["12.3", null],
  ["", null],
  ["-1", null],
  ["<b>", null],
])("%j stands for a whole row or none", (key, row) => expect(wholeRow(key)).toBe(row));

test("a part is open by itself or with its row, and closed again in an open row", () => {
  const key = partKey("3.1", "working");
  expect(isOpened("", key)).toBe(false);
  expect(isOpened("3.1.working", key)).toBe(true);
  expect(isOpened("3.1.why", key)).toBe(false);
  expect(isOpened("3", key)).toBe(true);
  expect(isOpened("3 3.1.working", key)).toBe(false);
});
