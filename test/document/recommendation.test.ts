import { describe, expect, test } from "vitest";
import { type Recommendation, readProjectFile, recommendation } from "#lib/document";
import { evaluate, type ProjectFile } from "#lib/evaluation";
import demonstration from "../../app/_demo/demonstration-project.json";
import { workedProject } from "../evaluation/worked-project";

const demo = demonstration as ProjectFile;

function recommended(file: ProjectFile, units: "us" | "metric" = "us"): Recommendation {
  const read = readProjectFile(JSON.stringify(file));
  if (!read.ok) throw new Error("expected a project file that reads");
  const { project } = read.value;
  return recommendation(project, evaluate(project), units);
}

const withCriteria = (file: ProjectFile, criteria: ProjectFile["requirements"]["criteria"]): ProjectFile => ({
  ...file,
  requirements: { ...file.requirements, criteria },
});

const withBids = (file: ProjectFile, letters: string): ProjectFile => ({
  ...file,
  bids: file.bids.filter(({ letter }) => letters.includes(letter)),
});

describe("the recommendation on the demonstration project", () => {
  const text = recommended(demo);
  const lineOf = (letter: string) => text.bids.find((bid) => bid.letter === letter)?.line;
  const askOf = (letter: string) => text.ask.find((bid) => bid.letter === letter)?.questions ?? [];

  // 380 ft × 212 ft = 80,560 ft², derived
  test("begins with the owner's question", () =>
    expect(text.question).toEqual([
      "Larkmoor Valley School District plans a field of 80,560 ft². It is to be used 1,800 hours a year.",
      "Replace the worn stadium field. Football and soccer, girls and boys, school and community use on weekdays and weekends.",
      "4 bids have come in. Which of them do the figures support, and how firmly?",
    ]));

  test("says which bid the figures support and what is not settled", () =>
    expect(text.support).toEqual({
      headline: "The figures support bid C. It is ahead on the figures shown.",
      sentences: [
        "It is ahead of bids B and D for certain.",
        "Against bid A the order is not settled. Open figures could still put bid A first.",
        "Ask the questions below before you sign.",
      ],
    }));

  test("gives every bid a line, in the order of the letters", () => {
    expect(text.bids.map(({ letter }) => letter)).toEqual(["A", "B", "C", "D"]);
    expect(lineOf("C")).toMatch(
      /^Bidder Cedar \(invented\)\. Light rubber and sand infill over a shock layer\. It passes every gate\. [\d.]+–[\d.]+ of 100 points\. \$[\d,]+ over the whole study\.$/,
    );
    expect(lineOf("D")).toContain("It leaves a gate open.");
  });

  test("says how the bids stand at the gates", () =>
    expect(text.gates).toEqual(["Bids A and C pass every gate.", "Bids B and D leave a gate open."]));

  test("shows the three criteria of most weight, whatever the bids say", () => {
    expect(text.deciding.map(({ label }) => label)).toEqual([
      "Impact level as new",
      "Impact level in year 8",
      "Equivalent annual cost per area",
    ]);
    expect(text.deciding[0]?.bids).toEqual([
      { letter: "A", text: "118 g" },
      { letter: "B", text: "at most 105 g, not proven as asked" },
      { letter: "C", text: "96 g" },
      { letter: "D", text: "not comparable" },
    ]);
  });

  test("says what is not known of a bid, and nothing of one that shows all", () => {
    const lines = new Map(text.notKnown.map(({ letter, line }) => [letter, line]));
    expect(lines.get("A")).toBe("critical fall height (not shown).");
    expect(lines.has("C")).toBe(false);
  });

  test("asks about gates first, and once about one unlike method", () => {
    expect(askOf("D")).toEqual([
      "Please give G-max by ASTM F1936. Your bid gives it by Clegg hammer on synthetic turf, and one does not follow from the other.",
      "Please give system infiltration rate by ASTM F2898. Your bid gives it by EN 12616, and one does not follow from the other.",
      "Please state any impact level by the required method and name the document and, for a test, its method. Proof asked for: own test.",
    ]);
    expect(askOf("C")).toEqual([]);
  });

  // 6.5 + 3 = 9.5 lb/ft² against 10.2 lb/ft² as stated, derived
  test("asks about components that don't add up", () =>
    expect(askOf("A")).toContain(
      "Your bid states a total infill of 10.20 lb/ft², while its components add up to 9.50 lb/ft². Which is right, and which component changes?",
    ));

  test("says what it is not", () =>
    expect(text.cautions).toEqual([
      "A check, not a certification: test the field itself; local codes and licensed practice decide, and no impact level predicts or rules out injury.",
    ]));

  test("names the conventions of cost", () => {
    expect(text.conventions).toMatch(
      /^Costs are in US dollars of June 1, 2027, over 20 years, with no inflation in them\. Later costs count less, by 3 % a year\. Costs fall at the end of their year\. /,
    );
    expect(text.conventions).toContain("Impact levels count only by ASTM F1936 or a like method.");
  });

  // 380 ft × 212 ft × 0.09290304 m²/ft² = 7,484.3 m² (NIST SP 811)
  test("reads the same in metric units", () => {
    const metric = recommended(demo, "metric");
    expect(metric.question[0]).toBe(
      "Larkmoor Valley School District plans a field of 7,484 m². It is to be used 1,800 hours a year.",
    );
    expect(metric.support).toEqual(text.support);
  });
});

