import { describe, expect, test } from "vitest";
import { fieldShapeSchema } from "#lib/field";
import { planAddress, planChoice, planWish } from "../../../app/project/[id]/field-tests/_tests/plan-choice";

const shape = fieldShapeSchema.parse({ kind: "rectangle", length: "100 m", width: "60 m" });
const start = { shape, locations: 10, words: "Football and soccer, school and community." };

describe("planChoice", () => {
  test("starts with the sports that the brief names and the number of the requirements", () =>
    expect(planChoice({}, start)).toEqual({ layouts: ["american-football", "soccer"], locations: "10", spots: "" }));

  test("spreads the locations where the brief names none", () =>
    expect(planChoice({}, { ...start, words: "" }).layouts).toEqual(["evenly-spread"]));

  test("takes what the address asks for and leaves out layouts that are none", () =>
    expect(planChoice({ layouts: ["rugby", "chess"], locations: "12" }, start)).toEqual({
      layouts: ["rugby"],
      locations: "12",
      spots: "",
    }));

  test("comes back from its address", () => {
    const choice = {
      layouts: ["soccer", "rugby"],
      locations: "8",
      spots: "drain, 10 m, 5 m\nseam; 20 m; 5 m",
    } as const;
    const read = new URLSearchParams(planAddress(choice));
    const asked = Object.fromEntries([...read.keys()].map((name) => [name, read.getAll(name)]));
    expect(planChoice(asked, start)).toEqual(choice);
  });
});

describe("planWish", () => {
  const choice = { layouts: ["soccer"], locations: "8", spots: "" } as const;

  test("reads spots with commas or semicolons", () => {
    const wish = planWish({ ...choice, spots: "drain, north, 10 m, 5 m\nseam; 100 ft; 0 ft" });
    expect(wish.ok ? wish.value.ownersSpots : []).toEqual([
      { label: "drain, north", place: { x: 10, y: 5 } },
      { label: "seam", place: { x: expect.closeTo(30.48, 9), y: 0 } },
    ]);
  });

  test("says of each line what does not read", () =>
    expect(planWish({ ...choice, locations: "ten", spots: "drain" })).toEqual({
      ok: false,
      problem: [
        "“ten” is not a number of locations. Expected a whole number, for instance 10.",
        "“drain” does not name a spot and its place. Expected for instance “drain, 100 ft, 5 ft”.",
      ],
    }));
});
