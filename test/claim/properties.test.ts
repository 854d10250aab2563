import { describe, expect, test } from "vitest";
import {
  familyOf,
  formatClaimed,
  inSentence,
  matchProperty,
  properties,
  propertyGroups,
  propertyOf,
  quantityOf,
  testMethods,
} from "#lib/claim";
import { dimensions } from "#lib/quantity";
import { claimed } from "./bid-claims";

const ids = properties.map(({ id }) => id);
const required =
  "pile-height pile-mass carpet-total-mass yarn-linear-density gauge stitch-rate tuft-bind shock-layer shock-layer-thickness shock-layer-density shock-layer-lives g-max head-injury-criterion critical-fall-height shock-absorption vertical-deformation energy-restitution rotational-resistance abrasiveness-index ball-rebound ball-roll system-infiltration carpet-infiltration surface-temperature-rise conditioning-cycles lead-content pfas-statement pah-sum recycled-share end-of-life-route infill-total-areal-density infill-total-mass infill-depth free-pile-height infill-migration warranty-years warranty-hardness-limit warranty-hours-limit warranty-insurance warranty-terms reference-fields maintenance-hours carpet-life price-per-area-stated".split(
    " ",
  );

/** What an owner needs answers to, subject by subject. */
const asked = {
  carpet:
    "pile-height pile-mass carpet-total-mass yarn-linear-density fibre-thickness filament-shape gauge stitch-rate tuft-bind tear-strength backing-kind seam-method seam-strength",
  infill: "infill-top-up infill-top-up-mass infill-depth infill-placing",
  "shock-layer":
    "shock-layer-thickness shock-layer-density shock-layer-force-reduction shock-layer-lives shock-layer-compression-set shock-layer-infiltration",
  impact: "g-max g-max-highest-point head-injury-criterion hic-drop-height critical-fall-height",
  player:
    "shock-absorption vertical-deformation energy-restitution rotational-resistance linear-traction abrasiveness-index",
  ball: "ball-rebound ball-rebound-share angled-ball-rebound ball-roll",
  water: "system-infiltration carpet-infiltration infill-flotation infill-splash",
  heat: "surface-temperature-rise surface-temperature-peak heat-air-temperature",
  wear: "conditioning-cycles weathered-strength uv-exposure pile-height-kept",
  health:
    "lead-content cadmium-content zinc-content metals-limits pah-sum pfas-statement microplastic-containment recycled-share end-of-life-route",
  warranty:
    "warranty-years warranty-hardness-limit warranty-remedy warranty-exclusions warranty-insurance warranty-hours-limit",
  references: "reference-fields oldest-reference-field reference-addresses",
  delivery: "lead-time installation-time base-flatness",
  maintenance: "maintenance-hours maintenance-duties grooming-interval",
};

describe("the catalogue of properties", () => {
  test.each(Object.entries(asked))("answers what an owner asks about %s", (_, named) => {
    expect(ids).toEqual(expect.arrayContaining(named.split(" ")));
  });

  test("shows carpet masses in the units of the carpet trade", () => {
    const pile = claimed({ property: "pile-mass", figure: "1490 g/m²" });
    const quantity = quantityOf(pile, "pile-mass");
    if (quantity === null) throw new Error("no figure");
    // NIST SP 811: 1 oz = 28.349523125 g and 1 yd² = 0.83612736 m², so 1490 g/m² is 43.95 oz/yd²
    expect(formatClaimed("pile-mass", quantity, "us")).toBe("43.9 oz/yd²");
    expect(formatClaimed("pile-mass", quantity, "metric")).toBe("1,490 g/m²");
    expect(formatClaimed("infill-total-areal-density", quantity, "metric")).toBe("1.5 kg/m²");
  });

  test.each([
    ["stitch-rate", "4", "4 stitches/in"],
    ["infill-top-up", "0.2 lb/ft²", "0.2 lb/ft² per year"],
  ] as const)("reads a stored %s of “%s” as “%s”", (property, stored, full) => {
    const read = (figure: string) => quantityOf(claimed({ property, figure }), property)?.reading;
    expect(read(stored)).toEqual(read(full));
  });

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
