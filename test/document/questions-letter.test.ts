import { describe, expect, test } from "vitest";
import { letterText, questionsLetter } from "#lib/document";
import { answeredBid, evaluate, type ProjectFile, projectFileSchema } from "#lib/evaluation";
import { tell } from "#lib/figure";
import demonstration from "../../app/_demo/demonstration-project.json";

const file = demonstration as unknown as ProjectFile;

function letterTo(letter: string, project = file, units: "us" | "metric" = "us") {
  const read = projectFileSchema.parse(project);
  const bid = evaluate(read).bids.find((each) => each.letter === letter);
  if (bid === undefined) throw new Error(`no bid ${letter}`);
  return { bid, letter: questionsLetter(read.brief, bid, units) };
}

describe("the letter to a bidder", () => {
  test("asks what excludes itself before anything else", () => {
    const { letter } = letterTo("A");
    expect(letter.questions[0]?.finding?.severity).toBe("can't be true");
    expect(letterText(letter)).toContain("\n\n1. Your bid states a total infill of 10.20 lb/ft²");
  });

  test("asks each thing once and no note", () => {
    for (const name of ["A", "B", "C", "D"]) {
      const { questions } = letterTo(name).letter;
      expect(new Set(questions.map(({ text }) => text)).size).toBe(questions.length);
      expect(questions.filter(({ finding }) => finding?.severity === "note")).toEqual([]);
    }
  });

  test("is told in the reader's units", () =>
    // 10.2 lb/ft² × 4.882428 kg/m² each (NIST SP 811)
    expect(letterText(letterTo("A", file, "metric").letter)).toContain("a total infill of 49.8 kg/m²"));

  test("does not ask again what an answer has settled, and asks what it leaves open", () => {
    const { bid } = letterTo("A");
    const finding = bid.findings.find(({ severity }) => severity === "can't be true");
    if (finding === undefined) throw new Error("expected a finding");
    const question = tell(finding.question, "us");
    const answered = (outcome: "settled" | "still open"): ProjectFile => ({
      ...file,
      bids: file.bids.map((each) =>
        each.letter === "A"
          ? { ...each, ...answeredBid(each, "answer", { ...given(finding.key, question), outcome }) }
          : each,
      ),
    });
    expect(letterText(letterTo("A", answered("settled")).letter)).not.toContain(question);
    expect(letterText(letterTo("A", answered("still open")).letter)).toContain(question);
  });

  test("names bidder, owner and project, and blames nobody", () => {
    const text = letterText(letterTo("A").letter);
    expect(text).toContain("From: Larkmoor Valley School District");
    expect(text).not.toMatch(/\b(wrong|false|invalid|lie|mistake|fail)/i);
  });
});

const given = (finding: string, asked: string) => ({
  finding,
  asked,
  answer: "The total includes 0.7 lb/ft² of top dressing.",
  received: "",
  claims: [],
});
