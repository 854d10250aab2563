import { type Project, projectRequirements } from "#lib/evaluation";
import { type RegisterItem, startingRegister } from "#lib/submittal";

/** The lines that the specification asks for and that the register does not hold yet. */
export function lackingLines({ requirements, submittals = [] }: Project): readonly RegisterItem[] {
  const held = new Set(submittals.map(({ from }) => from));
  return startingRegister(projectRequirements(requirements), requirements.submittals).filter(
    ({ from }) => !held.has(from),
  );
}
