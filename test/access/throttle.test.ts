import fc from "fast-check";
import { expect, test } from "vitest";
import { failedOnceMore, waitAfter } from "#lib/access";

const at = (seconds: number) => new Date(Date.UTC(2027, 0, 1) + seconds * 1000).toISOString();

test.each([
  [4, 0],
  [5, 30],
  [6, 60],
  [9, 480],
  [10, 900],
  [50, 900],
])("after %i failures the wait is %i seconds", (failures, wait) => {
  expect(waitAfter({ failures, lastAt: at(0) }, at(0))).toBe(wait);
});

test("a wait shrinks as time passes, is never above a quarter of an hour and ends", () => {
  fc.assert(
    fc.property(fc.nat(100), fc.nat(2000), fc.nat(2000), (failures, some, more) => {
      const early = waitAfter({ failures, lastAt: at(0) }, at(some));
      const late = waitAfter({ failures, lastAt: at(0) }, at(some + more));
      expect(late).toBeLessThanOrEqual(early);
      expect(early).toBeLessThanOrEqual(900);
      expect(waitAfter({ failures, lastAt: at(0) }, at(some + early))).toBe(0);
    }),
  );
});

test("a day without a failure is forgotten, and a clock that was set back locks nobody out", () => {
  expect(failedOnceMore(null, at(0))).toEqual({ failures: 1, lastAt: at(0) });
  expect(failedOnceMore({ failures: 7, lastAt: at(0) }, at(60))).toEqual({ failures: 8, lastAt: at(60) });
  expect(failedOnceMore({ failures: 7, lastAt: at(0) }, at(86_400))).toEqual({ failures: 1, lastAt: at(86_400) });
  expect(waitAfter({ failures: 50, lastAt: at(0) }, at(86_400))).toBe(0);
  expect(waitAfter({ failures: 50, lastAt: at(7200) }, at(0))).toBe(0);
});
