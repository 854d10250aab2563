import { describe, expect, test } from "vitest";
import type { CrossSection, Thickness } from "#lib/infill";
import { measured } from "#lib/quantity";
import { sectionExtent, sectionLayout } from "../../../app/project/[id]/infill/_components/section-layout";

const mm = (value: number) => measured("length", value, "mm");
const thick = (likely: number, low = likely, high = likely): Thickness => ({
  low: mm(low),
  likely: mm(likely),
  high: mm(high),
});

const overShockLayer: CrossSection = {
  layers: [
    { kind: "shock-layer", label: "Shock layer", components: [], thickness: thick(20) },
    { kind: "infill", label: "Silica sand, rounded", components: ["sand"], thickness: thick(10) },
    { kind: "infill", label: "Cork", components: ["cork"], thickness: thick(8, 6, 12) },
  ],
  pileHeight: thick(40),
};

const classes = { sand: "mineral", cork: "organic", rubber: "polymer" } as const;
const classOf = (component: string) => (component in classes ? classes[component as keyof typeof classes] : undefined);

const heights = (section: CrossSection) =>
  sectionLayout(section, null, classOf).bands.map(({ bottom, top }) => [
    Math.round(bottom * 1e4) / 10,
    Math.round(top * 1e4) / 10,
  ]);

describe("sectionLayout", () => {
  test("hangs the shock layer below the backing and stacks the infill on it", () => {
    expect(heights(overShockLayer)).toEqual([
      [-20, 0],
      [0, 10],
      [10, 18],
    ]);
  });

  test("stands the infill on the backing where nothing lies under it", () => {
    expect(heights({ ...overShockLayer, layers: overShockLayer.layers.slice(1) })).toEqual([
      [0, 10],
      [10, 18],
    ]);
  });

  test("names what each band is made of, every class of a mix once", () => {
    const mixed: CrossSection = {
      layers: [{ kind: "infill", label: "mix", components: ["sand", "rubber", "sand"], thickness: thick(20) }],
      pileHeight: null,
    };
    expect(sectionLayout(mixed, null, classOf).bands.map((band) => band.classes)).toEqual([["mineral", "polymer"]]);
    expect(sectionLayout(overShockLayer, null, classOf).bands.map((band) => band.classes)).toEqual([
      [],
      ["mineral"],
      ["organic"],
    ]);
  });

  test("marks the range of the depth where there is one, and only the sides that are known", () => {
    const depth = (low: number, high: number) => {
      const { shallowest, deepest } = sectionLayout(
        overShockLayer,
        { low: measured("length", low), high: measured("length", high) },
        classOf,
      );
      return [shallowest, deepest];
    };
    expect(depth(0.016, 0.022)).toEqual([0.016, 0.022]);
    expect(depth(0.018, 0.018)).toEqual([null, null]);
    expect(depth(0.016, Number.POSITIVE_INFINITY)).toEqual([0.016, null]);
  });

  test("has no pile where the bid states none", () => {
    expect(sectionLayout({ ...overShockLayer, pileHeight: null }, null, classOf).pile).toBeNull();
  });
});

describe("sectionExtent", () => {
  test("reaches from the lowest base to the highest pile, infill or depth", () => {
    const layout = sectionLayout(overShockLayer, null, classOf);
    const deep = sectionLayout(overShockLayer, { low: mm(30), high: mm(55) }, classOf);
    expect(sectionExtent([layout])).toEqual({ lowest: -0.02, highest: 0.04 });
    expect(sectionExtent([layout, deep]).highest).toBeCloseTo(0.055, 12);
  });

  test("is nothing for no bids", () => {
    expect(sectionExtent([])).toEqual({ lowest: 0, highest: 0 });
  });
});
