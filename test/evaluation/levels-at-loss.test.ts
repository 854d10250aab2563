import { describe, expect, test } from "vitest";
import { evaluate, type ProjectFile, projectFileSchema } from "#lib/evaluation";
import { workedProject } from "./worked-project";

type ClaimText = ProjectFile["bids"][number]["claims"][number];

const claim = (id: string, property: string, figure: string, condition: string, method = "f355-a"): ClaimText => ({
  ...{ id, property, figure, method, condition },
  evidence: "accredited-laboratory",
});

function hardnessOf(...claims: readonly ClaimText[]) {
  const [model] = workedProject.bids;
  if (model === undefined) throw new Error("the worked project has bids");
  const project = projectFileSchema.parse({ ...workedProject, bids: [{ ...model, claims: [...claims] }] });
  const [bid] = evaluate(project).bids;
  if (bid === undefined) throw new Error("one bid is evaluated");
  return bid.hardness;
}

const perInch = (figure: ReturnType<typeof hardnessOf>["ownSensitivity"]) =>
  figure?.kind === "known" ? figure.value * 0.0254 : null;

describe("a bid's own levels at lesser depths", () => {
  // by hand: ln(150 ÷ 120) ÷ 0.5 in = 0.446287 per in
  test("show how it answers to lost depth, in margin and chances alike", () => {
    const found = hardnessOf(
      claim("full", "g-max", "120 g", "new"),
      claim("half", "g-max", "150 g", "new, 0.5 in less infill"),
    );
    expect(perInch(found.ownSensitivity)).toBeCloseTo(0.446287, 6);
    expect(found.sensitivity).toMatchObject({ kind: "applies", basis: "own-levels" });
    expect(found.chances.sensitivity).toMatchObject({
      kind: "applies",
      source: "the bid's own levels at two depths, which show no scatter",
    });
    expect(found.asNew).toMatchObject({ kind: "known", value: 120 });
    expect(found.stated).toHaveLength(1);
    const working = found.ownSensitivity?.kind === "known" ? found.ownSensitivity.working : null;
    expect(working?.inputs.map(({ label, from }) => [label, from.kind === "claim" ? from.claim : ""])).toEqual([
      ["Level at full depth", "full"],
      ["Level with 0.50 in (12.7 mm) lost", "half"],
    ]);
    expect(working?.assumptions.join(" ")).toContain(
      "It holds for losses up to 0.50 in (12.7 mm), the least infill tested",
    );
  });

  test("are held against each other where both give a depth, whatever the full one", () => {
    const found = hardnessOf(
      claim("deep", "g-max", "120 g", "new, infill 1.5 in deep"),
      claim("shallow", "g-max", "150 g", "new, infill 1 in deep"),
    );
    expect(perInch(found.ownSensitivity)).toBeCloseTo(0.446287, 6);
  });

  // by hand: the stated full depth of 1.5 in less 1 in is half an inch again
  test("are held against the full depth where one level is without a depth", () => {
    const levels = [claim("full", "g-max", "120 g", "new"), claim("less", "g-max", "150 g", "new, infill 1 in deep")];
    expect(hardnessOf(...levels).ownSensitivity).toBeNull();
    const depth = claim("depth", "infill-depth", "1.5 in", "new", "not-stated");
    const found = hardnessOf(...levels, depth);
    expect(perInch(found.ownSensitivity)).toBeCloseTo(0.446287, 6);
  });

  test("are none where they stand at one depth or are open on one side", () => {
    expect(hardnessOf(claim("half", "g-max", "150 g", "new, 0.5 in less infill")).ownSensitivity).toBeNull();
    expect(
      hardnessOf(
        claim("full", "g-max", "at most 120 g", "new"),
        claim("half", "g-max", "150 g", "new, 0.5 in less infill"),
      ).ownSensitivity,
    ).toBeNull();
  });
});

describe("levels on named fields", () => {
  const on = (field: string, condition: string, figure: string): ClaimText => ({
    ...claim(`${field}-${condition.replace(" ", "-")}`, "g-max", figure, condition),
    testField: field,
  });
  const levels = [
    on("north", "new", "104 g"),
    on("north", "year 3", "115 g"),
    on("north", "year 6", "121 g"),
    on("south", "new", "116 g"),
    on("south", "year 4", "125 g"),
    on("south", "year 7", "137 g"),
    on("east", "year 2", "112 g"),
    on("east", "year 5", "124 g"),
  ];

  test("carry a line that tells the fields apart, the level as new of each among them", () => {
    const { outlook, asNew } = hardnessOf(...levels);
    if (outlook.kind !== "outlook" || outlook.drift.kind !== "fitted") throw new Error("a line was expected");
    expect(outlook.drift.points).toHaveLength(8);
    expect(outlook.drift.fieldsApart).toMatchObject({ kind: "several-fields", named: 3 });
    expect(asNew).toMatchObject({ value: 116 }); // the less favourable figure stands as the level as new
  });

  test("read as one name whatever the case", () => {
    const { outlook } = hardnessOf(...levels.map((each, at) => ({ ...each, testField: at % 2 ? "North" : "north" })));
    expect(outlook.kind === "outlook" && outlook.drift).toMatchObject({ fieldsApart: { kind: "pooled" } });
  });
});
