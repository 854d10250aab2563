import { evidenceLevels } from "#lib/claim";
import { type Criterion, shortfallRules, weightShares } from "#lib/criteria";
import { inSentence } from "#lib/figure";
import type { Requirement } from "../model";
import { isChosen } from "./choices";
import { askedOfInWords, figureInWords, limitInWords } from "./limit-in-words";
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
    case "rating":
      return `Points by the level that evaluators choose, alone and then together: ${rule.levels.map(({ label, description, value }) => `${label}, ${points(value)}: ${description.replace(/[.\s]+$/, "")}`).join("; ")}.`;
  }
}

/** What becomes of a figure that is not shown as asked for; the part that is taken off is named where there is one. */
const shortfallWords = ({ evidence: { shortfall, discount } }: Criterion): readonly string[] => [
  shortfallRules[shortfall].explanation,
  ...(shortfall === "discount" ? [`The part taken off is ${percent(discount)} of the points.`] : []),
];

const isMoney = ({ subject }: Requirement) => subject?.dimension.startsWith("money") ?? false;

/** How a figure comes about that no bid states as such. */
function workedOut({ facts }: DraftingInput, requirement: Requirement): string | null {
  const { subject } = requirement;
  if (subject === null || subject.property !== undefined) return null;
  if (isMoney(requirement)) return "Figure: worked out by the life-cycle method below.";
  if (subject.id === "impact-level-as-new") return null;
  if (subject.id === "impact-level-at-horizon") return `Figure: ${fact(facts, "outlook")}.`;
  return "Figure: worked out by the Owner from the carpet and the infill components that the bid states, in the same way for all.";
}

const percent = (share: number) => `${Number((share * 100).toPrecision(3))} percent`;

type Judged = Requirement & Readonly<{ criterion: Criterion }>;

function criterionParagraph(input: DraftingInput, requirement: Judged, share: number): Paragraph {
  const { criterion, limit, label, evidence } = requirement;
  return paragraph(
    `${label}.`,
    askedOfInWords(criterion.askedOf),
    limit === null ? null : `Gate: ${limitInWords(limit)}. No points make up for missing it.`,
    share > 0 ? `Weight: ${percent(share)} of all points.` : null,
    valueInWords(criterion),
    workedOut(input, requirement),
    methodLine(requirement),
    ...(isMoney(requirement)
      ? []
      : [`Least evidence that counts: ${inSentence(evidence)}.`, ...shortfallWords(criterion)]),
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
    "Bids are written in the form that comes with these documents.",
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
      "Points run from 0 to 100 on aims set by the Owner before bids are opened. The aims do not depend on what bids offer.",
      "Order: by points, among the bids that pass every gate. Where the points of two bids are ranges that overlap, the order is not settled; the Owner says so and gives the reasons for the choice in writing.",
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
              `Study period: ${fact(facts, "studyPeriod")}.`,
              `Discount rate: ${fact(facts, "discountRate")}.`,
              `Base date: ${fact(facts, "baseDate")}.`,
              `Timing: ${fact(facts, "costTiming").replace(/\.$/, "")}.`,
              "Data: the prices of @bid-form, and quantities worked out by the Owner from the bid in the same way for all.",
              "Scope: what a bid leaves out of the price form is added for the comparison, with a figure of the Owner or the median of the other bids, and marked. The price as bid does not change.",
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
