import { type Evaluation, evaluate, type Project, withoutNames } from "#lib/evaluation";
import type { UnitSystem } from "#lib/quantity";
import { type OwnersWords, type PaperPart, paperParts, type WrittenPart, writtenPart } from "#lib/recommendation";
import { partHeadings, partLines } from "./part-blocks";
import { readingGrade } from "./reading-grade";
import { type Recommendation, recommendation } from "./recommendation";

/** One part of the paper with what people wrote to it. `beside` is what the form keeps with words written now. */
export type BoardPart = Readonly<{
  part: PaperPart;
  heading: string;
  written: WrittenPart;
  beside: string;
  /** School grade of the owner's words; null where there are none. */
  wordsGrade: number | null;
  /** The generated content as it reads now, line by line; empty where there is nothing to say. */
  lines: readonly string[];
}>;

/** The board's paper: what the figures say, what people wrote, and how hard it is to read. */
export type BoardPaper = Readonly<{
  text: Recommendation;
  parts: Readonly<Record<PaperPart, BoardPart>>;
  dissents: OwnersWords["dissents"];
  /** School grade of all that stands on the paper. */
  grade: number | null;
}>;

/** Words are held against what they were written beside in one form, whatever units and names the reader has chosen. */
const besideUnits = "us";

export function boardPaper(
  project: Project,
  evaluation: Evaluation,
  words: OwnersWords,
  units: UnitSystem,
): BoardPaper {
  const text = recommendation(project, evaluation, units);
  const nameless = withoutNames(project);
  const kept = recommendation(nameless, evaluate(nameless), besideUnits);
  const partOf = (part: PaperPart): BoardPart => {
    const beside = partLines(part, kept).join("\n");
    const written = writtenPart(words.parts[part], beside);
    const lines = partLines(part, text);
    return { part, heading: partHeadings[part], written, beside, lines, wordsGrade: readingGrade(written.words) };
  };
  const parts = Object.fromEntries(paperParts.map((part) => [part, partOf(part)])) as BoardPaper["parts"];
  const onPaper = paperParts.flatMap((part) => {
    const { showsGenerated, words: own } = parts[part].written;
    return [...(showsGenerated ? parts[part].lines : []), ...own];
  });
  return {
    text,
    parts,
    dissents: words.dissents,
    grade: readingGrade([...onPaper, ...text.cautions, ...words.dissents.map(({ words: own }) => own)]),
  };
}
