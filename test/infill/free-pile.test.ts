import { describe, expect, test } from "vitest";
import { fillRatio, freePile, infillDepth } from "#lib/infill";
import { component, ends, reading, system } from "./build";

const pile = (text: string) =>
  ({ reading: reading("length", text), from: { kind: "claim", bid: "bid-a", claim: "pile" } }) as const;
const depth = infillDepth(system("layered", component("silica-sand", "30–32 kg/m²", "1600 kg/m³"))); // 18.75–20 mm

describe("freePile", () => {
  test("is shortest for the lowest pile and the deepest infill", () => {
    const { low, high } = ends(freePile(pile("40–45 mm"), depth));
    expect([low, high]).toEqual([expect.closeTo(0.02, 9), expect.closeTo(0.02625, 9)]);
  });

  test("is reported below 0 where the infill buries the pile", () => {
    const { low, high } = ends(freePile(pile("15 mm"), depth));
    expect([low, high]).toEqual([expect.closeTo(-0.005, 9), expect.closeTo(-0.00375, 9)]);
  });

  test("shows the pile height and where it was claimed", () => {
    const free = freePile(pile("40 mm"), depth);
    expect(free.kind === "range" && free.working.inputs[0]).toEqual({
      label: "pile height",
      text: "1.57 in (40.0 mm)",
      from: { kind: "claim", bid: "bid-a", claim: "pile" },
    });
  });

  test("is unknown where the infill depth is", () => {
    expect(freePile(pile("40 mm"), infillDepth(system("layered"))).kind).toBe("unknown");
  });
});

describe("fillRatio", () => {
  test("is largest for the lowest pile and the deepest infill", () => {
    const { low, high } = ends(fillRatio(pile("40–50 mm"), depth));
    expect([low, high]).toEqual([expect.closeTo(0.375, 9), expect.closeTo(0.5, 9)]);
  });

  test("needs a pile", () => {
    expect(fillRatio(pile("0 mm"), depth)).toMatchObject({
      because: { kind: "missing-input", what: "a pile height above 0" },
    });
  });
});
