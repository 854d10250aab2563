import { describe, expect, test } from "vitest";
import { comparesBy, properties, propertyOf } from "#lib/claim";

describe("comparesBy", () => {
  test("keeps unlike missiles in groups of their own and names what belongs to the figure", () => {
    const sentences = comparesBy(propertyOf("g-max"));
    expect(sentences).toContain("ASTM F355, missile A and ASTM F1936; ASTM F1702 and Clegg hammer on synthetic turf;");
    expect(sentences).toContain(
      "State with it how old or worn the surface was, whether it was wet or dry and how warm it was.",
    );
  });

  test("says that no test stands behind a promise", () => {
    expect(comparesBy(propertyOf("warranty-years"))).toBe("It compares as stated, since no test stands behind it.");
  });

  test("has whole sentences for every property", () => {
    for (const property of properties) expect(comparesBy(property)).toMatch(/^\p{Lu}.*\.$/u);
  });
});
