import { describe, expect, test } from "vitest";
import { claimedMeasures, measures, requirementsSchema, startingProject } from "#lib/evaluation";
import { plainDate } from "#lib/quantity";
import { ofKind } from "../../../app/_components/form/of-kind";
import {
  gateAsTyped,
  gateChoices,
  gateTemplates,
  valueChoicesOf,
  valueTemplates,
} from "../../../app/project/[id]/requirements/_components/criterion-kinds";
import { measureChoices, startingCriterion } from "../../../app/project/[id]/requirements/_components/measure-choices";

const { requirements } = startingProject({ name: "Field", owner: "Owner", baseDate: plainDate("2027-06-01") });

/** What the schema says of a criterion with one value changed. */
function saidOf(changed: Readonly<Record<string, unknown>>): readonly string[] {
  const criterion = { ...startingCriterion("new", "warranty-years"), reason: "It lasts.", ...changed };
  const read = requirementsSchema.safeParse({ ...requirements, criteria: [criterion] });
  return (read.error?.issues ?? []).map(({ path, message }) => `${path.join(".")}: ${message}`);
}

describe("the measures to choose from", () => {
  test("are all that a criterion can judge, each once", () =>
    expect(measureChoices.map(({ value }) => value).sort()).toEqual(measures.map(({ id }) => id).sort()));

  test("stand in groups, what is worked out first", () => {
    expect(measureChoices[0]?.group).toBe("Worked out from the bid");
    expect(measureChoices.filter(({ group }) => group?.startsWith("Claimed: "))).toHaveLength(claimedMeasures.length);
  });
});

test("a new criterion is named as what it judges, without the method, and says that it decides nothing yet", () => {
  expect(startingCriterion("new", "critical-fall-height.f1292").label).toBe("Critical fall height");
  expect(saidOf({})).toEqual([
    "criteria.0.gate: This criterion has neither a limit nor a way to score, so it decides nothing. Add one of them.",
  ]);
});

describe("each kind to choose", () => {
  // An empty anchor is said at its own field; a field that a kind lacks or has too many would be said at the rule.
  test.each(gateChoices)("of gate, $label, has the fields that the schema asks for", ({ value }) => {
    const gate = ofKind(value, gateTemplates[value as keyof typeof gateTemplates], {});
    const said = saidOf({ gate, valueFunction: { kind: "more-is-better", worst: "5 years", best: "8 years" } });
    expect(said.filter((text) => !text.includes("Nothing is written here"))).toEqual([]);
    expect(said).toHaveLength(value === "none" ? 0 : value === "within" ? 2 : 1);
  });

  test.each(valueChoicesOf(false))("of score, $label, has the fields that the schema asks for", ({ value }) => {
    const valueFunction = ofKind(value, valueTemplates[value as keyof typeof valueTemplates], {});
    const said = saidOf({ valueFunction, gate: { kind: "at-least", limit: "5 years" } });
    expect(said.filter((text) => !text.includes("Nothing is written here"))).toEqual([]);
  });

  test("of score of what people rate is their rating alone, with levels that read", () => {
    expect(valueChoicesOf(true).map(({ value }) => value)).toEqual(["rating"]);
    const rated = { ...startingCriterion("new", "evaluators-rating"), label: "Care plan", reason: "It lasts." };
    expect(saidOf(rated)).toEqual([]);
    expect(saidOf({ ...rated, valueFunction: { kind: "more-is-better", worst: "0 %", best: "100 %" } })).toEqual([
      "criteria.0.valueFunction.kind: Evaluators rate this, so it has to be scored by their rating: give the levels with their descriptions.",
    ]);
    expect(saidOf({ valueFunction: rated.valueFunction })).toEqual([
      "criteria.0.valueFunction.kind: This is a figure of the bid, so evaluators do not rate it. For their rating, choose the measure “Rating by evaluators”.",
    ]);
  });
});

describe("gateAsTyped", () => {
  test("says the gate in the owner's own text", () => {
    expect(gateAsTyped({ kind: "at-least", limit: "1.3 m" })).toBe("at least 1.3 m");
    expect(gateAsTyped({ kind: "within", low: "8 in", high: "10 in" })).toBe("within 8 in to 10 in");
    expect(gateAsTyped({ kind: "none" })).toBe("");
  });
});
