import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { distanceToEdge, type FieldShape, fieldShapeSchema, isInside } from "#lib/field";
import { explainPlan, type PlanLayoutId, type PlanWish, planLayouts, type TestPlan, testPlan } from "#lib/fieldtest";
import { at } from "./campaigns";

const shape = (typed: unknown): FieldShape => fieldShapeSchema.parse(typed);
const football = shape({ kind: "sport", sport: "us-football", runOff: "10 ft" });
const wish = (layouts: readonly PlanLayoutId[], locations: number): PlanWish => ({
  layouts,
  locations,
  ownersSpots: [],
});
const planned = (field: FieldShape, wanted: PlanWish): TestPlan => {
  const found = testPlan(field, wanted);
  if (!found.ok) throw new Error(explainPlan(found.problem));
  return found.value;
};

const layouts = Object.keys(planLayouts) as PlanLayoutId[];
const shapes: fc.Arbitrary<FieldShape> = fc.oneof(
  fc
    .tuple(fc.integer({ min: 8, max: 140 }), fc.integer({ min: 8, max: 140 }))
    .map(([length, width]) => shape({ kind: "rectangle", length: `${length} m`, width: `${width} m` })),
  // a star around its middle never crosses itself, and its corners lie in and out
  fc
    .tuple(
      fc.array(fc.integer({ min: 15, max: 90 }), { minLength: 3, maxLength: 9 }),
      fc.integer({ min: -200, max: 200 }),
    )
    .map(([radii, off]) =>
      shape({
        kind: "polygon-by-coordinates",
        unit: "m",
        corners: radii.map((radius, index) => {
          const angle = (2 * Math.PI * index) / radii.length;
          return `${(off + radius * Math.cos(angle)).toFixed(2)}, ${(radius * Math.sin(angle) - off).toFixed(2)}`;
        }),
      }),
    ),
  fc.constant(football),
);

describe("testPlan", () => {
  test("places as many locations as asked for, all inside the field and apart", () => {
    fc.assert(
      fc.property(
        shapes,
        fc.subarray(layouts, { minLength: 1 }),
        fc.integer({ min: 1, max: 30 }),
        (field, chosen, locations) => {
          const plan = planned(field, wish(chosen, locations));
          expect(plan.locations).toHaveLength(locations);
          for (const { place } of plan.locations) {
            expect(isInside(plan.outline, place)).toBe(true);
            expect(distanceToEdge(plan.outline, place)).toBeGreaterThan(0.05);
          }
          expect(new Set(plan.locations.map(({ place }) => `${place.x} ${place.y}`)).size).toBe(locations);
          expect(planned(field, wish(chosen, locations))).toEqual(plan);
        },
      ),
      { numRuns: 60 },
    );
  });

  // NFHS marks: end zones of 30 ft, 50-yard line at 180 ft, hash marks 53 ft 4 in from the side lines
  test("stands on the marks of a football field", () => {
    const plan = planned(football, wish(["american-football"], 8));
    const inFeet = plan.locations.map(({ place }) =>
      [place.x / 0.3048, place.y / 0.3048].map((one) => Math.round(one * 10) / 10),
    );
    expect(inFeet.slice(0, 5)).toEqual([
      [180, 80],
      [90, 53.3],
      [270, 106.7],
      [30, 80],
      [330, 80],
    ]);
    expect(plan.locations[0]).toMatchObject({
      id: "location-1",
      label: "50-yard line, between the hash marks",
      kind: "by-the-marks",
      why: "Play starts and turns here; infill is kicked away.",
    });
    expect(plan.notes[0]).toBe(
      "Coordinates are in metres from the corner where an end line meets a side line; x along the length, y across, below zero in the run-off.",
    );
  });

  test("takes turns between the sports of a field for several", () => {
    const plan = planned(football, wish(["american-football", "soccer", "lacrosse"], 9));
    expect(new Set(plan.locations.map(({ zone }) => zone))).toContain("goal-mouth");
    expect(plan.locations.filter(({ zone }) => zone === "centre" || zone === "face-off")).toHaveLength(1);
  });

  test("turns the marks on a field that runs the other way", () => {
    const plan = planned(shape({ kind: "rectangle", length: "70 m", width: "110 m" }), wish(["soccer"], 3));
    const [centre, left, right] = plan.locations.map(({ place }) => place);
    expect([centre?.x, centre?.y]).toEqual([35, 55]);
    expect([left?.x, right?.x]).toEqual([35, 35]);
    expect(Math.abs((left?.y ?? 0) - (right?.y ?? 0))).toBeGreaterThan(95);
  });

  test("adds the owner's spots on top where they are", () => {
    const spots = [{ label: "Seam at the 40-yard line", place: at(45.5, 0.3) }];
    const plan = planned(football, { ...wish(["american-football"], 8), ownersSpots: spots });
    expect(plan.locations.at(-1)).toMatchObject({ id: "location-9", kind: "extra", place: at(45.5, 0.3) });
  });

  test("says what it can't do", () => {
    const problem = (field: FieldShape, wanted: PlanWish) => {
      const found = testPlan(field, wanted);
      return found.ok ? "planned" : explainPlan(found.problem);
    };
    expect(problem(shape({ kind: "measured-area", area: "8000 m²", how: "a survey" }), wish(["soccer"], 8))).toBe(
      "Only the area of the field is known. Describe its shape in the brief, and the locations can be placed on it.",
    );
    expect(problem(football, wish(["soccer"], 1000))).toBe("1,000 locations are asked for; a plan holds at most 400.");
    expect(
      problem(football, { ...wish(["soccer"], 8), ownersSpots: [{ label: "Far drain", place: at(300, 20) }] }),
    ).toBe("“Far drain” lies outside the field. Check its coordinates and the point they are measured from.");
  });
});
