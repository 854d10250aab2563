import { describe, expect, test } from "vitest";
import { criteriaSchema, ratingMeasure, type ScoreRule, startingLevels, valueAt, valueBounds } from "#lib/criteria";
import { criterionText, levels, measures } from "./worked-score";

const rule: ScoreRule = {
  kind: "rating",
  levels: [
    { id: "weak", label: "Weak", description: "It leaves out what decides.", value: 0.2 },
    { id: "full", label: "Full", description: "It covers all.", value: 0.9 },
  ],
};

const issues = (changed: readonly Readonly<Record<string, string>>[]) => {
  const valueFunction = { kind: "rating" as const, levels: changed as never };
  const read = criteriaSchema(measures, levels).safeParse([
    criterionText({ measure: ratingMeasure.id, valueFunction }),
  ]);
  return (read.error?.issues ?? []).map(({ path, message }) => `${path.slice(2).join(".")}: ${message}`);
};

describe("a rating", () => {
  test("is worth what its level is worth, and never more or less than the outermost levels", () => {
    expect([0, 0.2, 0.5, 0.9, 1].map((figure) => valueAt(rule, figure))).toEqual([0.2, 0.2, 0.5, 0.9, 0.9]);
    expect(valueBounds(rule, { low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY })).toEqual({
      low: 0.2,
      high: 0.9,
    });
  });

  test("asks for levels from the least worth to the most, each described", () => {
    const [first, second] = startingLevels;
    if (first === undefined || second === undefined) throw new Error("two levels");
    expect(issues([second, first])).toEqual([
      "levels.1.value: “Not covered” comes after “In part” but is not worth more. Expected levels from the least worth to the most.",
    ]);
    expect(issues([first, { ...second, description: " " }])).toEqual([
      "levels.1.description: Say what has to be so for this level, so that two evaluators read it alike.",
    ]);
    expect(issues([first, { ...second, id: first.id }])).toEqual([
      "levels.1.id: Another level has the id “level-1” as well.",
    ]);
    expect(issues([first])).toEqual(["levels: A rating needs at least two levels."]);
  });
});
