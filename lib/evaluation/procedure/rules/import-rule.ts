import { type AmendedKind, freezingStep, heldParts, lockOn, type Procedure, sameValue } from "#lib/procedure";
import type { ProjectFile } from "../../schema";
import type { StandingDocuments } from "../project-documents";
import { procedureIn } from "../standing-project";
import { heldFields } from "./held-fields";
import { breach, type RuleBreach } from "./model";

type Told = Readonly<{
  text: ProjectFile;
  project: Readonly<{ procedure?: Procedure }> & Record<AmendedKind, unknown>;
}>;

/**
 * Why a project file is not opened beside the project that it was saved from; null where it may be. A file makes a
 * project of its own and changes no other. One that tells of the freezing of the project that stands here has to hold
 * what is frozen there, or other criteria would pass for the frozen ones. A file that tells of no freezing is a copy.
 */
export function importRefusal({ text, project }: Told, standing: StandingDocuments): RuleBreach | null {
  const there = procedureIn(standing);
  const frozen = freezingStep(there);
  const told = project.procedure ?? null;
  if (frozen === null || told === null || freezingStep(told) === null) return null;
  const [{ body: name } = { body: { name: "" } }] = standing("brief");
  const head = `This file was saved from the project “${name.name}”, which stands here with frozen criteria`;
  const way =
    "What is frozen changes by an amendment in that project. To try other criteria in a copy, take “procedure” out of the file.";
  if (!isBeginning(told.steps, there.steps) || !isBeginning(told.amendments, there.amendments))
    return breach(`${head}, and tells of stages or amendments that it does not have. ${way}`, ["procedure"]);
  const fields = (["requirements", "brief"] as const).flatMap((kind) => {
    const lock = lockOn(there, kind);
    const [stands] = standing(kind);
    if (lock === null || stands === undefined) return [];
    if (sameValue(heldParts(lock, stands.model), heldParts(lock, project[kind]))) return [];
    return heldFields(lock, { text: stands.body, model: stands.model }, { text: text[kind], model: project[kind] });
  });
  return fields.length === 0
    ? null
    : breach(`${head}, and its criteria are not the ones that stand there. ${way}`, fields);
}

/** Whether what a file tells of is how it began there; a file may be older than what happened since. */
const isBeginning = (told: readonly unknown[], there: readonly unknown[]): boolean =>
  sameValue(told, there.slice(0, told.length));
