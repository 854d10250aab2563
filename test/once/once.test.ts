import { expect, test, vi } from "vitest";
import { oncePer, onFirstReading } from "#lib/once";

test("each object is asked about once, and two that look alike are two", () => {
  const answer = vi.fn(({ side }: { side: number }) => side * side);
  const areaOf = oncePer(answer);
  const [one, twin] = [{ side: 3 }, { side: 3 }];
  expect([areaOf(one), areaOf(one), areaOf(twin)]).toEqual([9, 9, 9]);
  expect(answer).toHaveBeenCalledTimes(2);
});

test("an answer of nothing is kept as well", () => {
  const answer = vi.fn(() => undefined);
  const nothing = oncePer(answer);
  const key = {};
  expect([nothing(key), nothing(key)]).toEqual([undefined, undefined]);
  expect(answer).toHaveBeenCalledTimes(1);
});

test("what is asked on first reading is worked out once, and not before", () => {
  const answer = vi.fn(() => 9);
  const told = onFirstReading(answer);
  expect(answer).not.toHaveBeenCalled();
  expect([told(), told()]).toEqual([9, 9]);
  expect(answer).toHaveBeenCalledTimes(1);
});
