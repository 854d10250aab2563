import { describe, expect, test } from "vitest";
import { accreditations, matchAccreditation, matchTestedBuild, reportInWords, testedBuilds } from "#lib/claim";

describe("matchAccreditation and matchTestedBuild", () => {
  test("find an answer by id or label, whatever the case", () => {
    for (const { id, label } of accreditations)
      expect([id, label, label.toUpperCase()].map(matchAccreditation)).toEqual([id, id, id]);
    for (const { id, label } of testedBuilds)
      expect([id, label, label.toUpperCase()].map(matchTestedBuild)).toEqual([id, id, id]);
  });

  test("read yes, no and nothing, and guess at no other word", () => {
    expect(["yes", "No", "", "perhaps"].map(matchAccreditation)).toEqual([
      "accredited",
      "not-accredited",
      "not-stated",
      null,
    ]);
    expect(["Yes", "no", " ", "similar"].map(matchTestedBuild)).toEqual([
      "bid-build",
      "other-build",
      "not-stated",
      null,
    ]);
  });
});

describe("reportInWords", () => {
  test("says what is given and is silent on the rest", () => {
    const nothing = { date: "", laboratory: "", accreditation: "not-stated", build: "not-stated" } as const;
    expect(reportInWords(nothing)).toEqual([]);
    expect(reportInWords({ ...nothing, date: "May 2024", build: "other-build" })).toEqual([
      "report of May 2024",
      "another build than this bid’s",
    ]);
    expect(reportInWords({ ...nothing, laboratory: "County test house", accreditation: "accredited" })).toEqual([
      "County test house",
      "accredited for the method",
    ]);
  });
});
