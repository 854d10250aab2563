import type { BidEvaluation, Brief } from "#lib/evaluation";
import type { UnitSystem } from "#lib/quantity";
import { type Question, questionsTo } from "./questions";

/** A letter to one bidder, in the order it is read. */
export type QuestionsLetter = Readonly<{
  heading: string;
  /** To whom, from whom, about what: label and text. */
  lines: readonly Readonly<{ label: string; text: string }>[];
  opening: readonly string[];
  questions: readonly Question[];
  closing: readonly string[];
}>;

/**
 * The questions that the figures of a bid raise, as a neutral letter. The same words go to every bidder around them.
 * @param procedure what is to be said of stage and amendments, in sentences
 */
export function questionsLetter(
  brief: Brief,
  bid: BidEvaluation,
  units: UnitSystem,
  procedure: readonly string[] = [],
): QuestionsLetter {
  return {
    heading: "Questions on your bid",
    lines: [
      { label: "To", text: `${bid.bidder}, bid ${bid.letter}` },
      { label: "From", text: brief.owner },
      { label: "Project", text: brief.name },
      ...procedure.map((text) => ({ label: "Stage and amendments", text })),
    ],
    opening: [
      "We are reading the bids for this project side by side and ask for a written answer to the points below.",
      "Please answer each by its number, and name the document and the page that shows it. Where a test stands behind a figure, please give the method with its edition, the laboratory, the date and whether the tested build is the one you offer.",
    ],
    questions: questionsTo(bid, units),
    closing: [
      "A question is not a judgement. It is asked wherever figures do not go together or something is not shown, and of every bidder in the same way.",
      "If an answer changes a figure of your bid, both the earlier and the later figure are kept in the record. Whether a change counts is for the rules of this procurement.",
    ],
  };
}

/** The letter as plain text, to be sent or pasted. */
export function letterText({ heading, lines, opening, questions, closing }: QuestionsLetter): string {
  const head = lines.map(({ label, text }) => `${label}: ${text}`).join("\n");
  const list = questions.map(({ text }, index) => `${index + 1}. ${text}`);
  return [heading, head, ...opening, ...list, ...closing].join("\n\n");
}
