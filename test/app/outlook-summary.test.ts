import { describe, expect, test } from "vitest";
import { evaluate, type ProjectFile, projectFileSchema } from "#lib/evaluation";
import demonstration from "../../app/_demo/demonstration-project.json";
import { outlookSummary } from "../../app/project/[id]/hardness/_components/outlook-summary";

const demo = demonstration as unknown as ProjectFile;

function summaryAt(limit: string, letters: string): string {
  const { impact, criteria } = demo.requirements;
  const targetWindow = { low: "80 g", high: "100 g" };
  const file = { ...demo, requirements: { criteria, impact: { ...impact, targetWindow, limit } } };
  const { bids } = evaluate(projectFileSchema.parse(file));
  return outlookSummary(
    bids.filter(({ letter }) => letters.includes(letter)),
    "us",
  );
}

describe("outlookSummary", () => {
  test("says who stays below the limit, whose change is assumed and who can't be followed", () =>
    expect(summaryAt("165 g", "ABCD")).toBe(
      "Bids A, B and C stay below the limit of 165 g through year 8, on the hard side of the range too. The yearly change of bid B is the owner’s assumption. Bid D can’t be followed and is not drawn.",
    ));

  test("speaks of one bid in the singular", () =>
    expect(summaryAt("165 g", "C")).toBe(
      "Bid C stays below the limit of 165 g through year 8, on the hard side of the range too.",
    ));

  // bid A states 118 g as new
  test("names the bid that is at the limit as new", () =>
    expect(summaryAt("110 g", "AD")).toBe(
      "Bid A could reach the limit of 110 g first, as new on the hard side of the range; its likely level gets there as new. Bid D can’t be followed and is not drawn.",
    ));

  // bid A states 132 g in year 5 and 146 g in year 8, so its likely level passes 140 g between them
  test("names the first year in which a bid could reach the limit, and when its likely level does", () =>
    expect(summaryAt("140 g", "A")).toMatch(
      /^Bid A could reach the limit of 140 g first, in year [3-7] on the hard side of the range; its likely level gets there in year [6-8]\.$/,
    ));

  test.each(["D", ""])("says that none can be followed (bids “%s”)", (letters) =>
    expect(summaryAt("165 g", letters)).toBe(
      "No bid gives a level by the required method, so none can be followed over the years.",
    ),
  );
});
