import { describe, expect, test } from "vitest";
import { criteriaOf, evaluate, gateInWords, marginInWords, measuredFigure, projectFileSchema } from "#lib/evaluation";
import { formatFigure } from "#lib/figure";
import { workedProject } from "./worked-project";

const inEuros = (text: unknown): unknown => JSON.parse(JSON.stringify(text).replaceAll(/\$(?=\d)/g, "€"));

/** The worked example with all its prices in another currency and its cost judged on these anchors. */
function project(currency: string, worst: string, best: string, limit: string) {
  const cost = workedProject.requirements.criteria.find(({ id }) => id === "cost");
  if (cost === undefined) throw new Error("the worked example judges cost");
  const criterion = {
    ...cost,
    gate: { kind: "at-most", limit },
    valueFunction: { kind: "less-is-better", worst, best },
  };
  return projectFileSchema.parse({
    ...workedProject,
    brief: { ...workedProject.brief, money: { ...workedProject.brief.money, currency } },
    requirements: { ...workedProject.requirements, criteria: [criterion] },
    bids: inEuros(workedProject.bids),
  });
}

function shownOf(read: ReturnType<typeof project>) {
  const { bids, area } = evaluate(read);
  const [bid] = read.bids;
  const [evaluated] = bids;
  const score = evaluated?.score.criteria[0];
  if (bid === undefined || evaluated === undefined || score === undefined) throw new Error("no bid");
  const { criterion } = score;
  if (criterion.gate.kind === "none") throw new Error("no gate");
  const { figure } = measuredFigure({ ...evaluated, bid, area }, criterion);
  return {
    value: score.value?.likely ?? null,
    figure: formatFigure(figure, "us"),
    gate: gateInWords(criterion.gate, criterion.measure, "us"),
    margin: marginInWords(score, figure, "us"),
    because: score.because,
  };
}

describe("money that criteria judge", () => {
  // 0.9701 $/ft² of the reference, 2.2, on anchors 1.75 and 0.75 is worth 0.7799 (3.8); in euros it is the same
  test("is read and told in the currency of the project", () =>
    expect(shownOf(project("EUR", "€1.75/ft²", "0.75 EUR/ft²", "€1.20/ft²"))).toEqual({
      value: expect.closeTo(0.7799, 4),
      figure: "€0.97/ft²",
      gate: "at most €1.20/ft²",
      margin: "€0.23/ft² below the limit",
      because: null,
    }));

  test("written with a bare dollar sign is the money of the project, as it was before", () =>
    expect(shownOf(project("EUR", "$1.75/ft²", "$0.75/ft²", "$1.20/ft²"))).toMatchObject({
      value: expect.closeTo(0.7799, 4),
      gate: "at most €1.20/ft²",
    }));

  test("written in another currency judges nothing, and says why", () => {
    const { value, because } = shownOf(project("EUR", "£1.75/ft²", "£0.75/ft²", "€1.20/ft²"));
    expect(value).toBeNull();
    expect(because).toEqual({
      kind: "missing-input",
      what: "limits and anchors in euros: one is written as “£1.75/ft²”",
    });
  });

  test("is no currency of what is not money", () => {
    const [impact] = criteriaOf(projectFileSchema.parse(workedProject));
    expect(impact?.measure).not.toHaveProperty("currency");
  });
});
