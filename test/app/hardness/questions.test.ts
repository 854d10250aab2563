import { describe, expect, test } from "vitest";
import { figureFromInterval, unknown } from "#lib/figure";
import type { Sensitivity } from "#lib/impact";
import { type Interval, measured } from "#lib/quantity";
import { hardnessQuestions } from "../../../app/project/[id]/hardness/_components/questions";
import { outlookOf } from "./outlooks";

const working = { formula: "", inputs: [], assumptions: [], source: "the bid" };
const level = (low: number, high = low) =>
  figureFromInterval(
    "impactLevel",
    { low: measured("impactLevel", low), high: measured("impactLevel", high) } satisfies Interval<"g">,
    working,
  );
const applies: Sensitivity = { kind: "applies", perDepth: measured("depthSensitivity", 27), source: "" };
const none: Sensitivity = {
  kind: "does-not-apply",
  reasons: [],
  because: { kind: "missing-input", what: "a level as new" },
};

const wellShown = {
  asNew: level(100),
  asNewEvidence: "field-tested",
  outlook: outlookOf({ 0: 100, 3: 110, 5: 112, 8: 120 }),
  sensitivity: applies,
} as const;

const ask = (facts: Parameters<typeof hardnessQuestions>[0]) => hardnessQuestions(facts, "ASTM F1936", 8);

describe("hardnessQuestions", () => {
  test("asks nothing where all is shown", () => expect(ask(wellShown)).toEqual([]));

  test("asks for the level as new and for ages where there is none by the method", () => {
    const asNew = unknown("impactLevel", { kind: "not-claimed", what: "G-max" });
    expect(ask({ ...wellShown, asNew, outlook: outlookOf({}) })).toEqual([
      "Which level does this system have as new by ASTM F1936?",
      "Which levels by ASTM F1936 were measured on installed fields of this system at three or more ages?",
    ]);
  });

  test("asks for the results behind a bound", () => {
    expect(ask({ ...wellShown, asNew: level(Number.NEGATIVE_INFINITY, 105) })).toEqual([
      "Which single results stand behind the level as new, which is stated as a bound?",
    ]);
  });

  test("asks for independent proof of what is only said", () => {
    expect(ask({ ...wellShown, asNewEvidence: "own-test" })).toEqual([
      "Which independent laboratory or field test shows the level as new? Please send the whole report.",
    ]);
  });

  test("asks for older fields where the line runs past its ages", () => {
    expect(ask({ ...wellShown, outlook: outlookOf({ 0: 100, 2: 105, 4: 108 }) })).toEqual([
      "Which levels by ASTM F1936 were measured on fields of this system near year 8?",
    ]);
  });

  test("asks for two depths where the rule of thumb does not apply", () => {
    expect(ask({ ...wellShown, sensitivity: none })).toEqual([
      "Which levels were measured at two depths of infill, and how was the depth measured?",
    ]);
  });
});
