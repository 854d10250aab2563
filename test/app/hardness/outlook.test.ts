import { describe, expect, test } from "vitest";
import { outlookRuns } from "../../../app/project/[id]/hardness/_components/outlook-runs";
import { outlookSummary } from "../../../app/project/[id]/hardness/_components/outlook-summary";
import { standingBehind } from "../../../app/project/[id]/hardness/_components/standing-behind";
import { outlookOf } from "./outlooks";

const bid = (letter: string, levels: Readonly<Record<number, number>>) => ({
  letter,
  hardness: { outlook: outlookOf(levels) },
});

describe("outlookSummary", () => {
  // by hand: from 140 g the hard side of the owner's change gains 6 g a year and reaches 165 g after 4.2 years, so in
  // year 5; the likely level gains 3 g a year and comes to 164 g in year 8
  test("names who could reach the limit first, when, and what the likely level does", () => {
    expect(outlookSummary([bid("A", { 0: 100 }), bid("B", { 0: 140 })], "us")).toBe(
      "Bid B could reach the limit of 165 g first, in year 5 on the hard side of the range; its likely level stays below through year 8. The yearly change of bids A and B is the owner’s assumption.",
    );
  });

  test("names every bid that shares the first year", () => {
    expect(outlookSummary([bid("A", { 0: 140 }), bid("B", { 0: 138 })], "us")).toContain(
      "Bids A and B could reach the limit of 165 g first, in year 5 on the hard side of the range.",
    );
  });

  test("says as new where the limit is reached from the start", () => {
    expect(outlookSummary([bid("A", { 0: 170 })], "us")).toContain(
      "Bid A could reach the limit of 165 g first, as new on the hard side of the range; its likely level gets there as new.",
    );
  });

  test("says that all stay below, and who can’t be followed", () => {
    expect(outlookSummary([bid("A", { 0: 100 }), bid("D", {})], "us")).toBe(
      "Bid A stays below the limit of 165 g through year 8, on the hard side of the range too. The yearly change of bid A is the owner’s assumption. Bid D can’t be followed and is not drawn.",
    );
  });

  test("says so where no bid can be followed", () => {
    expect(outlookSummary([bid("D", {}), bid("E", {})], "us")).toBe(
      "No bid gives a level by the required method, so none can be followed over the years.",
    );
  });
});

describe("outlookRuns", () => {
  const years = (...extrapolated: readonly boolean[]) =>
    extrapolated.map((flag, year) => ({ year, extrapolated: flag }));
  const shown = (...flags: readonly boolean[]) =>
    outlookRuns(years(...flags)).map((run) => [run.extrapolated, run.years.map(({ year }) => year)]);

  test("keeps one run where the bid's levels reach all years", () => {
    expect(shown(false, false, false)).toEqual([[false, [0, 1, 2]]]);
  });

  test("cuts where the bid's levels end, the year shared by both runs", () => {
    expect(shown(false, false, true, true)).toEqual([
      [false, [0, 1]],
      [true, [1, 2, 3]],
    ]);
  });

  test("draws both sides of a single known year as extrapolated", () => {
    expect(shown(true, false, true)).toEqual([[true, [0, 1, 2]]]);
  });

  test("has nothing to draw of one year", () => {
    expect(shown(false)).toEqual([]);
  });
});

const unnamed =
  "No figure names the field that it was measured on. All count alike; where several come from one field, the range is too narrow.";

describe("standingBehind", () => {
  test("says that levels on a straight line show no certainty", () => {
    expect(standingBehind(outlookOf({ 0: 100, 2: 106, 4: 112 }))).toEqual([
      "The stated levels lie exactly on a straight line, so the band has no width. Test results scatter; a band without width shows no certainty. Ask for the single results.",
      unnamed,
      "Only 3 levels stand behind the line (1 degree of freedom), so one more test can move it noticeably.",
    ]);
  });

  test("says how few levels carry a line that scatters", () => {
    expect(standingBehind(outlookOf({ 0: 100, 3: 110, 5: 109, 8: 121 }))).toEqual([
      unnamed,
      "Only 4 levels stand behind the line (2 degrees of freedom), so one more test can move it noticeably.",
    ]);
  });

  test("says of six scattering levels only that no field is named", () => {
    expect(standingBehind(outlookOf({ 0: 100, 1: 104, 2: 104, 3: 110, 4: 109, 5: 114 }))).toEqual([unnamed]);
  });

  test("says that an assumed change shows nothing of the bid", () => {
    expect(standingBehind(outlookOf({ 0: 100 }))).toEqual([
      "The levels that are used come from the new surface alone. How fast this surface hardens is not shown, so the band says what the owner assumes and nothing about this bid.",
    ]);
    expect(standingBehind(outlookOf({ 4: 131 }))[0]).toContain("come from one age, 4 years.");
  });

  test("has nothing to say of a bid without an outlook", () => {
    expect(standingBehind(outlookOf({}))).toEqual([]);
  });
});
