import { describe, expect, test, vi } from "vitest";
import { oncePer, oncePerName, onFirstReading, workedOutOnReading } from "#lib/once";

test("each object is asked about once, and two that look alike are two", () => {
  const answer = vi.fn(({ side }: { side: number }) => side * side);
  const areaOf = oncePer(answer);
  const [one, twin] = [{ side: 3 }, { side: 3 }];
  expect([areaOf(one), areaOf(one), areaOf(twin)]).toEqual([9, 9, 9]);
  expect(answer).toHaveBeenCalledTimes(2);
});

test("each name is asked about once", () => {
  const answer = vi.fn((name: string) => name.length);
  const lengthOf = oncePerName(answer);
  expect([lengthOf("toString"), lengthOf("area"), lengthOf("area")]).toEqual([8, 4, 4]);
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

describe("what is worked out on reading", () => {
  const made = () => {
    const answer = vi.fn(() => ({ total: 9 }));
    return { answer, object: workedOutOnReading({ id: "a" }, { answer, nothing: () => undefined }) };
  };

  test("is worked out once, and not before somebody reads it", () => {
    const { answer, object } = made();
    expect(object.id).toBe("a");
    expect(answer).not.toHaveBeenCalled();
    expect(object.answer).toBe(object.answer);
    expect([object.nothing, object.nothing]).toEqual([undefined, undefined]);
    expect(answer).toHaveBeenCalledTimes(1);
  });

  test.each([
    [
      "compared",
      (object: object) => expect(object).toStrictEqual({ id: "a", answer: { total: 9 }, nothing: undefined }),
    ],
    ["written as JSON", (object: object) => expect(JSON.stringify(object)).toBe('{"id":"a","answer":{"total":9}}')],
    ["spread", (object: object) => expect({ ...object, id: "b" }).toMatchObject({ id: "b", answer: { total: 9 } })],
    [
      "handed to another thread",
      (object: object) => expect(structuredClone(object)).toMatchObject({ answer: { total: 9 } }),
    ],
  ])("is plain data where it is %s", (_, holds) => holds(made().object));

  test("belongs to its own object, although all share the way to it", () => {
    const [one, other] = [1, 2].map((side) => workedOutOnReading({ side }, { area: () => side * side }));
    expect([one?.area, other?.area]).toEqual([1, 4]);
  });
});
