import { ratingMeasure, shortfallRules, valueFunctions } from "#lib/criteria";
import { evidenceLevels } from "#lib/evaluation";
import { inSentence } from "#lib/figure";
import { capitalised } from "../../../../_components/in-words";
import { gateAsTyped } from "./criterion-kinds";
import { type CriterionText, measureOf } from "./measure-choices";
import { swingInWords } from "./weighing-rows";

/** Of which bids a criterion is asked, as typed; empty where of all. */
export function askedOfAsTyped({ askedOf }: Pick<CriterionText, "askedOf">): string {
  if (askedOf === undefined || askedOf.kind === "every-bid") return "";
  const measure = measureOf(askedOf.measure)?.label ?? askedOf.measure;
  return `Asked only of bids with ${inSentence(measure)} ${gateAsTyped(askedOf.is)}.`;
}

/** How a criterion scores, as typed: "Target window, from 60 g or 200 g into 80 g to 120 g"; empty without a score. */
export const scoreAsTyped = (criterion: Pick<CriterionText, "valueFunction">): string =>
  criterion.valueFunction.kind === "none"
    ? ""
    : `${capitalised(valueFunctions[criterion.valueFunction.kind].label)}, ${swingInWords(criterion)}`;

/** What a criterion asks for and does, as typed, in sentences. */
export function criterionAsTyped(criterion: Omit<CriterionText, "id" | "weight">): readonly string[] {
  return [...rulesAsTyped(criterion), ...proofAsTyped(criterion)].filter((sentence) => sentence !== "");
}

function rulesAsTyped(criterion: Omit<CriterionText, "id" | "weight">): readonly string[] {
  const { gate } = criterion;
  const score = scoreAsTyped(criterion);
  return [
    gate.kind === "none" ? "No gate." : `Gate: ${gateAsTyped(gate)}.`,
    score === "" ? "No score." : `Score: ${score}.`,
    askedOfAsTyped(criterion),
  ];
}

/** The least evidence and what a shortfall does; people who rate need no proof from themselves. */
function proofAsTyped({ measure, evidence }: Pick<CriterionText, "measure" | "evidence">): readonly string[] {
  if (measure === ratingMeasure.id) return [];
  const least = evidenceLevels.find(({ level }) => level === evidence.least)?.label ?? evidence.least;
  return [
    `Least evidence that counts: ${inSentence(least)}.`,
    shortfallRules[evidence.shortfall].explanation,
    evidence.shortfall === "discount" ? `Taken off: ${evidence.discount ?? ""} of the points.` : "",
  ];
}
