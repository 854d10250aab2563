import { scaleLinear } from "d3-scale";
import { describe, expect, test } from "vitest";
import { measured } from "#lib/quantity";
import { sectionLabels } from "../../../app/project/[id]/infill/_components/section-labels";
import type { SectionLayout } from "../../../app/project/[id]/infill/_components/section-layout";

const inch = (value: number) => measured("length", value, "in");
const thickness = { low: inch(1), likely: inch(1), high: inch(1) };
const layout: SectionLayout = {
  bands: [{ kind: "infill", label: "Silica sand", classes: ["mineral"], bottom: 0, top: inch(1), thickness }],
  base: 0,
  surface: inch(1),
  pile: inch(2),
  shallowest: null,
  deepest: null,
};
const y = scaleLinear([0, inch(2)], [200, 0]);

describe("sectionLabels", () => {
  // a pile of 2 in on 200 units: the sand reaches to 1 in, so its middle lies at 150 and that of the free pile at 50
  test("points at the middle of each part and at the tip of the pile", () =>
    expect(sectionLabels({ layout, freePile: "1.00 in" }, y, "us")).toEqual([
      { at: 150, what: "Silica sand", amount: "1.00 in", strong: false },
      { at: 0, what: "pile", amount: "2.00 in", strong: false },
      { at: 50, what: "free pile", amount: "1.00 in", strong: true },
    ]));

  test("says “at least” where a layer may be thicker than is known", () => {
    const open = {
      ...layout,
      bands: layout.bands.map((band) => ({ ...band, thickness: { ...thickness, high: null } })),
    };
    expect(sectionLabels({ layout: open, freePile: null }, y, "us")[0]?.amount).toBe("at least 1.00 in");
  });

  test("names no free pile where the infill buries it, and no pile where none is stated", () => {
    const words = (drawn: SectionLayout) =>
      sectionLabels({ layout: drawn, freePile: "0 in" }, y, "us").map(({ what }) => what);
    expect(words({ ...layout, surface: inch(2.5) })).toEqual(["Silica sand", "pile"]);
    expect(words({ ...layout, pile: null })).toEqual(["Silica sand"]);
  });
});
