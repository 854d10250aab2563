import type { Person } from "#lib/people";
import type { Committee, Scoresheet } from "./model";

/** How far the scoring has come: who has handed in, and whose sheet is awaited. No score is told. */
export type Scoring = Readonly<{
  stage: "nobody-listed" | "scoring" | "all-in" | "opened";
  handedIn: readonly Readonly<{ id: string; name: string; at: string }>[];
  awaited: readonly Readonly<{ id: string; name: string }>[];
}>;

export function scoringOf(
  people: readonly Person[],
  scoresheets: readonly Scoresheet[],
  { opened }: Pick<Committee, "opened">,
): Scoring {
  const evaluators = people.filter(({ roles }) => roles.includes("evaluator"));
  const handedIn = scoresheets.map(({ evaluator, handedInAt }) => ({ ...evaluator, at: handedInAt }));
  const awaited = evaluators
    .filter(({ id }) => handedIn.every((sheet) => sheet.id !== id))
    .map(({ id, name }) => ({ id, name }));
  if (opened !== null) return { stage: "opened", handedIn, awaited: [] };
  if (evaluators.length === 0) return { stage: "nobody-listed", handedIn, awaited };
  return { stage: awaited.length === 0 ? "all-in" : "scoring", handedIn, awaited };
}
