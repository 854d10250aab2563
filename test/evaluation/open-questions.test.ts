import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { openQuestions } from "#lib/evaluation";
import { type Claimed, comparison, twoCriteria } from "./comparison";

const openingsOf = (claimed: Readonly<Record<string, Claimed>>) => openQuestions(comparison(claimed).evaluation);

describe("openQuestions", () => {
  // by hand: A 60 × (200 − 120)/100 + 40 × 8/10 = 48 + 32 = 80; B 60 × 0.5 + 0…40 = 30…70
  test("leaves a bid behind that even the best answer does not carry to the leader's least", () => {
    const [leader, rival] = openingsOf({
      A: { level: "120 g", warranty: "8 years" },
      B: { level: "150 g", warranty: null },
    });
    expect(leader).toMatchObject({ letter: "A", reach: "leads", open: [] });
    expect(rival).toMatchObject({ letter: "B", reach: "could not come first" });
    expect(rival?.sentence).toBe(
      "Bid B could not come first, whatever the answers. At best it has 70 of 100 points; bid A has at least 80.",
    );
  });

  // by hand: B 60 × 0.9 + 0…40 = 54…94, above the 80 of A
  test("names the missing figure that could lift a bid above the leader, and its worth", () => {
    const [, rival] = openingsOf({ A: { level: "120 g", warranty: "8 years" }, B: { level: "110 g", warranty: null } });
    expect(rival?.reach).toBe("could come first");
    expect(rival?.sentence).toBe(
      "Bid B could come first. At the best of what its figures leave open it has 94 of 100 points; bid A may have as few as 80.",
    );
    expect(rival?.open).toHaveLength(1);
    expect(rival?.open[0]).toMatchObject({
      atGate: "no gate",
      question: "Please state warranty length and name the document and, for a test, its method.",
    });
    expect(rival?.open[0]?.worth).toBeCloseTo(0.4, 12);
  });

  // by hand: the best answer gives B 60 × 0.8 + 32 = 80, what A has
  test("lets a bid that can draw level come first", () => {
    const [, rival] = openingsOf({
      A: { level: "120 g", warranty: "8 years" },
      B: { level: "100–120 g", warranty: "2 years" },
    });
    expect(rival?.reach).toBe("could not come first");
    const [, level] = openingsOf({
      A: { level: "120 g", warranty: "8 years" },
      B: { level: "100–150 g", warranty: "5 years" },
    });
    expect(level?.reach).toBe("could come first");
  });

  test("says that a leader with an open gate may drop out, and that this lets the others in", () => {
    const [leader, rival] = openingsOf({
      A: { level: "90–170 g", warranty: "10 years" },
      B: { level: "160 g", warranty: "1 year" },
    });
    expect(leader?.sentence).toBe(
      "Bid A leads. It leaves a gate open; if it fails there, it drops out. At the worst of what its figures leave open it has 58 of 100 points.",
    );
    expect(leader?.open[0]?.question).toBe(
      "Please narrow the range for impact level. The owner asks for below 165 g, and your range leaves it open.",
    );
    expect(rival?.sentence).toBe(
      "Bid B could come first only if bid A fails the gate it leaves open. At best it has 28 of 100 points; bid A has at least 58.",
    );
  });

  test("keeps a bid that fails a gate on its own figure out, whatever its points", () => {
    const openings = openingsOf({
      A: { level: "180 g", warranty: "10 years" },
      B: { level: "160 g", warranty: "1 year" },
    });
    expect(openings.map(({ letter, reach }) => [letter, reach])).toEqual([
      ["B", "leads"],
      ["A", "fails a gate"],
    ]);
    expect(openings[1]?.sentence).toBe("Bid A fails a gate on the figure it gives. No points make up for that.");
  });

  test("lets a bid back that fails a gate for want of proof only", () => {
    const countedAsWorst = twoCriteria.map((criterion) => ({
      ...criterion,
      evidence: { ...criterion.evidence, shortfall: "counts-as-worst" as const },
    }));
    const { evaluation } = comparison(
      { A: { level: "120 g", warranty: "8 years", evidence: "stated" } },
      countedAsWorst,
    );
    expect(openQuestions(evaluation)[0]).toMatchObject({
      reach: "could come back",
      sentence: "Bid A fails a gate only because proof is missing. With the proof asked for it could come back.",
    });
  });

  test("asks for the wanted method where a figure is by another one", () => {
    const [bid] = openingsOf({ A: { level: "120 g", warranty: "8 years", method: "Clegg hammer on synthetic turf" } });
    expect(bid?.open[0]?.because?.kind).toBe("not-comparable");
    expect(bid?.open[0]?.question).toMatch(/^Please give G-max by ASTM F355.* one does not follow from the other\.$/);
  });

  test("says that a bid could not come first only where no answer puts it first", () => {
    const level = fc.integer({ min: 100, max: 160 });
    fc.assert(
      fc.property(level, level, fc.integer({ min: 0, max: 10 }), (levelA, levelB, yearsA) => {
        const leader = { level: `${levelA} g`, warranty: `${yearsA} years` };
        const rival = { level: `${levelB} g`, warranty: null };
        const openings = openingsOf({ A: leader, B: rival });
        const answers = [..."BCDEFGHIJKL"].map((letter, years) => [letter, { ...rival, warranty: `${years} years` }]);
        const { ranking } = comparison({ A: leader, ...Object.fromEntries(answers) }).evaluation;
        const someAnswerLeads = ranking.places.some(({ place, bid }) => place === 1 && bid !== "bid-a");
        const silent = openings.find(({ letter }) => letter === "B");
        // a silent bid that leads already stands on its least total, so every answer keeps it in front
        expect(silent?.reach !== "could not come first").toBe(someAnswerLeads);
      }),
      { numRuns: 12 },
    );
  }, 20_000);
});
