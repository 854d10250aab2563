import { expect, test } from "vitest";
import { projectFileSchema, propertyYears } from "#lib/evaluation";
import { statedValues } from "../../../app/project/[id]/hardness/_components/stated-values";
import { workedProject } from "../../evaluation/worked-project";

/** What stands for a bid with these figures of shock absorption, each with its condition. */
function shownFor(...figures: readonly (readonly [figure: string, condition: string])[]) {
  const [model] = workedProject.bids;
  if (model === undefined) throw new Error("the worked project has bids");
  const claims = figures.map(([figure, condition], index) => ({
    ...{ id: `claim-${index}`, property: "shock-absorption", figure, method: "f3189", condition },
    evidence: "stated",
  }));
  const [years] = propertyYears(projectFileSchema.parse({ ...workedProject, bids: [{ ...model, claims }] }));
  const outlook = years?.bids[0]?.outlook;
  if (years === undefined || outlook?.kind !== "outlook") throw new Error("expected an outlook");
  return statedValues(outlook, years.property, "us");
}

test("a figure of later years is never shown as one of a new surface", () => {
  expect(shownFor(["60 %", "year 6"])).toEqual({ asNew: "", later: "60 % in year 6" });
  expect(shownFor(["66 %", "new"], ["60 %", "year 6"])).toEqual({ asNew: "66 %", later: "60 % in year 6" });
});

test("several figures for one age stand side by side, a bound as a bound", () => {
  expect(shownFor(["64 %", "new"], ["66 %", "new"])).toEqual({ asNew: "64 %; 66 %", later: "" });
  expect(shownFor(["at least 60 %", "new"])).toEqual({ asNew: "at least 60 %", later: "" });
});
