import { describe, expect, test } from "vitest";
import type { ClaimInput } from "#lib/claim";
import {
  evaluate,
  measuredFigure,
  measures,
  type Project,
  projectFileSchema,
  startingBid,
  startingProject,
} from "#lib/evaluation";
import { explainShortfall, formatFigure } from "#lib/figure";
import { plainDate } from "#lib/quantity";

/** A field of 80,000 ft² and one bid with these claims. */
function projectWith(claims: readonly Partial<ClaimInput>[]): Project {
  const starting = startingProject({ name: "Conversions", owner: "A district", baseDate: plainDate("2026-11-25") });
  const rows = claims.map((claim, index) => ({ id: `c-${index}`, property: "", evidence: "own-test", ...claim }));
  return projectFileSchema.parse({
    ...starting,
    brief: { ...starting.brief, field: { kind: "rectangle", length: "400 ft", width: "200 ft" } },
    bids: [{ ...startingBid("A", "First bidder"), id: "a", claims: rows }],
  });
}

function shown(claims: readonly Partial<ClaimInput>[], measure: string) {
  const project = projectWith(claims);
  const evaluation = evaluate(project);
  const [bid, evaluated] = [project.bids[0], evaluation.bids[0]];
  if (bid === undefined || evaluated === undefined) throw new Error("one bid");
  const judged = measures.find(({ id }) => id === measure);
  if (judged === undefined) throw new Error(`no measure ${measure}`);
  return measuredFigure({ ...evaluated, bid, area: evaluation.area }, { id: "judged", measure: judged });
}

describe("a claimed figure that follows from another claim", () => {
  test("comes with its working and the claims it rests on", () => {
    const peak = { property: "surface-temperature-peak", figure: "93 °C", method: "surface-thermometer" };
    const air = {
      property: "heat-air-temperature",
      figure: "37 °C",
      method: "surface-thermometer",
      evidence: "stated",
    };
    const { figure, evidence } = shown([peak, air], "surface-temperature-rise.surface-thermometer");
    // Penn State University: infill turf at 93 °C in air of 37 °C, which is 56 K warmer
    expect(formatFigure(figure, "metric")).toBe("56 K");
    expect(evidence).toBe("stated");
    if (figure.kind === "unknown") throw new Error("known");
    expect(figure.working).toMatchObject({
      formula: "rise = peak − temperature of the air",
      inputs: [{ from: { kind: "claim", claim: "c-0" } }, { from: { kind: "claim", claim: "c-1" } }],
      source: "derived",
    });
  });

  test("says which input is missing", () => {
    const { figure } = shown(
      [{ property: "surface-temperature-peak", figure: "93 °C", method: "surface-thermometer" }],
      "surface-temperature-rise.surface-thermometer",
    );
    if (figure.kind !== "unknown") throw new Error("unknown");
    expect(explainShortfall(figure.because)).toBe(
      "This figure needs the air temperature of the heat reading, to get surface temperature rise from peak surface temperature.",
    );
  });

  test("gives way to a figure that the bid claims itself", () => {
    const mass = { property: "infill-total-mass", figure: "240 short tons", method: "infill-weigh-tickets" };
    const own = { property: "infill-total-areal-density", figure: "5 lb/ft²", method: "infill-weigh-tickets" };
    const measure = "infill-total-areal-density.infill-weigh-tickets";
    // 240 short tons of 2000 lb over 80,000 ft² are 6 lb/ft²
    expect(formatFigure(shown([mass], measure).figure, "us")).toBe("6.00 lb/ft²");
    expect(formatFigure(shown([mass, own], measure).figure, "us")).toBe("5.00 lb/ft²");
  });

  test("is not made where the bid gives the property by an unlike method", () => {
    const { figure } = shown(
      [{ property: "g-max", figure: "90 g", method: "f1702-clegg", condition: "new" }],
      "g-max.f355-a",
    );
    expect(figure).toMatchObject({ kind: "unknown", because: { kind: "not-comparable" } });
  });
});
