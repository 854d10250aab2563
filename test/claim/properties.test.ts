import { describe, expect, test } from "vitest";
import { familyOf, inSentence, matchProperty, properties, propertyGroups, propertyOf, testMethods } from "#lib/claim";
import { dimensions } from "#lib/quantity";

const ids = properties.map(({ id }) => id);
const required =
  "pile-height pile-mass carpet-total-mass yarn-linear-density gauge stitch-rate tuft-bind shock-layer shock-layer-thickness shock-layer-density shock-layer-lives g-max head-injury-criterion critical-fall-height shock-absorption vertical-deformation energy-restitution rotational-resistance abrasiveness-index ball-rebound ball-roll system-infiltration carpet-infiltration surface-temperature-rise conditioning-cycles lead-content pfas-statement pah-sum recycled-share end-of-life-route infill-total-areal-density infill-total-mass infill-depth free-pile-height infill-migration warranty-years warranty-hardness-limit warranty-hours-limit warranty-insurance warranty-terms reference-fields maintenance-hours carpet-life price-per-area-stated".split(
    " ",
  );

describe("the catalogue of properties", () => {
  test("holds what bids for a field are asked for", () => expect(ids).toEqual(expect.arrayContaining(required)));

  test("names every property once, by id and by label", () => {
    const labels = properties.map(({ label }) => label.toLowerCase());
    expect(new Set(ids).size).toBe(ids.length);
    expect(new Set(labels).size).toBe(labels.length);
  });

  test("uses every group", () => {
    expect(new Set(properties.map(({ group }) => group))).toEqual(new Set(propertyGroups.map(({ id }) => id)));
  });

  describe.each(properties)("$id", (property) => {
    test("is written in whole words and sentences", () => {
      expect(property.id).toMatch(/^[a-z][a-z0-9-]*[a-z0-9]$/);
      expect(property.label).toMatch(/^\p{Lu}[^.?!]*$/u);
      expect(property.question).toMatch(/^\p{Lu}[^.!?]*\?$/u);
      expect(property.why).toMatch(/^\p{Lu}.{20,}\.$/u);
    });

    test("is found by its label in any case", () => {
      expect(matchProperty(property.label.toUpperCase())).toBe(property.id);
      expect(propertyOf(property.id)).toBe(property);
    });

    test("rests on methods of the register, each named once", () => {
      const known = testMethods.map(({ id }) => id);
      expect(known).toEqual(expect.arrayContaining([...property.methods]));
      expect(new Set(property.methods).size).toBe(property.methods.length);
    });
  });

  test.each(properties.flatMap((property) => (property.kind === "quantity" ? [property] : [])))(
    "$id has a plausible band with a source",
    ({ dimension, plausible }) => {
      expect(dimensions).toHaveProperty(dimension);
      if (plausible === null) return;
      expect(plausible.low).toBeLessThan(plausible.high);
      expect(plausible.low).toBeGreaterThanOrEqual(0);
      expect(plausible.source).not.toBe("");
    },
  );

  test.each(properties.flatMap((property) => (property.kind === "choice" ? [property] : [])))(
    "$id offers at least two different answers",
    ({ choices }) => {
      expect(choices.length).toBeGreaterThan(1);
      expect(new Set(choices.map(({ id }) => id)).size).toBe(choices.length);
      expect(new Set(choices.map(({ label }) => label)).size).toBe(choices.length);
    },
  );
});

describe("the register of test methods", () => {
  test("names every method once, by id and by designation", () => {
    expect(new Set(testMethods.map(({ id }) => id)).size).toBe(testMethods.length);
    expect(new Set(testMethods.map(({ designation }) => designation)).size).toBe(testMethods.length);
  });

  test.each(testMethods)("$id says what it does, where that comes from and for which property it stands", (method) => {
    expect(method.does).toMatch(/^\p{Lu}.{20,}\.$/u);
    expect(method.source).not.toBe("");
    expect(properties.some(({ methods }) => methods.includes(method.id))).toBe(true);
    const { facts } = familyOf(method.measuresLike);
    expect(facts.length).toBeGreaterThan(0);
    for (const { text, source } of facts) {
      expect(text).toMatch(/^\p{Lu}.*\.$/u);
      expect(source).not.toBe("");
    }
  });
});

describe("inSentence", () => {
  test.each([
    ["Pile height", "pile height"],
    ["G-max", "G-max"],
    ["PFAS statement", "PFAS statement"],
  ])("writes “%s” as “%s”", (label, phrase) => expect(inSentence(label)).toBe(phrase));
});
