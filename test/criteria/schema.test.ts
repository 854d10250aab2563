import { describe, expect, test } from "vitest";
import { z } from "zod";
import {
  type CriterionText,
  criteriaSchema,
  gates,
  ratingMeasure,
  startingLevels,
  valueFunctions,
} from "#lib/criteria";
import { measured } from "#lib/quantity";
import { criteriaOf, criterionText, levels, measures } from "./worked-score";

/** Field and sentence of each issue. */
function issuesOf(...texts: readonly CriterionText[]) {
  const read = criteriaSchema(measures, levels).safeParse(texts);
  return (read.error?.issues ?? []).map(({ path, message }) => ({ field: path.join("."), message }));
}

describe("criteriaSchema", () => {
  test("reads limits and anchors in the dimension of the measure and keeps their text", () => {
    const [criterion] = criteriaOf([
      criterionText({
        gate: { kind: "at-least", limit: "9 lb/ft²" },
        valueFunction: { kind: "more-is-better", worst: "30 kg/m²", best: "12 lb/ft²" },
        weight: "12.5",
      }),
    ]);
    expect(criterion).toMatchObject({
      measure: { id: "infill" },
      gate: { kind: "at-least", limit: { asEntered: "9 lb/ft²", value: measured("arealDensity", 9, "lb/ft²") } },
      valueFunction: { kind: "more-is-better", worst: { asEntered: "30 kg/m²", value: 30 } },
      weight: 12.5,
      evidence: { least: { level: "stated", rank: 0 }, shortfall: "keep-open" },
    });
  });

  const gateTexts: Readonly<Record<string, CriterionText["gate"]>> = {
    "at-most": { kind: "at-most", limit: "9 lb/ft²" },
    "at-least": { kind: "at-least", limit: "9 lb/ft²" },
    below: { kind: "below", limit: "9 lb/ft²" },
    within: { kind: "within", low: "6 lb/ft²", high: "9 lb/ft²" },
  };

  test.each(Object.keys(gates))("reads a gate of the kind %s", (kind) => {
    const gate = gateTexts[kind] ?? { kind: "none" };
    expect(criteriaOf([criterionText({ gate })])[0]?.gate.kind).toBe(kind);
  });

  const ends = { worst: "2 lb/ft²", best: "8 lb/ft²" };
  const points = [
    { at: "2 lb/ft²", value: "0.25" },
    { at: "8 lb/ft²", value: "75 %" },
  ];
  const functionTexts: Readonly<Record<string, CriterionText["valueFunction"]>> = {
    "more-is-better": { kind: "more-is-better", ...ends },
    "less-is-better": { kind: "less-is-better", worst: ends.best, best: ends.worst },
    "target-window": {
      kind: "target-window",
      nothingBelow: "2 lb/ft²",
      fullFrom: "3 lb/ft²",
      fullTo: "4 lb/ft²",
      nothingAbove: "5 lb/ft²",
    },
    steps: { kind: "steps", counted: "from", otherwise: "0", steps: points },
    piecewise: { kind: "piecewise", knots: points },
    rating: { kind: "rating", levels: startingLevels.map((level) => ({ ...level })) },
  };

  test.each(Object.keys(valueFunctions))("reads a value function of the kind %s", (kind) => {
    const valueFunction = functionTexts[kind] ?? { kind: "none" };
    const measure = kind === "rating" ? ratingMeasure.id : "infill";
    expect(criteriaOf([criterionText({ measure, valueFunction })])[0]?.valueFunction.kind).toBe(kind);
  });

  test("reads values as numbers and as percentages", () => {
    const valueFunction = { kind: "piecewise" as const, knots: points };
    expect(criteriaOf([criterionText({ valueFunction })])[0]?.valueFunction).toMatchObject({
      knots: [{ value: 0.25 }, { value: 0.75 }],
    });
  });

  test("describes what files hold as text throughout", () => {
    const described = JSON.stringify(z.toJSONSchema(criteriaSchema(measures, levels), { io: "input" }));
    expect(described).toContain('"less-is-better"');
    expect(described).not.toContain('"number"');
  });
});

