import { expect, test } from "vitest";
import type { TrendPoint } from "#lib/fieldtest";
import { measured, plainDate } from "#lib/quantity";
import { trendReach, trendRules } from "../../../app/project/[id]/field-tests/_tests/trend-layout";

const grams = (level: number) => measured("impactLevel", level);
const point = (years: number, mean: number, worst: number): TrendPoint => ({
  campaign: `year-${years}`,
  date: plainDate("2027-08-20"),
  method: "f1936",
  years,
  mean: grams(mean),
  worst: grams(worst),
  locations: 10,
  aboveClaim: null,
  guarantee: "not-guaranteed",
});
const promised = { method: "f1936", claimed: grams(118), guaranteed: { level: grams(150), years: 8 } } as const;

test("the axes reach around everything that is drawn, at least over three years", () =>
  expect(trendReach([point(0, 117, 120), point(1, 121, 133)], promised, grams(165))).toEqual({
    years: [0, 3],
    levels: [100, 180],
  }));

test("the guarantee is drawn as long as it lasts, claim and limit without an end", () =>
  expect(trendRules(promised, grams(165), (level) => `${level} g`).map(({ words, until }) => [words, until])).toEqual([
    ["limit 165 g", null],
    ["claimed as new 118 g", null],
    ["guaranteed 150 g", 8],
  ]));
