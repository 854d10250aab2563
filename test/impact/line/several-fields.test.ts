import { describe, expect, test } from "vitest";
import { newFieldOnLine, severalFieldsLine } from "#lib/impact";

const lineOf = (offsets: readonly number[], scatter: number) => {
  const points = offsets.flatMap((offset, field) =>
    [0, 2, 4, 6].map((x) => ({
      x,
      y: 110 + 3 * x + offset + scatter * ((x + field) % 4 < 2 ? 1 : -1),
      field: `${field}`,
      fields: 1,
    })),
  );
  const found = severalFieldsLine(points);
  if (found.kind !== "fitted") throw new Error(found.reason);
  return found.line;
};

describe("severalFieldsLine", () => {
  test("shows fields that stand apart as spread between fields", () => {
    const line = lineOf([-10, 0, 10, 4, -4], 1);
    expect(line.betweenFields).toBeGreaterThan(6);
    expect(line.withinField).toBeLessThan(2);
    expect(line.fields).toBe(5);
  });

  test("finds no spread between fields that stand together", () =>
    expect(lineOf([0, 0, 0, 0], 3).betweenFields).toBe(0));

  test("is sure where nothing scatters", () => {
    const line = lineOf([0, 0, 0], 0);
    expect(line.slope).toBeCloseTo(3, 10);
    expect(line.withinField).toBeCloseTo(0, 5);
  });

  test("is less sure of a new field far from the ages seen, and the more so the more fields differ", () => {
    const width = (offsets: readonly number[], x: number) => {
      const { low, high } = newFieldOnLine(lineOf(offsets, 2), x, 0.95);
      return high - low;
    };
    expect(width([-5, 0, 5, 2], 12)).toBeGreaterThan(width([-5, 0, 5, 2], 3));
    expect(width([-15, 0, 15, 6], 3)).toBeGreaterThan(width([-5, 0, 5, 2], 3));
  });
});
