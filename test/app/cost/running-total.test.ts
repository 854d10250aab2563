import { expect, test } from "vitest";
import { runningTotal, yearsPaid } from "../../../app/project/[id]/cost/_components/running-total";

test("the running total holds each year’s payment and all before it", () => {
  expect(runningTotal([100, 0, 25, -10])).toEqual([100, 100, 125, 115]);
  expect(runningTotal([])).toEqual([]);
});

test("years with a payment are found, credits included", () => {
  expect(yearsPaid([0, 5, 0, -2])).toEqual([1, 3]);
});
