import { describe, expect, test } from "vitest";
import { gateInWords, marginInWords, measuredFigure } from "#lib/evaluation";
import type { UnitSystem } from "#lib/quantity";
import { type Claimed, comparison, twoCriteria } from "./comparison";

const [impact, warranty] = twoCriteria;

function margin(claimed: Claimed, criteria = twoCriteria, units: UnitSystem = "us") {
  const { project, evaluation } = comparison({ A: claimed }, criteria);
  const [bid] = project.bids;
  const [evaluated] = evaluation.bids;
  const score = evaluated?.score.criteria[0];
  if (bid === undefined || evaluated === undefined || score === undefined) throw new Error("no bid");
  const { figure } = measuredFigure({ ...evaluated, bid, area: evaluation.area }, score.criterion);
  return marginInWords(score, figure, units);
}

describe("marginInWords", () => {
  test("says on which side of an upper limit a figure lies", () => {
    expect(margin({ level: "118 g", warranty: null })).toBe("47 g below the limit");
    expect(margin({ level: "170 g", warranty: null })).toBe("5 g above the limit");
    expect(margin({ level: "165 g", warranty: null })).toBe("exactly at the limit");
  });

  test("gives of a range only the distance that is sure", () =>
    expect(margin({ level: "100–150 g", warranty: null })).toBe("at least 15 g below the limit"));

  test("says that a range lies across the limit", () =>
    expect(margin({ level: "150–170 g", warranty: null })).toBe("The range lies across the limit."));

  test("gives the reason where nothing is shown", () =>
    expect(margin({ level: null, warranty: null })).toBe("The bid does not state G-max. Ask the bidder for it."));

  test("turns the words round for a lower limit", () => {
    const atLeast = warranty ? [{ ...warranty, gate: { kind: "at-least", limit: "8 years" } as const }] : [];
    expect(margin({ level: null, warranty: "10 years" }, atLeast)).toBe("2.0 years above the limit");
    expect(margin({ level: null, warranty: "6 years" }, atLeast)).toBe("2.0 years below the limit");
  });

  test("says inside or outside between two limits", () => {
    const within = impact ? [{ ...impact, gate: { kind: "within", low: "90 g", high: "140 g" } as const }] : [];
    expect(margin({ level: "110 g", warranty: null }, within)).toBe("20 g inside the nearer limit");
    expect(margin({ level: "150 g", warranty: null }, within)).toBe("10 g outside the nearer limit");
  });

  test("says nothing where there is no gate", () =>
    expect(margin({ level: null, warranty: "8 years" }, warranty ? [warranty] : [])).toBe(""));
});

describe("gateInWords", () => {
  test("gives the limits in the reader's units", () => {
    const [evaluated] = comparison({ A: { level: "118 g", warranty: null } }).evaluation.bids;
    const gate = evaluated?.score.criteria[0]?.criterion.gate;
    if (gate === undefined || gate.kind === "none") throw new Error("no gate");
    expect(gateInWords(gate, { dimension: "impactLevel" }, "metric")).toBe("below 165 g");
  });
});
