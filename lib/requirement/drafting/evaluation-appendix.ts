import { evidenceLevels } from "#lib/claim";
import { type Criterion, weightShares } from "#lib/criteria";
import { inSentence } from "#lib/figure";
import type { Requirement } from "../model";
import { isChosen } from "./choices";
import { figureInWords, limitInWords } from "./limit-in-words";
import type { Article, DraftingInput, Paragraph } from "./model";
import { chosen, fact, noted, paragraph, paragraphs } from "./paragraph";
import { methodLine } from "./requirement-paragraphs";

/** 0.5 → “50 of 100 points”. */
const points = (value: number) => `${Number((value * 100).toPrecision(3))} of 100 points`;

/** How figures turn into points, in words. */
function valueInWords({ valueFunction: rule }: Criterion): string | null {
  switch (rule.kind) {
    case "none":
      return null;
    case "more-is-better":
    case "less-is-better":
      return `No points at ${figureInWords(rule.worst)}, full points at ${figureInWords(rule.best)}, evenly in between.`;
    case "target-window":
      return `Full points from ${figureInWords(rule.fullFrom)} to ${figureInWords(rule.fullTo)}; none from ${figureInWords(rule.nothingBelow)} down and from ${figureInWords(rule.nothingAbove)} up; evenly in between.`;
    case "steps":
      return `Points by steps: ${rule.steps.map(({ at, value }) => `${rule.counted === "from" ? "from" : "up to"} ${figureInWords(at)}, ${points(value)}`).join("; ")}; otherwise ${points(rule.otherwise)}.`;
    case "piecewise":
      return `Points along straight lines between these: ${rule.knots.map(({ at, value }) => `${figureInWords(at)}, ${points(value)}`).join("; ")}.`;
  }
}

const shortfallWords = {
  "keep-open": "A figure that is not shown may be anything from no points to full points, and both ends are told.",
  "ask-first": "A bidder whose figure is not shown is asked before anything is decided.",
  "counts-as-worst": "A figure that is not shown counts as the lowest.",
} as const;

const percent = (share: number) => `${Number((share * 100).toPrecision(3))} percent`;

type Judged = Requirement & Readonly<{ criterion: Criterion }>;

function criterionParagraph(input: DraftingInput, requirement: Judged, share: number): Paragraph {
  const { criterion, limit, label, evidence } = requirement;
  return paragraph(
    `${label}.`,
    limit === null ? null : `Gate: ${limitInWords(limit)}. No points make up for missing it.`,
    share > 0 ? `Weight: ${percent(share)} of all points.` : null,
    valueInWords(criterion),
    methodLine(input, requirement),
    `Least evidence that counts: ${inSentence(evidence)}.`,
    shortfallWords[criterion.evidence.shortfall],
  );
}

/** The levels of evidence in the words of the claim form. */
const evidenceParagraph = (): Paragraph =>
  paragraph(
    "Evidence, from the weakest to the strongest:",
    ...evidenceLevels.map(
      ({ label, definition }) => `${label}: ${definition.charAt(0).toLowerCase()}${definition.slice(1)}`,
    ),
  );

const judged = (requirements: readonly Requirement[]): readonly Judged[] =>
  requirements.flatMap((each) => (each.criterion === null ? [] : [{ ...each, criterion: each.criterion }]));

/** Appendix A: what each bid states, so that bids can be compared. */
const bidForm = (input: DraftingInput): Article => ({
  id: "bid-form",
  title: "BID FORM",
  paragraphs: paragraphs(
    "Each bid states, for every requirement of this Section and every criterion of @evaluation: the figure with its unit, the method with its edition, the condition, the evidence, and the document and page.",
    "Each bid states its answer to each requirement: meets, meets with a comment, differs, or not offered. A missing answer is read as not offered.",
    "Each bid states the build: carpet, each infill component with mass and bulk density, and shock layer.",
    paragraph(
      "Prices by line, in the year in which each falls due:",
      "Removal, base repair, system, tests, bonds and taxes.",
      "Yearly care, tests, top-up of infill and machines.",
      "Replacement with its year, and removal at the end of life.",
    ),
    chosen(
      input,
      "end-of-life",
      "Each bid states what is done with carpet and infill at the end of life, and at what price.",
    ),
  ),
});

/** Appendix B: what counts and how, with the life-cycle method. */
function evaluation(input: DraftingInput): Article {
  const { facts, requirements } = input;
  const all = judged(requirements);
  const shares = weightShares(all.map(({ criterion }) => criterion));
  const hasCost = all.some(({ subject }) => subject?.dimension.startsWith("money"));
  return {
    id: "evaluation",
    title: "HOW BIDS ARE JUDGED",
    paragraphs: paragraphs(
      "Gates come first. A bid that misses one is not chosen, whatever its points.",
      "Points run from 0 to 100 on aims set by the Owner before bids are opened. They do not depend on what other bids offer.",
      all.length === 0
        ? "No criterion is set."
        : paragraph("Criteria:", ...all.map((each, index) => criterionParagraph(input, each, shares[index] ?? 0))),
      evidenceParagraph(),
      noted(
        "Law may ask that the method, the rate, the period and the data asked for stand in the documents. Look up what applies to the money used.",
        hasCost
          ? paragraph(
              "Life-cycle cost:",
              "Method: all costs of the study period, each brought to its present value and added up; replacement, residual value and removal included.",
              `Study period: ${fact(facts.studyPeriod, "study period")}.`,
              `Discount rate: ${fact(facts.discountRate, "discount rate")} a year, without inflation.`,
              `Base date: ${fact(facts.baseDate, "base date")}.`,
              `Timing: ${fact(facts.costTiming, "timing of yearly costs").replace(/\.$/, "")}.`,
              "Data: the prices of @bid-form, and quantities worked out by the Owner from the bid in the same way for all.",
            )
          : "Cost does not score in this evaluation.",
      ),
      "Criteria, weights and limits are fixed before bids are opened. A later change is made by addendum, with its reason, to all bidders.",
    ),
  };
}

/** The appendices that say what is asked and how it counts; none where the owner leaves them out. */
export const evaluationAppendices = (input: DraftingInput): readonly Article[] =>
  isChosen(input.choices, "evaluation-appendix") ? [bidForm(input), evaluation(input)] : [];

/** Ids of the criteria that the drafted text announces. */
export const announcedCriteria = (input: DraftingInput): readonly string[] =>
  isChosen(input.choices, "evaluation-appendix") ? judged(input.requirements).map(({ criterion }) => criterion.id) : [];
