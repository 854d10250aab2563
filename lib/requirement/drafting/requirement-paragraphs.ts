import { formatCondition, isConditionStated, methodOf, propertyOf } from "#lib/claim";
import { inSentence } from "#lib/figure";
import type { ClausePlace, Requirement } from "../model";
import { type ClauseBlank, clauseAsks } from "./blanks";
import { isChosen } from "./choices";
import { askedOfInWords, figureInWords, limitInWords } from "./limit-in-words";
import type { DraftingInput, Paragraph } from "./model";
import { noted, openBlank, paragraph } from "./paragraph";

/** Articles that hold requirements. */
type RequirementPlace = ClausePlace | "evaluation";

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
function placeOf({ subject, limit, asked, place }: Requirement): RequirementPlace {
  if ((limit === null && asked === "") || subject?.dimension.startsWith("money")) return "evaluation";
  if (subject === null) return place;
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

/** What a clause says, or a blank that leads to its field. */
const ofClause = (requirement: Requirement, field: ClauseBlank, written: string) =>
  written === "" ? openBlank(clauseAsks(field, requirement)) : written;

export function methodLine(requirement: Requirement): string | null {
  const { method, edition } = requirement;
  if (method === null) return null;
  return `Method: ${methodOf(method).designation}, ${ofClause(requirement, "edition", edition.text)}.`;
}

const sentence = (label: string, text: string) => `${label}: ${text.replace(/\.$/, "")}.`;

const notShownWords = {
  "keep-open": "where the figure is not shown, the gate stays open until it is",
  "ask-first": "where the figure is not shown, the bidder is asked before anything is decided",
  discount: "where the figure is not shown as asked for, the gate stays open until it is",
  "counts-as-worst": "a figure that is not shown counts as one that falls short",
  "gate-fails": "a figure that is not shown falls short",
} as const;

const gateLine = ({ criterion, role }: Requirement): string | null =>
  criterion === null || !role.startsWith("gates")
    ? null
    : `Use in the evaluation: this is a gate. A bid whose figure falls short does not pass; ${notShownWords[criterion.evidence.shortfall]}.`;

/** Whether the text limits how hard the field is. */
export const limitsImpact = ({ requirements }: DraftingInput): boolean =>
  requirements.some(({ isOn, limit, subject }) => isOn && limit !== null && subject?.dimension === "impactLevel");

const yearsInWords = (years: number) => (years === 1 ? "every year" : `every ${Number(years.toPrecision(3))} years`);

/** A limit for the new field says nothing of an old one: the warranty does. */
const laterLine = ({ condition }: Requirement, years: number): string =>
  `Later: tested again ${yearsInWords(years)} by the same method. ${condition.age.kind === "new" ? "The limits in service of @warranty hold then." : "The same limit holds then."}`;

/** One requirement with all that belongs to it: method, evidence, tests, remedy and reason. */
function requirementParagraph(input: DraftingInput, requirement: Requirement): Paragraph {
  const { limit, evidence, acceptance, yearsBetweenTests, remedy, reason, limitSource } = requirement;
  const isTested = requirement.method !== null;
  const acceptanceText = ofClause(requirement, "acceptance", acceptance);
  const remedyText = ofClause(requirement, "remedy", remedy);
  const { id: from } = requirement;
  const stated = paragraph(
    headOf(requirement),
    requirement.criterion === null ? null : askedOfInWords(requirement.criterion.askedOf),
    methodLine(requirement),
    sentence("Least evidence with the bid", inSentence(evidence)),
    limit !== null && isTested ? sentence("At completion", acceptanceText) : null,
    yearsBetweenTests !== null && isChosen(input.choices, "later-tests")
      ? laterLine(requirement, yearsBetweenTests)
      : null,
    limit === null || placeOf(requirement) === "warranty" ? null : sentence("If missed", remedyText),
    sentence("Reason", reason),
    gateLine(requirement),
  );
  const whole = { ...stated, from };
  return limitSource === "" ? whole : noted(`Source of the limit: ${limitSource}.`, whole);
}

/** The requirements of one article, in the order of the criteria and then of the own clauses. */
export const requirementParagraphs = (input: DraftingInput, place: RequirementPlace): readonly Paragraph[] =>
  input.requirements
    .filter((requirement) => requirement.isOn && placeOf(requirement) === place)
    .map((requirement) => requirementParagraph(input, requirement));
