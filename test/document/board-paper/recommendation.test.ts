import { describe, expect, test } from "vitest";
import { type Recommendation, readingGrade, recommendation, widestGrade } from "#lib/document";
import { evaluate, type ProjectFile, projectFileSchema } from "#lib/evaluation";
import demonstration from "../../../app/_demo/demonstration-project.json";
import { type Claimed, comparison, twoCriteria } from "../../evaluation/comparison";

const demo = projectFileSchema.parse(demonstration as unknown as ProjectFile);
const demoText = recommendation(demo, evaluate(demo), "us");

function textOf(claimed: Readonly<Record<string, Claimed>>, criteria = twoCriteria): Recommendation {
  const { project, evaluation } = comparison(claimed, criteria);
  return recommendation(project, evaluation, "us");
}

/** Every sentence of a recommendation that the page shows. */
const sentencesOf = (text: Recommendation): readonly string[] => [
  ...text.question,
  text.support.headline,
  ...text.support.sentences,
  ...text.bids.map(({ line }) => line),
  ...text.gates,
  ...text.firmness,
  ...text.notKnown.map(({ line }) => line),
  ...text.ask.flatMap(({ questions }) => questions),
  text.conventions,
];

const sound: Claimed = { level: "120 g", warranty: "8 years" };

describe("what the figures support", () => {
  test("is the bid that is ahead for certain", () =>
    expect(textOf({ A: sound, B: { level: "150 g", warranty: null } }).support).toEqual({
      headline: "The figures support bid A. It is ahead for certain.",
      sentences: ["Whatever the open figures of those bids turn out to be, none can reach its points."],
    }));

  test("is said among the bids that fail no gate where one fails", () =>
    expect(
      textOf({ A: sound, B: { level: "150 g", warranty: null }, C: { level: "170 g", warranty: "10 years" } }).support
        .headline,
    ).toBe("The figures support bid A. It is ahead for certain of the bids that fail no gate."));

  test("names a bid that proof alone would bring back", () =>
    expect(
      textOf(
        {
          A: sound,
          B: { level: "150 g", warranty: "1 year" },
          C: { level: "100 g", warranty: "9 years", evidence: "stated" },
        },
        twoCriteria.map((one) => ({ ...one, evidence: { ...one.evidence, shortfall: "counts-as-worst" as const } })),
      ).support,
    ).toEqual({
      headline: "The figures support bid A. It is ahead for certain of the bids that fail no gate.",
      sentences: [
        "Whatever the open figures of those bids turn out to be, none can reach its points.",
        "Bid C is out only because proof is missing. With that proof it could come back.",
      ],
    }));

  test("is not settled while open figures could put another bid first", () =>
    expect(textOf({ A: sound, B: { level: "110 g", warranty: null } }).support).toEqual({
      headline: "The figures support bid A. It is ahead on the figures shown.",
      sentences: [
        "Against bid B the order is not settled. Open figures could still put bid B first.",
        "Ask the questions below before you sign.",
      ],
    }));

  test("is no bid while the one in front leaves a gate open", () =>
    expect(
      textOf({ A: { level: "90–170 g", warranty: "10 years" }, B: { level: "160 g", warranty: "1 year" } }).support,
    ).toEqual({
      headline: "Bid A is ahead on the figures shown, but leaves a gate open. The figures support no bid yet.",
      sentences: ["Ask the questions below about its gates. Decide when the answers are in."],
    }));

  test("is no bid where each fails a gate", () =>
    expect(textOf({ A: { level: "170 g", warranty: "8 years" } }).support).toEqual({
      headline: "The figures support no bid: every bid fails a gate.",
      sentences: [
        "Ask the questions below first. An answer with proof may open a gate.",
        "If no answer does, ask for new bids. To change a gate now, change it for all bids and give the reason.",
      ],
    }));

  test("is neither of two that are tied", () =>
    expect(textOf({ A: sound, B: sound }).support.headline).toBe("The figures do not tell bids A and B apart."));

  test("is said of a lone bid with what that is worth", () =>
    expect(textOf({ A: sound }).support).toEqual({
      headline: "The figures support bid A, the only bid in the order.",
      sentences: [
        "There is no other bid to hold it against. Its points say how it meets your own aims, and no more than that.",
      ],
    }));

  test("is nothing without bids, criteria or weights, and says what to do", () => {
    expect(textOf({}).support).toEqual({
      headline: "There is nothing to support yet: no bid has been entered.",
      sentences: ["Enter the bids, each claim as it is written."],
    });
    expect(textOf({ A: sound }, []).support.headline).toBe(
      "The figures support no bid yet: no criterion has been set.",
    );
    expect(
      textOf(
        { A: sound },
        twoCriteria.map((one) => ({ ...one, weight: "0" })),
      ).support.headline,
    ).toBe("The figures support no one bid: no criterion carries weight.");
  });

  test("asks first to clear up figures of the supported bid that can't all be true", () => {
    const total =
      demo.bids.find(({ letter }) => letter === "A")?.claims.filter(({ id }) => id === "total-infill") ?? [];
    expect(total).toHaveLength(1);
    const alone = { ...demo, bids: demo.bids.filter(({ letter }) => letter === "A") };
    expect(recommendation(alone, evaluate(alone), "us").support.sentences[0]).toBe(
      "Some figures of bid A can’t all be true. Have that cleared up before anything else.",
    );
  });
});

