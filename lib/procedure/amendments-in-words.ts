import type { Amendment, FieldChange, Procedure, StageId } from "./model";
import { dayOf } from "./moments";
import { freezingStep, stageOf, stages } from "./stages";

export const stageLabel = (id: StageId): string => stages.find((stage) => stage.id === id)?.label ?? id;

/** Where the project stands: "Criteria frozen on November 25, 2026, by Dana Ruiz. Stage: prices open, since …". */
export function stageInWords(procedure: Procedure): string {
  const frozen = freezingStep(procedure);
  if (frozen === null) return "Criteria are not frozen: the project is a draft, and everything in it may still change.";
  const last = procedure.steps.at(-1);
  const since =
    last === undefined || last === frozen ? "" : ` Stage: ${stageLabel(stageOf(procedure))}, since ${dayOf(last.at)}.`;
  return `Criteria frozen on ${dayOf(frozen.at)} by ${frozen.by.name}.${since}`;
}

/** "criteria, “Impact level as new”, gate, limit: 165 g → 175 g" */
export const changeInWords = ({ field, from, to }: FieldChange): string => `${field}: ${from} → ${to}`;

/** An amendment in one sentence, its changes apart: number, day, who, and why. */
export const amendmentInWords = ({ at, by, reason }: Amendment, index: number): string =>
  `Amendment ${index + 1}, ${dayOf(at)}, by ${by.name}: ${reason}`;

/**
 * What a project says that was opened from a file and tells of a freezing before that: its record begins with the file
 * and vouches for nothing earlier. Null for any other.
 * @param keptSince when the record of the project begins
 */
export function toldByFile(procedure: Procedure, keptSince: string): string | null {
  const frozen = freezingStep(procedure);
  return frozen === null || frozen.at >= keptSince
    ? null
    : `This project was opened from a file on ${dayOf(keptSince)}: what is told from before then is as the file told it, and the record here does not bear it out.`;
}

/**
 * Everything that every later page and document says of the procedure: the stage, then where it came from a file, then each
 * amendment with its changes.
 * @param keptSince when the record of the project begins
 */
export const procedureSentences = (procedure: Procedure, keptSince: string): readonly string[] => [
  [stageInWords(procedure), toldByFile(procedure, keptSince)].filter((sentence) => sentence !== null).join(" "),
  ...procedure.amendments.map(
    (amendment, index) => `${amendmentInWords(amendment, index)} (${amendment.changes.map(changeInWords).join("; ")})`,
  ),
];
