import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { z } from "zod";
import { claimSchema, properties, provenanceShape } from "#lib/claim";
import { anyText } from "./bid-claims";

const told = (input: unknown): readonly string[] => {
  const parsed = claimSchema.safeParse(input);
  return parsed.success ? [] : parsed.error.issues.map(({ path, message }) => `${path.join(".")}: ${message}`);
};
const base = { id: "c-1", evidence: "stated" };

describe("claimSchema", () => {
  test("reads a claim as typed into figure, method, condition and evidence", () => {
    const typed = {
      id: "c-1",
      property: "Pile height",
      figure: "2-1/4 in",
      method: "ASTM D5823",
      condition: "new",
      evidence: "Accredited laboratory",
      document: "Product data sheet",
      page: "2",
      words: "Pile height: 2-1/4 in",
      note: "",
    };
    expect(claimSchema.parse(typed)).toMatchObject({
      property: "pile-height",
      method: "d5823",
      condition: { age: { kind: "new" }, moisture: "not-stated", temperature: null, infill: null },
      evidence: "accredited-laboratory",
      document: "Product data sheet",
      value: { kind: "quantity", quantity: { asEntered: "2-1/4 in", dimension: "length", unit: "in" } },
    });
  });

  test("takes what is left out as not stated, never as something better", () => {
    expect(claimSchema.parse({ ...base, property: "g-max", figure: "95 g" })).toMatchObject({
      method: "not-stated",
      condition: { age: { kind: "not-stated" }, moisture: "not-stated", temperature: null, infill: null },
      document: "",
      page: "",
      words: "",
    });
  });

  test("reads a claim that was stored before report details were kept", () => {
    const stored = { property: "g-max", figure: "95 g", method: "f1936", condition: "new", document: "", page: "" };
    expect(claimSchema.parse({ ...base, ...stored, words: "", note: "" })).toMatchObject({
      edition: { text: "", year: null },
      date: null,
      laboratory: "",
      accreditation: "not-stated",
      build: "not-stated",
    });
  });

  test("reads the details of a report", () => {
    const report = { edition: "F1936-19", date: "May 2024", laboratory: "County test house", accreditation: "yes" };
    expect(
      claimSchema.parse({ ...base, property: "g-max", figure: "95 g", ...report, build: "Another build" }),
    ).toMatchObject({
      edition: { text: "F1936-19", year: 2019 },
      date: { text: "May 2024", earliest: "2024-05-01", latest: "2024-05-31" },
      laboratory: "County test house",
      accreditation: "accredited",
      build: "other-build",
    });
  });

  test("reads a claim that was stored before fields were named", () =>
    expect(claimSchema.parse({ ...base, property: "g-max", figure: "95 g" })).toMatchObject({
      testField: "",
      fieldCount: null,
      spread: null,
    }));

  test.each([
    ["4", 4],
    ["4 fields", 4],
    ["1 field", 1],
    ["", null],
  ])("reads “%s” as the number of fields", (fieldCount, count) =>
    expect(
      claimSchema.parse({ ...base, property: "g-max", figure: "95 g", testField: " North ", fieldCount }),
    ).toMatchObject({ testField: "North", fieldCount: count }),
  );

  test("keeps a claim in words only", () => {
    const parsed = claimSchema.parse({ ...base, property: "g-max", words: "Meets all requirements." });
    expect(parsed.value).toEqual({ kind: "words", words: "Meets all requirements." });
  });

  test("reads a choice by id or label", () => {
    for (const figure of ["expanded-bead", "Expanded bead panels"]) {
      const parsed = claimSchema.parse({ ...base, property: "shock-layer", figure });
      expect(parsed.value).toEqual({ kind: "choice", choice: "expanded-bead" });
    }
  });

  test("names every field in the way of a claim at once", () => {
    const problems = told({
      id: "C 1",
      property: "pile-height",
      figure: "3 lb/ft²",
      method: "F355",
      condition: "year 1,5",
      evidence: "best",
    });
    expect(problems.map((problem) => problem.split(":")[0])).toEqual([
      "id",
      "method",
      "condition",
      "evidence",
      "figure",
    ]);
  });

  test.each([
    [
      { ...base, property: "Pile hight", figure: "2 in" },
      "property: “Pile hight” is not a property in the catalogue. Did you mean Pile height, Free pile height or Pile height kept after wear?",
    ],
    [
      { ...base, property: "zzz", figure: "2 in" },
      "property: “zzz” is not a property in the catalogue. Choose one of the list, for instance “Pile height”.",
    ],
    [{ ...base, property: " ", figure: "2 in" }, "property: Name the property, for instance “Pile height”."],
    [
      { ...base, property: "g-max", figure: "95 g", method: "F355" },
      "method: “F355” is not a test method in the register. Did you mean ASTM F355, missile A or ASTM F355, missile E? If the bid names no more than this, write “not stated” and keep its words.",
    ],
    [
      { ...base, property: "g-max", figure: "95 g", evidence: "certified" },
      "evidence: “certified” is not a level of evidence. Expected “Stated”, “Own test”, “Accredited laboratory”, “Field-tested” or “Guaranteed”.",
    ],
    [
      { ...base, property: "shock-layer", figure: "foam" },
      "figure: “foam” is not one of the answers for shock layer kind. Expected one of “None”, “Prefabricated foam”, “Expanded bead panels”, “Bound rubber laid in place”, “Other”.",
    ],
    [
      { ...base, property: "pile-height" },
      "figure: Nothing is written for pile height. Enter the figure, or the bid's own words where it gives no figure.",
    ],
    [
      { ...base, property: "pile-height", figure: "2 in", id: "C 1" },
      "id: Expected an id of lower-case letters, digits and hyphens, for instance “pile-height-1”.",
    ],
    [{ ...base, property: "pile-height", figure: "2 in", page: 3 }, "page: Expected a page as text."],
    [
      { ...base, property: "pile-height", figure: "2 in", words: "w".repeat(20_001) },
      "words: Expected the bid's words of at most 20,000 characters.",
    ],
    [
      { ...base, property: "pile-height", figure: "2 in", brand: "x" },
      ": A claim has no field “brand”. Expected id, property, figure, method, condition, evidence, document, page, words, note, edition, date, laboratory, accreditation, build, testField, fieldCount, spread.",
    ],
    [
      { ...base, property: "g-max", figure: "95 g", fieldCount: "some" },
      "fieldCount: “some” was not read as a number of fields. Expected a whole number from 1 to 1000, “4”.",
    ],
    [
      { ...base, property: "g-max", figure: "95 g", fieldCount: "0" },
      "fieldCount: “0” was not read as a number of fields. Expected a whole number from 1 to 1000, “4”.",
    ],
    [
      { ...base, property: "pile-height", figure: "2 in", accreditation: "perhaps" },
      "accreditation: “perhaps” was not read as the accreditation. Expected “Not stated”, “Accredited for the method” or “Not accredited for the method”.",
    ],
    ["text", ": Expected a claim with its fields."],
  ])("explains %#", (input, sentence) => expect(told(input)).toEqual([sentence]));

  test("refuses a figure in the dimension of another property", () => {
    for (const property of properties) {
      if (property.kind !== "quantity") continue;
      const foreign = property.dimension === "torque" ? "3 lb/ft²" : "30 N·m";
      expect(told({ ...base, property: property.id, figure: foreign })).toEqual([
        expect.stringMatching(/^figure: .*\.$/),
      ]);
    }
  });

  test("never throws, whatever is typed", () => {
    const property = fc.oneof(anyText, fc.constantFrom(...properties.map(({ id }) => id)));
    fc.assert(
      fc.property(
        fc.record({ id: anyText, property, figure: anyText, method: anyText, condition: anyText, evidence: anyText }),
        (typed) => {
          expect(typeof claimSchema.safeParse(typed).success).toBe("boolean");
        },
      ),
    );
  });

  test("has a published shape for the file", () => {
    const published = z.toJSONSchema(claimSchema, { io: "input" });
    expect(published.required).toEqual(["id", "property", "evidence"]);
    expect(Object.keys(published.properties ?? {})).toEqual([
      "id",
      "property",
      "figure",
      "method",
      "condition",
      "evidence",
      "document",
      "page",
      "words",
      "date",
      "laboratory",
      "accreditation",
      "build",
      "note",
      "edition",
      "testField",
      "fieldCount",
      "spread",
    ]);
    expect(published.properties?.condition).toMatchObject({ type: "string", default: "not stated" });
  });
});

describe("provenanceShape", () => {
  test("serves other objects that are claimed", () => {
    const component = z.strictObject({ material: z.string(), ...provenanceShape });
    expect(component.parse({ material: "silica-sand", evidence: "Own test", document: "Data sheet" })).toEqual({
      material: "silica-sand",
      evidence: "own-test",
      document: "Data sheet",
      page: "",
      words: "",
      date: null,
      laboratory: "",
      accreditation: "not-stated",
      build: "not-stated",
    });
  });

  test("reads a component that was stored before report details were kept", () => {
    const component = z.strictObject({ material: z.string(), ...provenanceShape });
    const stored = { material: "cork", evidence: "stated", document: "", page: "", words: "" };
    expect(component.safeParse(stored).success).toBe(true);
  });
});