describe("the demonstration project", () => {
  test("asks the question in plain numbers", () =>
    expect(demoText.question).toEqual([
      "Larkmoor Valley School District plans a field of 80,560 ft². It is to be used 1,800 hours a year.",
      "Replace the worn stadium field. Football and soccer, girls and boys, school and community use on weekdays and weekends.",
      "4 bids have come in. Which of them do the figures support, and how firmly?",
    ]));

  test("supports bid C and says against which bids that is not settled", () =>
    expect(demoText.support).toEqual({
      headline: "The figures support bid C. It is ahead on the figures shown.",
      sentences: [
        "It is ahead of bids B and D for certain.",
        "Against bid A the order is not settled. Open figures could still put bid A first.",
        "Ask the questions below before you sign.",
      ],
    }));

  test("shows the three figures of most weight, and what does not count as what it is", () => {
    expect(demoText.deciding.map(({ label }) => label)).toEqual([
      "Impact level as new",
      "Impact level in year 8",
      "Equivalent annual cost per area",
    ]);
    expect(demoText.deciding[0]?.bids.map(({ letter, text }) => `${letter}: ${text}`)).toEqual([
      "A: 118 g",
      "B: at most 105 g, not proven as asked",
      "C: 96 g",
      "D: not comparable",
    ]);
  });

  test("asks each bidder each thing once: what excludes itself, then gates, then the rest", () => {
    const questions = (letter: string) => demoText.ask.find((bid) => bid.letter === letter)?.questions;
    expect(questions("C")).toBeUndefined();
    expect(questions("A")).toHaveLength(2);
    expect(questions("A")?.[1]).toBe(
      "Please state critical fall height and name the document and, for a test, its method. Proof asked for: accredited laboratory.",
    );
    expect(questions("A")?.[0]).toMatch(
      /^Your bid states a total infill of [\d.]+ lb\/ft², while its components add up to [\d.]+ lb\/ft²\. Which is right, and which component changes\?$/,
    );
    expect(questions("D")?.[0]).toBe(
      "Please give G-max by ASTM F1936. Your bid gives it by Clegg hammer on synthetic turf, and one does not follow from the other.",
    );
    expect(questions("D")?.filter((question) => question.includes("G-max"))).toHaveLength(1);
  });

  test("names what is not known and why", () =>
    expect(demoText.notKnown).toEqual([
      { letter: "A", line: "critical fall height (not shown)." },
      {
        letter: "B",
        line: "impact level as new (not proven as asked); impact level in year 8 (not proven as asked); critical fall height (not shown); infiltration of the whole system (not shown).",
      },
      {
        letter: "D",
        line: "impact level as new (not comparable); impact level in year 8 (not shown); infiltration of the whole system (not comparable).",
      },
    ]));

  test("says how firm the lead is on weights and on cost", () => {
    expect(demoText.firmness).toContain("A difference under 10 % may not mean much.");
    expect(demoText.firmness[1]).toMatch(
      /^Bid C costs \$[\d,]+ \(9\.3 %\) more than bid A, the lowest cost over 20 years\.$/,
    );
  });

  test("states the conventions in one paragraph", () =>
    expect(demoText.conventions).toBe(
      "Costs are in US dollars of June 1, 2027, over 20 years, with no inflation in them. Later costs count less, by 3 % a year. Costs fall at the end of their year. A cost difference of less than 10 % may decide nothing (US GSA P100). Impact levels count only by ASTM F1936 or a like method. Points run from 0 to 100 on aims that the owner set, not on what the other bids offer. A gate comes first, and no points make up for failing it. A missing figure is never guessed: it may be anything from worst to best.",
    ));

  test("reads at grade 9 or below", () => {
    const { question, support, gates, firmness, conventions } = demoText;
    expect(readingGrade([support.headline, ...support.sentences])).toBeLessThanOrEqual(widestGrade);
    expect(
      readingGrade([...question, support.headline, ...support.sentences, ...gates, ...firmness, conventions]),
    ).toBeLessThanOrEqual(widestGrade);
  });

  test("calls no bid a winner or the best", () =>
    expect(sentencesOf(demoText).filter((sentence) => /\b(winner|wins?|best bid)\b/i.test(sentence))).toEqual([]));

  test("follows the reader's units", () => {
    const metric = recommendation(demo, evaluate(demo), "metric");
    expect(metric.question[0]).toContain("7,484 m²");
  });
});
