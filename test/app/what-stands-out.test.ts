import { describe, expect, test } from "vitest";
import { evaluate, type ProjectFile, projectFileSchema } from "#lib/evaluation";
import demonstration from "../../app/_demo/demonstration-project.json";
import { comparison } from "../../app/project/[id]/side-by-side/_comparison/comparison";
import { whatStandsOut } from "../../app/project/[id]/side-by-side/_comparison/what-stands-out";

const demo = demonstration as ProjectFile;

function standingOut(file: ProjectFile, units: "us" | "metric" = "us"): readonly string[] {
  const project = projectFileSchema.parse(file);
  const evaluation = evaluate(project);
  return whatStandsOut({ project, evaluation, groups: comparison(project, evaluation, units), units });
}

const onlyBids = (letters: string): ProjectFile => ({
  ...demo,
  bids: demo.bids.filter(({ letter }) => letters.includes(letter)),
});

const withoutMethod = (letters: string): ProjectFile => ({
  ...demo,
  bids: demo.bids.map((bid) =>
    letters.includes(bid.letter)
      ? {
          ...bid,
          claims: bid.claims.map((claim) => (claim.property === "g-max" ? { ...claim, method: "not-stated" } : claim)),
        }
      : bid,
  ),
});

describe("what stands out in the demonstration project", () => {
  const sentences = standingOut(demo);

  // bid A: 6.5 + 3 = 9.5 lb/ft², derived
  test("is led by how far mass and cost lie apart", () =>
    expect(sentences[0]).toMatch(
      /^The infill weighs from [\d.]+ lb\/ft² \(bid D\) to 9\.50 lb\/ft² \(bid A\); the cost over 20 years, as a present value, runs from \$[\d,]+ \(bid A\) to \$[\d,]+ \(bid D\)\.$/,
    ));

  test("says what can't be true, by which missile a bid measures, what else is unlike and what is left out", () =>
    expect(sentences.slice(1)).toEqual([
      "Bid A: The components add up to 9.50 lb/ft²; the bid states a total of 10.20 lb/ft². Both can’t be true.",
      "Bid D gives its impact level by Clegg hammer on synthetic turf, which drops a lighter missile than ASTM F1936; nothing converts one into the other.",
      "Not every figure is by the same method either, and those that aren’t stand on lines of their own: shock layer thickness (bid D) and system infiltration rate (bid D).",
      "Left out: bid B system infiltration rate and critical fall height; bid A critical fall height.",
    ]));

  // 9.5 lb/ft² × 4.882428 kg/m² per lb/ft² = 46.38 kg/m² (NIST SP 811)
  test("is told in the reader's units", () =>
    expect(standingOut(demo, "metric")[0]).toMatch(/ to 46\.4 kg\/m² \(bid A\); /));
});

test("one bid alone stands apart from nothing", () =>
  expect(standingOut(onlyBids("C")).filter((sentence) => /weighs from|runs from/.test(sentence))).toEqual([]));

test("a level without a test method is named as such", () =>
  expect(standingOut(withoutMethod("C"))).toContainEqual(
    expect.stringContaining("Bid C gives its impact level without a test method, so nobody can tell what it measures."),
  ));

test("several bids without a method share a sentence", () =>
  expect(standingOut(withoutMethod("BC"))).toContainEqual(
    expect.stringContaining(
      "Bids B and C give their impact level without a test method, so nobody can tell what it measures.",
    ),
  ));

test("a project without bids has nothing that stands out", () => expect(standingOut(onlyBids(""))).toEqual([]));
