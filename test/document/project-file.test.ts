import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { explainProjectFile, projectFileJsonSchema, projectFileOf, readProjectFile } from "#lib/document";
import { type ProjectFile, startingProject } from "#lib/evaluation";
import { plainDate } from "#lib/quantity";
import demonstration from "../../app/_demo/demonstration-project.json";

const demo = demonstration as unknown as ProjectFile;
const refusal = (text: string) => {
  const read = readProjectFile(text);
  if (read.ok) throw new Error("expected a refusal");
  return explainProjectFile(read.problem);
};

describe("readProjectFile", () => {
  test("reads the demonstration project", () => expect(readProjectFile(JSON.stringify(demo)).ok).toBe(true));

  test("reads what an empty project starts with", () => {
    const file = startingProject({ name: "New field", owner: "A district", baseDate: plainDate("2026-11-25") });
    expect(readProjectFile(JSON.stringify(file)).ok).toBe(true);
  });

  test("gives back the text it was written from", () => {
    const { brief, requirements, bids } = demo;
    const campaign = {
      ...({ installed: "bid-a", kind: "acceptance", date: "2027-08-20", method: "f1936" } as const),
      locations: [{ id: "one", x: "10 ft", y: "20 ft", drops: ["98 g", "104 g", "106 g"] as [string, string, string] }],
      depths: [{ id: "first", x: "10 ft", y: "20 ft", depth: "1.5 in" }],
    };
    const attachment = { name: "report.pdf", kind: "pdf", bytes: 9, sha256: "0".repeat(64) } as const;
    const file = projectFileOf({
      ...{ id: "north-field", brief, requirements },
      bids: bids.map(({ id, ...text }) => ({ id, text })),
      campaigns: [{ id: "acceptance", text: campaign }],
      costing: demo.costing ?? null,
      recommendation: demo.recommendation ?? null,
      attachments: [{ id: "report", text: attachment }],
      specification: demo.specification ?? null,
      issues: demo.issues ?? [],
      ...{ people: null, procedure: null, committee: null, scoresheets: [] },
      ...{
        contract: demo.contract ?? null,
        delivery: demo.delivery ?? null,
        substitutions: (demo.substitutions ?? []).map(({ id, ...text }) => ({ id, text })),
        submittals: (demo.submittals ?? []).map(({ id, ...text }) => ({ id, text })),
      },
    });
    const read = readProjectFile(JSON.stringify(file));
    expect(read.ok && read.value.file).toEqual({
      ...demo,
      savedFrom: "north-field",
      campaigns: [{ id: "acceptance", ...campaign }],
      attachments: [{ id: "report", ...attachment }],
    });
  });

  test("says which field, what was read and what was expected", () => {
    const spoiled = {
      ...demo,
      brief: { ...demo.brief, field: { kind: "rectangle", length: "9 kg", width: "200 ft" } },
    };
    expect(refusal(JSON.stringify(spoiled))).toBe(
      "One entry of the file can’t be read.\nbrief.field.length: “kg” is a unit of mass. Expected distance, for instance in ft, m, in or mm.",
    );
  });

  test("refuses what is not JSON", () => expect(refusal("{")).toMatch(/^The file is not JSON text: /));

  test("refuses JSON of another kind", () =>
    expect(refusal("{}")).toContain(
      "format: This is not a project file: its “format” should read “evenfield-project”.",
    ));

  test("refuses a later version", () =>
    expect(refusal(JSON.stringify({ ...demo, version: 2 }))).toBe(
      "One entry of the file can’t be read.\nversion: This version of Evenfield reads project files of version 1.",
    ));

  test("refuses two bids of one letter", () =>
    expect(refusal(JSON.stringify({ ...demo, bids: [demo.bids[0], { ...demo.bids[1], letter: "A" }] }))).toBe(
      "One entry of the file can’t be read.\nbids.1.letter: Another bid has the letter A as well.",
    ));

  test("refuses a file that is far too large", () =>
    expect(refusal(" ".repeat(5_000_001))).toMatch(/^The file has 5,000,001/));

  test("never throws on any text or JSON", () => {
    fc.assert(fc.property(fc.string(), (text) => void readProjectFile(text)));
    fc.assert(fc.property(fc.json(), (text) => void readProjectFile(text)));
  });

  test("never throws on a demonstration project with one value replaced by anything", { timeout: 60_000 }, () => {
    const leaves = (value: unknown, path: readonly string[] = []): readonly (readonly string[])[] =>
      typeof value === "object" && value !== null
        ? Object.entries(value).flatMap(([key, inner]) => leaves(inner, [...path, key]))
        : [path];
    const replaced = (value: unknown, [key, ...rest]: readonly string[], by: unknown): unknown =>
      key === undefined
        ? by
        : Array.isArray(value)
          ? value.map((inner, index) => (String(index) === key ? replaced(inner, rest, by) : inner))
          : { ...(value as object), [key]: replaced((value as Record<string, unknown>)[key], rest, by) };
    fc.assert(
      fc.property(fc.constantFrom(...leaves(demo)), fc.anything(), (path, by) => {
        readProjectFile(JSON.stringify(replaced(demo, path, by)) ?? "null");
      }),
      { numRuns: 60 },
    );
  });
});

test("the JSON Schema names every document of the file", () => {
  const schema = projectFileJsonSchema();
  expect(schema.$schema).toBe("https://json-schema.org/draft/2020-12/schema");
  expect(schema.required).toEqual(["format", "version", "brief", "requirements", "bids"]);
});