describe("the recommendation on the worked comparison", () => {
  const text = recommended(workedProject);

  test("says when a bid is ahead for certain", () =>
    expect(text.support).toEqual({
      headline: "The figures support bid B. It is ahead for certain.",
      sentences: ["Whatever the open figures of the other bids turn out to be, none can reach its points."],
    }));

  // the worked comparison: present values of $1,154,583 and $1,254,677; 100,094 ÷ 1,154,583 = 8.67 %, derived
  test("holds its cost against the lowest", () =>
    expect(text.firmness.slice(1)).toEqual([
      "Bid B costs $100,094 (8.7 %) more than bid A, the lowest cost over 20 years.",
      "A difference under 10 % may not mean much.",
    ]));

  test("says that no gate is set", () => expect(text.gates).toEqual(["No gate is set, so no bid can fail one."]));

  test("leaves out a purpose that is not given, and what is not open", () => {
    expect(text.question).toHaveLength(2);
    expect(text.notKnown).toEqual([]);
    expect(text.ask).toEqual([]);
  });
});

describe("a recommendation that can't name a bid", () => {
  test("says that no bid has been entered", () => {
    const text = recommended({ ...demo, bids: [] });
    expect(text.support).toEqual({
      headline: "There is nothing to support yet: no bid has been entered.",
      sentences: ["Enter the bids, each claim as it is written."],
    });
    expect(text.question.at(-1)).toBe("No bid has come in yet.");
    expect([text.bids, text.deciding, text.firmness, text.notKnown, text.ask]).toEqual([[], [], [], [], []]);
  });

  test("says that no criterion has been set", () => {
    const text = recommended(withCriteria(demo, []));
    expect(text.support).toEqual({
      headline: "The figures support no bid yet: no criterion has been set.",
      sentences: ["Set what every bid must meet and what counts for how much. Then read this page again."],
    });
    expect([text.deciding, text.firmness]).toEqual([[], []]);
  });

  // bids give 1.1 m, 1.4 m and 1.3 m
  test("says that every bid fails a gate", () => {
    const criteria = workedProject.requirements.criteria.map((criterion) =>
      criterion.id === "fall" ? { ...criterion, gate: { kind: "at-least" as const, limit: "2 m" } } : criterion,
    );
    const text = recommended(withCriteria(workedProject, criteria));
    expect(text.support).toEqual({
      headline: "The figures support no bid: every bid fails a gate.",
      sentences: [
        "Ask the questions below first. An answer with proof may open a gate.",
        "If no answer does, ask for new bids. To change a gate now, change it for all bids and give the reason.",
      ],
    });
    expect(text.gates).toEqual(["Bids A, B and C fail a gate and have no place."]);
    expect(text.firmness).toEqual([]);
  });

  test("says that bids with the same points can't be told apart", () => {
    const [first] = workedProject.bids;
    if (first === undefined) throw new Error("expected a bid");
    const twin = { ...first, id: "bid-z", letter: "Z", bidder: "Bidder Z" };
    const text = recommended({ ...workedProject, bids: [first, twin] });
    expect(text.support).toEqual({
      headline: "The figures do not tell bids A and Z apart.",
      sentences: [
        "They have the same points on the figures shown. Ask the questions below, then read this page again.",
      ],
    });
  });

  test("says that criteria without weight put nothing in order", () => {
    const criteria = demo.requirements.criteria
      .filter(({ gate }) => gate.kind !== "none")
      .map((criterion) => ({ ...criterion, valueFunction: { kind: "none" as const }, weight: "0" }));
    expect(recommended(withCriteria(demo, criteria)).support.headline).toBe(
      "The figures support no one bid: no criterion carries weight.",
    );
  });
});

describe("a recommendation on one bid", () => {
  test("asks whether the figures support it", () => {
    const text = recommended(withBids(workedProject, "B"));
    expect(text.question.at(-1)).toBe("One bid has come in. Do the figures support it?");
    expect(text.support).toEqual({
      headline: "The figures support bid B, the only bid in the order.",
      sentences: [
        "There is no other bid to hold it against. Its points say how it meets your own aims, and no more than that.",
      ],
    });
  });

  test("supports no bid while the only one leaves a gate open", () =>
    expect(recommended(withBids(demo, "D")).support).toEqual({
      headline: "Bid D is ahead on the figures shown, but leaves a gate open. The figures support no bid yet.",
      sentences: ["Ask the questions below about its gates. Decide when the answers are in."],
    }));

  test("has contradictions cleared up before anything else", () =>
    expect(recommended(withBids(demo, "A")).support.sentences[0]).toBe(
      "Some figures of bid A can’t all be true. Have that cleared up before anything else.",
    ));
});
