import { describe, expect, test } from "vitest";
import { ownMaterialSchema } from "#lib/material";

const typed = {
  id: "own-premix",
  label: "Premixed sand and rubber",
  class: "blend",
  mineralShare: "60–70 %",
  bulkDensity: "60–70 lb/ft³",
  particleDensity: "1700–2000 kg/m³",
  inWater: "sinks",
  usualGrain: "",
  notes: "",
  source: "Data sheet of the district's stock",
};

const sentences = (changes: Partial<typeof typed>) =>
  ownMaterialSchema
    .safeParse({ ...typed, ...changes })
    .error?.issues.map(({ path, message }) => `${path.join(".")}: ${message}`);

describe("ownMaterialSchema", () => {
  test("gives a material of the shape of the catalogue", () => {
    const material = ownMaterialSchema.parse(typed);
    // 60 lb/ft³ is 961.108 kg/m³ and 70 lb/ft³ 1121.292 kg/m³ (NIST SP 811: 1 lb/ft³ = 16.01846 kg/m³)
    expect(material.bulkDensity.low).toBeCloseTo(961.108, 2);
    expect(material.bulkDensity.high).toBeCloseTo(1121.292, 2);
    expect(material.bulkDensity.source).toBe("Data sheet of the district's stock");
    expect(material.mineralShare).toEqual({ low: expect.closeTo(0.6, 12), high: expect.closeTo(0.7, 12) });
    expect(material.usualGrain).toBeNull();
  });

  test("counts mineral material as all mineral and other material as none", () => {
    expect(ownMaterialSchema.parse({ ...typed, class: "mineral", mineralShare: "" }).mineralShare).toEqual({
      low: 1,
      high: 1,
    });
    expect(ownMaterialSchema.parse({ ...typed, class: "polymer", mineralShare: "" }).mineralShare).toEqual({
      low: 0,
      high: 0,
    });
  });

  test("keeps a grain size", () => {
    expect(ownMaterialSchema.parse({ ...typed, usualGrain: "0.5–2 mm" }).usualGrain).toMatchObject({
      low: 0.0005,
      high: 0.002,
      mesh: "as millimetres",
    });
  });

  test.each([
    [{ id: "premix" }, "id: Start the id with “own-”, then small letters, digits, hyphens."],
    [{ label: " " }, "label: Name the material."],
    [{ source: "" }, "source: Say where the figures come from: a data sheet, a laboratory report, common practice."],
    [{ mineralShare: "" }, "mineralShare: Give the mineral share of the blend's mass, like “60–70 %”."],
    [
      { class: "polymer" },
      "mineralShare: Only a blend has a mineral share. Leave this empty, or call the material a blend.",
    ],
    [
      { mineralShare: "at least 60 %" },
      "mineralShare: “at least 60 %” is not a share from 0 % to 100 %. Give a figure or a range, like “60–70 %”.",
    ],
    [
      { bulkDensity: "at least 60 lb/ft³" },
      "bulkDensity: “at least 60 lb/ft³” leaves the loose density open. Give a figure above 0 or a range, like “450–520 kg/m³”.",
    ],
    [
      { bulkDensity: "2100 kg/m³" },
      "bulkDensity: A bed holds voids, so the loose density (2100 kg/m³) has to be below the particle density (1700–2000 kg/m³).",
    ],
    [
      { inWater: "floats" },
      "inWater: A particle density of 1700–2000 kg/m³ does not go with “floats”: fresh water has 998 kg/m³.",
    ],
  ])("refuses %j and says why", (changes, sentence) => {
    expect(sentences(changes)).toEqual([sentence]);
  });

  test("keeps the sentence about a share that does not read", () => {
    expect(sentences({ mineralShare: "most of it" })?.[0]).toMatch(
      /^mineralShare: .*Expected share, for instance in %/,
    );
  });
});
