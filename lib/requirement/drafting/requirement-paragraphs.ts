import { formatCondition, isConditionStated, methodOf, propertyOf } from "#lib/claim";
import { inSentence } from "#lib/figure";
import type { Requirement } from "../model";
import { isChosen } from "./choices";
import { figureInWords, limitInWords } from "./limit-in-words";
import type { DraftingInput, Paragraph } from "./model";
import { blank, noted, paragraph } from "./paragraph";

/** Articles that hold requirements. */
export type RequirementPlace = "performance" | "materials" | "quality" | "warranty" | "maintenance" | "evaluation";

const placeOfGroup: Readonly<Record<string, RequirementPlace>> = {
  carpet: "materials",
  infill: "materials",
  "shock-layer": "materials",
  warranty: "warranty",
  references: "quality",
  maintenance: "maintenance",
};

/** Measures that are worked out from a bid and describe its build. */
const buildMeasures = new Set([
  "infill-mass-per-area",
  "stabilising-mass",
  "mineral-share",
  "submerged-mass",
  "float-prone-share",
  "infill-depth",
  "free-pile",
]);

/** Where a requirement stands in the section. What only scores, and what is money, stands in the appendix alone. */
function placeOf({ subject, limit, asked }: Requirement): RequirementPlace {
  if ((limit === null && asked === "") || subject?.dimension.startsWith("money")) return "evaluation";
  if (subject === null) return "performance";
  if (subject.property !== undefined) return placeOfGroup[propertyOf(subject.property).group] ?? "performance";
  return buildMeasures.has(subject.id) ? "materials" : "performance";
}

const holdsAtWords = {
  "each-point": ", at each point or sample tested",
  average: ", as the average of all readings",
  whole: "",
  "not-stated": "",
} as const;

function headOf({ label, limit, asked, holdsAt, tolerance, condition }: Requirement): string {
  if (limit === null) return `${label}: ${asked.replace(/\.$/, "")}.`;
  const stray = tolerance === null ? "" : `, with a tolerance of ${figureInWords(tolerance)} for one reading`;
  const state = isConditionStated(condition) ? `, in this condition: ${formatCondition(condition)}` : "";
  return `${label}: ${limitInWords(limit)}${holdsAtWords[holdsAt]}${stray}${state}.`;
}

export function methodLine(input: DraftingInput, { label, method, edition }: Requirement): string | null {
  if (method === null) return null;
  const { designation } = methodOf(method);
  return `Method: ${designation}, ${edition.text === "" ? blank(input, `edition of ${designation} for ${inSentence(label)}`) : edition.text}.`;
}

const sentence = (label: string, text: string) => `${label}: ${text.replace(/\.$/, "")}.`;

const notShownWords = {
  "keep-open": "where the figure is not shown, the gate stays open until it is",
  "ask-first": "where the figure is not shown, the bidder is asked before anything is decided",
  "counts-as-worst": "a figure that is not shown counts as one that falls short",
} as const;

const gateLine = ({ criterion, role }: Requirement): string | null =>
  criterion === null || !role.startsWith("gates")
    ? null
    : `Use in the evaluation: this is a gate. A bid whose figure falls short does not pass; ${notShownWords[criterion.evidence.shortfall]}.`;

const yearsInWords = (years: number) => (years === 1 ? "every year" : `every ${Number(years.toPrecision(3))} years`);

/** One requirement with all that belongs to it: method, evidence, tests, remedy and reason. */
function requirementParagraph(input: DraftingInput, requirement: Requirement): Paragraph {
  const { label, limit, evidence, acceptance, yearsBetweenTests, remedy, reason, limitSource } = requirement;
  const name = inSentence(label);
  const isTested = requirement.method !== null;
  const acceptanceText =
    acceptance === "" ? blank(input, `test of ${name} at completion, or none with the reason`) : acceptance;
  const remedyText = remedy === "" ? blank(input, `remedy where ${name} is missed`) : remedy;
  const whole = paragraph(
    headOf(requirement),
    methodLine(input, requirement),
    sentence("Least evidence with the bid", inSentence(evidence)),
    limit !== null && isTested ? sentence("At completion", acceptanceText) : null,
    yearsBetweenTests !== null && isChosen(input.choices, "later-tests")
      ? sentence("Later", `tested again ${yearsInWords(yearsBetweenTests)} by the same method`)
      : null,
    limit === null || placeOf(requirement) === "warranty" ? null : sentence("If missed", remedyText),
    sentence("Reason", reason),
    gateLine(requirement),
  );
  return limitSource === "" ? whole : noted(`Source of the limit: ${limitSource}.`, whole);
}

/** The requirements of one article, in the order of the criteria and then of the own clauses. */
export const requirementParagraphs = (input: DraftingInput, place: RequirementPlace): readonly Paragraph[] =>
  input.requirements
    .filter((requirement) => requirement.isOn && placeOf(requirement) === place)
    .map((requirement) => requirementParagraph(input, requirement));
