import { describe, expect, test } from "vitest";
import { impactRequirementSchema } from "#lib/impact";
import { typed } from "./requirement";

const problemsOf = (input: unknown) => {
  const parsed = impactRequirementSchema.safeParse(input);
  return parsed.success ? [] : parsed.error.issues.map(({ path, message }) => `${path.join(".")}: ${message}`);
};

describe("impactRequirementSchema", () => {
  test("keeps what was typed beside the figure", () => {
    const read = impactRequirementSchema.parse(typed);
    expect(read.limit).toMatchObject({ asEntered: "165 g", value: 165 });
    expect(read.horizonYears).toBe(12);
    expect(read.chanceLevel.value).toBeCloseTo(0.95, 12);
    expect(read.testLocations).toBe(10);
  });

  test("takes the owner's own sensitivity with its reason", () => {
    const own = { kind: "owners-value", perDepth: "0.4 1/in", reason: "own field trial" };
    const read = impactRequirementSchema.parse({ ...typed, depthSensitivity: own }).depthSensitivity;
    expect(read.kind === "owners-value" && read.perDepth.value * 0.0254).toBeCloseTo(0.4, 12);
  });

  test("asks for the reason of the owner's sensitivity", () =>
    expect(
      problemsOf({ ...typed, depthSensitivity: { kind: "owners-value", perDepth: "0.4 1/in", reason: " " } }),
    ).toEqual(["depthSensitivity.reason: Say where the owner's sensitivity to depth loss comes from."]));

  test("asks for a sensitivity above 0", () =>
    expect(
      problemsOf({ ...typed, depthSensitivity: { kind: "owners-value", perDepth: "0 1/in", reason: "trial" } }),
    ).toEqual(["depthSensitivity.perDepth: “0 1/in” was read as 0 1/in. Expected more than 0 1/in."]));

  test("says which end of the target window has to be higher", () =>
    expect(problemsOf({ ...typed, targetWindow: { low: "140 g", high: "90 g" } })).toEqual([
      "targetWindow.high: The target window runs from 140 g to 90 g; its upper end has to be the higher one.",
    ]));

  test("says that the window reaches above the limit", () =>
    expect(problemsOf({ ...typed, targetWindow: { low: "120 g", high: "180 g" } })).toEqual([
      "targetWindow.high: The target window reaches 180 g, above the limit of 165 g. Lower the one or raise the other.",
    ]));

  test("lets the window end at the limit", () =>
    expect(problemsOf({ ...typed, targetWindow: { low: "120 g", high: "165 g" } })).toEqual([]));

  test("asks for yearly changes in rising order", () =>
    expect(problemsOf({ ...typed, ownersDrift: { low: "2 g/year", likely: "1 g/year", high: "0 g/year" } })).toEqual([
      "ownersDrift.likely: The likely yearly change, 1 g/year, is less than the low one, 2 g/year. Put them in rising order.",
      "ownersDrift.high: The high yearly change, 0 g/year, is less than the likely one, 1 g/year. Put them in rising order.",
    ]));

  test.each(["0 years", "41 years", "18 months"])("asks for whole years instead of %s", (horizonYears) =>
    expect(problemsOf({ ...typed, horizonYears })).toEqual([
      "horizonYears: Give the years to look ahead as whole years from 1 to 40, for instance “12 years”.",
    ]),
  );

  test.each([
    ["100 %", "less than 100 %"],
    ["40 %", "at least 50 %"],
  ])("does not take %s for a chance level", (chanceLevel, expected) =>
    expect(problemsOf({ ...typed, chanceLevel })).toEqual([
      `chanceLevel: “${chanceLevel}” was read as ${chanceLevel}. Expected ${expected}.`,
    ]),
  );

  test.each(["0", "2.5", "101"])("does not take %s test locations", (testLocations) =>
    expect(problemsOf({ ...typed, testLocations })).toEqual([
      "testLocations: Give the test locations on one field as a whole number from 1 to 100.",
    ]),
  );

  test("asks for a level above 0", () =>
    expect(problemsOf({ ...typed, targetWindow: { low: "0 g", high: "140 g" } })).toEqual([
      "targetWindow.low: “0 g” was read as 0 g. Expected more than 0 g.",
    ]));

  test("asks where the limit comes from and which method counts", () =>
    expect(problemsOf({ ...typed, limitSource: "", method: "" })).toEqual([
      "method: Name the test method that the levels belong to.",
      "limitSource: Say where the limit comes from: a standard with its edition, a guideline or the contract.",
    ]));

  test("takes no field it does not know", () => expect(problemsOf({ ...typed, hic: "1000" })).toHaveLength(1));

  describe("the owner's choices for the outlook", () => {
    const withOutlook = (outlook: unknown) => ({ ...typed, outlook });

    test("may be left out, in whole and in part", () => {
      expect(impactRequirementSchema.parse(typed).outlook).toBeUndefined();
      expect(problemsOf(withOutlook({}))).toEqual([]);
      expect(problemsOf(withOutlook({ law: "linear" }))).toEqual([]);
    });

    test("keep what was typed beside the figure", () => {
      const { outlook } = impactRequirementSchema.parse(
        withOutlook({
          spread: { kind: "depth-deviation", deviation: "1/8 in", reason: "own grid" },
          resets: [{ year: "4", undone: "50 %", note: "top-up, price line 7" }],
        }),
      );
      expect(outlook?.spread).toMatchObject({ kind: "depth-deviation", deviation: { asEntered: "1/8 in" } });
      expect(outlook?.resets?.[0]).toMatchObject({ year: 4, undone: { value: 0.5 }, note: "top-up, price line 7" });
    });

    test("ask for reasons, whole years and shares from nothing to all", () =>
      expect(
        problemsOf(
          withOutlook({
            spread: { kind: "level-deviation", share: "9 %", reason: " " },
            shockLayer: { factor: "0 %", reason: "" },
            resets: [
              { year: "2.5", undone: "50 %" },
              { year: "3", undone: "120 %" },
            ],
          }),
        ),
      ).toEqual([
        "outlook.spread.reason: Say where the spread of the level comes from.",
        "outlook.shockLayer.factor: “0 %” was read as 0 %. Expected more than 0 %.",
        "outlook.shockLayer.reason: Say where the factor for a shock layer comes from.",
        "outlook.resets.0.year: Give the year of use as a whole number from 1 to 40.",
        "outlook.resets.1.undone: “120 %” was read as 120 %. Expected at most 100 %.",
      ]));

    test("take one reset a year", () =>
      expect(
        problemsOf(
          withOutlook({
            resets: [
              { year: "3", undone: "50 %" },
              { year: "3", undone: "20 %" },
            ],
          }),
        ),
      ).toEqual(["outlook.resets.1.year: Another reset stands in year 3 as well. Put both into one."]));
  });
});
