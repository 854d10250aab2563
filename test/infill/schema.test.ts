import { describe, expect, test } from "vitest";
import { z } from "zod";
import { infillComponentShape, infillSystemOf, infillSystemSchema } from "#lib/infill";

const sand = { id: "sand", material: "silica-sand", arealDensity: "6 lb/ft²", bulkDensity: "" };
const sentences = (components: readonly unknown[]) =>
  infillSystemSchema
    .safeParse({ placement: "layered", components })
    .error?.issues.map(({ path, message }) => `${path.join(".")}: ${message}`);

describe("infillSystemSchema", () => {
  test("keeps what was typed and knows an empty loose density as not stated", () => {
    const { components } = infillSystemSchema.parse({ placement: "blended", components: [sand] });
    expect(components[0]?.arealDensity.asEntered).toBe("6 lb/ft²");
    expect(components[0]?.bulkDensity).toBeNull();
  });

  test("reads particle size and shape, and a component stored before they were kept", () => {
    const described = { ...sand, id: "described", particleSize: "20–40 mesh", shape: "Sub-rounded" };
    const { components } = infillSystemSchema.parse({ placement: "layered", components: [sand, described] });
    expect(components.map(({ particleSize, shape }) => [particleSize?.text ?? null, shape])).toEqual([
      [null, "not-stated"],
      ["20–40 mesh", "sub-rounded"],
    ]);
  });

  test("accepts a bid that states no infill", () => {
    expect(infillSystemSchema.safeParse({ placement: "layered", components: [] }).success).toBe(true);
  });

  test.each([
    [[sand, sand], "components.1.id: Two components have the id “sand”."],
    [[{ ...sand, material: "" }], "components.0.material: Choose the material."],
    [[{ ...sand, arealDensity: "0 lb/ft²" }], "components.0.arealDensity: Give a figure above 0, like “3 lb/ft²”."],
    [
      [{ ...sand, bulkDensity: "30 bananas" }],
      "components.0.bulkDensity: The unit “bananas” is not known here. Expected density, for instance in lb/ft³, kg/m³ or g/cm³.",
    ],
    [
      [{ ...sand, particleSize: "20-40" }],
      "components.0.particleSize: “20-40” does not say whether sieves or millimetres are meant. Expected “20–40 mesh” or “0.425–0.85 mm”.",
    ],
    [
      [{ ...sand, shape: "square" }],
      "components.0.shape: “square” is not a shape of grains. Expected one of “Not stated”, “Rounded”, “Sub-rounded”, “Sub-angular”, “Angular”.",
    ],
  ])("refuses %j and says why", (components, sentence) => expect(sentences(components)).toEqual([sentence]));

  test("takes components with further fields", () => {
    const withPage = infillSystemOf(infillComponentShape.extend({ page: z.string() }));
    const parsed = withPage.parse({ placement: "layered", components: [{ ...sand, page: "12" }] });
    expect(parsed.components[0]?.page).toBe("12");
  });
});
