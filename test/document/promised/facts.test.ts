import { describe, expect, test } from "vitest";
import { parseCommaSeparated } from "#lib/claim";
import { printedAsText, printedCloseoutFacts, printedWarrantyFacts, promisedCsv } from "#lib/document";
import { type Project, type ProjectFile, projectFileSchema, promisedAgainstMeasured } from "#lib/evaluation";
import { plainDate } from "#lib/quantity";
import { registerLine, rowFindings } from "#lib/submittal";
import demonstration from "../../../app/_demo/demonstration-project.json";

const project: Project = projectFileSchema.parse(demonstration as unknown as ProjectFile);
const told = promisedAgainstMeasured(project, "us").rows.map((row) => ({
  row,
  findings: rowFindings(row, { sameWithin: 0.02, units: "us" }),
}));
const asOf = plainDate("2030-09-01");
const frame = {
  ...{ project: project.brief.name, owner: project.brief.owner, notice: project.brief.notice },
  ...{ bid: "Bid A", date: asOf, dateInWords: "September 1, 2030" },
};

describe("the facts that leave the house", () => {
  test("every row of the table is a row of the CSV, with as many cells as there are columns", () => {
    const rows = parseCommaSeparated(promisedCsv(told));
    expect(rows).toHaveLength(told.length + 1);
    expect(new Set(rows.map((cells) => cells.length)).size).toBe(1);
    const infiltration = rows.find(([property]) => property === "System infiltration rate");
    expect(infiltration?.at(-1)).toContain("does not meet what is specified");
  });

  test("a notice names what was measured and falls short, and nothing that was only handed in", () => {
    const text = printedAsText(printedWarrantyFacts(told, frame));
    expect(text).toContain("The test of year 3 gave 9.5 in/h, which does not meet what is specified");
    expect(text).toContain("They say nothing of the cause");
    // pile mass was submitted weaker than bid and never measured on the field
    expect(text).not.toContain("Pile mass");
  });

  test("without a measured deviation the notice says so", () =>
    expect(printedAsText(printedWarrantyFacts([], frame))).toContain(
      "Nothing that was measured on the finished field",
    ));

  test("the closeout facts hold the register and every row", () => {
    const lines = (project.submittals ?? []).map((item) => registerLine(item, asOf));
    const text = printedAsText(printedCloseoutFacts(told, lines, frame));
    expect(text).toContain("3 of 5 closed; late:");
    expect(text).toContain("Shop drawings: Lines: Overdue by");
    expect(text).toContain("Pile mass");
    expect(text).toContain("Bid A");
  });
});