describe("sentences for people", () => {
  test("a limit without a unit", () => {
    const gate = { kind: "at-least" as const, limit: "9" };
    expect(issuesOf(criterionText({ gate }))).toEqual([
      {
        field: "0.gate.limit",
        message: expect.stringMatching(/^For the limit: “9” has no unit\. Expected .*mass per area.*\.$/),
      },
    ]);
  });

  test("an anchor of another dimension", () => {
    const valueFunction = { kind: "more-is-better" as const, worst: "2 lb/ft²", best: "8 years" };
    expect(issuesOf(criterionText({ valueFunction }))).toEqual([
      {
        field: "0.valueFunction.best",
        message: expect.stringMatching(/^For the best figure: “.*” is a unit of time\. Expected .*mass per area.*\.$/),
      },
    ]);
  });

  test.each<[string, CriterionText["valueFunction"], string, string]>([
    [
      "more is better upside down",
      { kind: "more-is-better", worst: "8 lb/ft²", best: "2 lb/ft²" },
      "0.valueFunction.best",
      "The best figure reads “2 lb/ft²”, the worst “8 lb/ft²”. Where more is better, expected a best figure above the worst one.",
    ],
    [
      "less is better without a difference",
      { kind: "less-is-better", worst: "8 lb/ft²", best: "8 lb/ft²" },
      "0.valueFunction.best",
      "The best figure reads “8 lb/ft²”, the worst “8 lb/ft²”. Where less is better, expected a best figure below the worst one.",
    ],
    [
      "a window out of order",
      {
        kind: "target-window",
        nothingBelow: "2 lb/ft²",
        fullFrom: "5 lb/ft²",
        fullTo: "4 lb/ft²",
        nothingAbove: "6 lb/ft²",
      },
      "0.valueFunction.nothingBelow",
      "The window reads “2 lb/ft²”, “5 lb/ft²”, “4 lb/ft²”, “6 lb/ft²”. Expected four figures that do not fall.",
    ],
    [
      "knots out of order",
      {
        kind: "piecewise",
        knots: [
          { at: "3 lb/ft²", value: "0" },
          { at: "3 lb/ft²", value: "1" },
        ],
      },
      "0.valueFunction.knots.1.at",
      "“3 lb/ft²” comes after “3 lb/ft²”. Expected figures that rise from one line to the next.",
    ],
    [
      "a single knot",
      { kind: "piecewise", knots: [{ at: "3 lb/ft²", value: "0" }] },
      "0.valueFunction.knots",
      "A line needs at least two knots.",
    ],
    [
      "steps without a step",
      { kind: "steps", counted: "from", otherwise: "0", steps: [] },
      "0.valueFunction.steps",
      "Add a step.",
    ],
    [
      "a value above 1",
      { kind: "steps", counted: "from", otherwise: "0", steps: [{ at: "3 lb/ft²", value: "80" }] },
      "0.valueFunction.steps.0.value",
      "The value reads “80”. Expected a number from 0 to 1, or a percentage such as 80 %.",
    ],
  ])("%s", (_, valueFunction, field, message) => {
    expect(issuesOf(criterionText({ valueFunction }))).toEqual([{ field, message }]);
  });

  test.each<[string, Partial<CriterionText>, string, string]>([
    [
      "limits upside down",
      { gate: { kind: "within", low: "9 lb/ft²", high: "6 lb/ft²" } },
      "0.gate.high",
      "The upper limit reads “6 lb/ft²”, which is below the lower limit “9 lb/ft²”. Expected an upper limit that is not below the lower one.",
    ],
    [
      "a measure that nobody knows",
      { measure: "gloss" },
      "0.measure",
      "The measure reads “gloss”. Expected one that can be judged, such as “impact”, “fall”, “heat”.",
    ],
    [
      "a level of evidence that nobody knows",
      { evidence: { least: "hearsay", shortfall: "keep-open" } },
      "0.evidence.least",
      "The evidence asked for reads “hearsay”. Expected a level such as “stated”, “laboratory”.",
    ],
    [
      "a weight below zero",
      { weight: "-3" },
      "0.weight",
      "The weight reads “-3”. Expected points of 0 or more, such as 30.",
    ],
    ["no weight", { weight: "" }, "0.weight", "The weight reads “”. Expected points of 0 or more, such as 30."],
    [
      "a weight without a way to score",
      { gate: { kind: "at-least", limit: "2 lb/ft²" }, valueFunction: { kind: "none" } },
      "0.weight",
      "The weight reads “10”, but nothing is scored. Expected 0, or a way to turn figures into points.",
    ],
    [
      "neither limit nor points",
      { valueFunction: { kind: "none" }, weight: "0" },
      "0.gate",
      "This criterion has neither a limit nor a way to score, so it decides nothing. Add one of them.",
    ],
    ["no name", { label: " " }, "0.label", "Name the criterion in a few plain words."],
    [
      "no reason",
      { reason: "" },
      "0.reason",
      "Say in a sentence why this is asked, so that a bidder and the public can follow it.",
    ],
    [
      "an id with a space",
      { id: "fall height" },
      "0.id",
      "Expected an id of small letters, digits and single hyphens, such as fall-height.",
    ],
  ])("%s", (_, differing, field, message) => {
    expect(issuesOf(criterionText(differing))).toEqual([{ field, message }]);
  });

  test("two criteria of one id", () => {
    expect(issuesOf(criterionText(), criterionText())).toEqual([
      { field: "1.id", message: "Another criterion has the id “infill” as well. Expected an id of its own." },
    ]);
  });
});
