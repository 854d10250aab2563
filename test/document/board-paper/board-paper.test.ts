import { describe, expect, test } from "vitest";
import { boardPaper, type PaperFacts, printedPaper, widestGrade } from "#lib/document";
import { evaluate, type Project, type ProjectFile, projectFileSchema, withoutNames } from "#lib/evaluation";
import { startingProcedure } from "#lib/procedure";
import { nothingWritten, type OwnersWords, type PaperPart, paperParts } from "#lib/recommendation";
import demonstration from "../../../app/_demo/demonstration-project.json";

const demo = projectFileSchema.parse(demonstration as unknown as ProjectFile);
const demoEvaluation = evaluate(demo);
const facts: PaperFacts = {
  project: "Field",
  owner: "District",
  notice: "",
  date: "2026-11-26",
  procedure: startingProcedure,
  keptSince: "2026-11-25T10:00:00.000Z",
};

const paperOf = (words: OwnersWords = nothingWritten, project: Project = demo, units: "us" | "metric" = "us") =>
  boardPaper(project, project === demo ? demoEvaluation : evaluate(project), words, units);

const writing = (part: PaperPart, kind: "added" | "instead", beside: string): OwnersWords => ({
  ...nothingWritten,
  parts: { ...nothingWritten.parts, [part]: { kind, words: "The board has thought of this.", beside } },
});

const textOf = (words?: OwnersWords) => JSON.stringify(printedPaper(paperOf(words), facts).blocks);

describe("boardPaper", () => {
  test("reads at grade 9 or below, in either system of units", () => {
    for (const units of ["us", "metric"] as const)
      expect(paperOf(nothingWritten, demo, units).grade).toBeLessThanOrEqual(widestGrade);
  });

  test.each(paperParts)(
    "puts what is written to “%s” after the generated text or in its place, marked as the owner’s",
    (part) => {
      const { beside } = paperOf().parts[part];
      /** What stands under the heading of the part, up to the next one. */
      const below = (words?: OwnersWords) => {
        const { blocks } = printedPaper(paperOf(words), facts);
        const own =
          part === "support" ? 0 : blocks.findIndex((one) => one.kind === "heading" && one.text === partHeading);
        const rest = blocks.slice(own + 1);
        const end = rest.findIndex((one) => one.kind === "page-break" || (one.kind === "heading" && one.level < 3));
        return rest.slice(0, end < 0 ? undefined : end);
      };
      const partHeading = paperOf().parts[part].heading;
      const note = { kind: "note", label: "In the owner’s words", text: "The board has thought of this.", depth: 0 };
      const cautions = part === "support" ? below().slice(-1) : [];
      const generated = part === "support" ? below().slice(0, -1) : below();
      expect(generated.length).toBeGreaterThan(0);
      expect(below(writing(part, "added", beside))).toEqual([...generated, note, ...cautions]);
      expect(below(writing(part, "instead", beside))).toEqual([note, ...cautions]);
    },
  );

  test("says that the figures have moved once a claim does, and not because units or names are shown otherwise", () => {
    const words = writing("gates", "added", paperOf().parts.gates.beside);
    expect(paperOf(words, demo, "metric").parts.gates.written.readThen).toBeNull();
    expect(paperOf(words, { ...withoutNames(demo) }).parts.gates.written.readThen).toBeNull();
    const without: Project = { ...demo, bids: demo.bids.filter(({ letter }) => letter !== "D") };
    expect(paperOf(words, without).parts.gates.written.readThen).toContain("Bids B and D");
    expect(JSON.stringify(printedPaper(paperOf(words, without), facts).blocks)).toContain("The figures have moved");
  });

  test("lets nobody write away a caution", () => {
    const all: OwnersWords = {
      ...nothingWritten,
      parts: Object.fromEntries(
        paperParts.map((part) => [part, { kind: "instead", words: "Ours.", beside: "" }]),
      ) as OwnersWords["parts"],
    };
    for (const caution of evaluate(demo).cautions) expect(textOf(all)).toContain(caution);
  });

  test("shows views that differ under the name of who holds them", () => {
    const words = { ...nothingWritten, dissents: [{ name: "Member of the board", words: "I would ask bid A first." }] };
    expect(textOf(words)).toContain("Views that differ");
    expect(textOf(words)).toContain("I would ask bid A first.");
    expect(textOf()).not.toContain("Views that differ");
  });
});
