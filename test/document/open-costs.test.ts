import { describe, expect, test } from "vitest";
import { boundedGap, pluggedPart, pluggedSentences, recommendation } from "#lib/document";
import { evaluate, projectFileSchema } from "#lib/evaluation";
import demonstration from "../../app/_demo/demonstration-project.json";

const project = projectFileSchema.parse(demonstration);
const evaluation = evaluate(project);
const costOf = (letter: string) => {
  const bid = evaluation.bids.find((one) => one.letter === letter);
  if (bid === undefined) throw new Error(`no bid ${letter}`);
  return bid.cost;
};

describe("boundedGap", () => {
  test.each([
    [false, false, "$5 more"],
    [false, true, "at least $5 more"],
    [true, false, "at most $5 more"],
    [true, true, "$5 more, as far as figures stand"],
  ])("with the lower open %s and the higher open %s says “%s %s”", (isLowerLeast, isHigherLeast, words) =>
    expect(boundedGap("$5 more", { isLowerLeast, isHigherLeast })).toBe(words),
  );
});

describe("what the owner puts in", () => {
  // of the demonstration project: 4,200 + 18,500 + 3,500 dollars, all paid at the base date
  test("is summed over the items that are plugged, and named", () => {
    expect(pluggedPart(costOf("A"))?.presentValue).toBe(2_620_000);
    expect(pluggedSentences(costOf("A"))).toEqual([
      "Of this, $26,200 is put in by the owner for testing at acceptance, maintenance equipment and permits and inspections.",
    ]);
  });

  test("stands on the recommendation beside the cost, which is a least where an item is open", () => {
    const [, lineOfB] = recommendation(project, evaluation, "us").bids;
    expect(lineOfB?.line).toMatch(
      /at least \$1,228,454 over the whole study\. Of this, \$28,900 is put in by the owner for /,
    );
  });

  test("is no sentence where nothing is plugged", () =>
    expect(pluggedSentences({ ...costOf("A"), scope: [] })).toEqual([]));
});

// the bid costs at least so much, so it saves at most so much against natural grass
test("a bid with an open item saves at most what its figures say", () => {
  const [open, known] = [costOf("B").against, costOf("A").against];
  expect([open?.netSavings.kind, open?.savingsToInvestment.kind, known?.netSavings.kind]).toEqual([
    "at-most",
    "at-most",
    "known",
  ]);
  expect(open?.sentences).toContain(
    "The bid has items without a figure, so it saves at most this and takes at least this long.",
  );
});
