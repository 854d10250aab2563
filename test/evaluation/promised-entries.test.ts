import { describe, expect, test } from "vitest";
import {
  awardedBid,
  type Project,
  type ProjectFile,
  projectFileSchema,
  promisedAgainstMeasured,
} from "#lib/evaluation";
import { columnLabel, inColumn, promisedColumns, rowFindings } from "#lib/submittal";
import demonstration from "../../app/_demo/demonstration-project.json";

const project: Project = projectFileSchema.parse(demonstration as unknown as ProjectFile);
const rowsOf = (from: Project) => promisedAgainstMeasured(from, "us").rows;
const rowOf = (property: string, from = project) => {
  const row = rowsOf(from).find((each) => each.property === property);
  if (row === undefined) throw new Error(`no row for ${property}`);
  return row;
};

describe("the bid that was taken", () => {
  test("is the one of the award, else the one that the owner named", () => {
    expect(awardedBid(project)?.bid.letter).toBe("A");
    const step = {
      stage: "awarded",
      at: "2027-06-10T10:00:00.000Z",
      by: { id: "a", name: "A" },
      note: "",
      accepted: [],
      bid: "bid-c",
      key: "",
    } as const;
    const procedure = { prices: "open", steps: [step], amendments: [] } as const;
    expect(awardedBid({ ...project, procedure })).toMatchObject({ bid: { letter: "C" }, by: "the award" });
    const { contract: _, ...unsaid } = project;
    expect(awardedBid(unsaid)).toBeNull();
  });
});

describe("promised against measured of the demonstration", () => {
  test("a filled row holds every column of the job", () => {
    const row = rowOf("system-infiltration");
    const filled = promisedColumns([row]).map((column) => [
      columnLabel(column),
      inColumn(row, column).map(({ value }) => value),
    ]);
    expect(filled).toEqual([
      ["Specified", ["at least 10 in/h (254 mm/h)"]],
      ["Bid", ["at least 16.0 in/h"]],
      ["Submitted", ["15.0 in/h"]],
      ["Acceptance", ["13.0 in/h"]],
      ["Year 3", ["9.5 in/h"]],
      ["Guaranteed", []],
    ]);
    expect(rowFindings(row, { sameWithin: 0.02, units: "us" }).deviations[0]).toBe(
      "The test of year 3 gave 9.5 in/h, which does not meet what is specified, at least 10 in/h (254 mm/h).",
    );
  });

  test("levels come from the field tests: the mean beside G-max, the worst beside the highest point", () => {
    expect(inColumn(rowOf("g-max"), { kind: "accepted" })[0]?.detail).toMatch(/^mean of 10 locations, ASTM F1936/);
    expect(inColumn(rowOf("g-max-highest-point"), { kind: "year", year: 3 })[0]?.detail).toMatch(
      /^worst of 10 locations/,
    );
  });

  test("a bid by another apparatus makes a row of its own", () => {
    const other = { ...project, contract: { ...project.contract, bid: "bid-d" } } as Project;
    const rows = rowsOf({ ...other, submittals: [] }).filter(({ property }) => property === "g-max");
    // a small hammer in bid D, the large missile in clause and tests: the first stands in the bid alone
    expect(rows).toHaveLength(1);
    expect(rows[0]?.entries.some(({ column: { kind } }) => kind === "bid")).toBe(false);
  });
});
