import { type Actor, actorOf, type Unlisted } from "#lib/people";
import type { Doer, Procedure } from "#lib/procedure";
import type { ProjectKind, ProjectMove, StandingDocuments } from "../project-documents";
import { peopleIn, procedureIn } from "../standing-project";

/** Everything that is about to be written together, and how the project stands before. */
export type ChangeAttempt = Readonly<{
  editor: Doer & Readonly<{ unlisted: Unlisted }>;
  at: string;
  /** One document as it was typed, or several that the server composed. */
  way: "form" | "act";
  moves: readonly ProjectMove[];
  standing: StandingDocuments;
}>;

/** Why a change is not made; see the store for what becomes of it. */
export type RuleBreach = Readonly<{ sentence: string; fields: readonly string[]; text: "kept" | "let-go" }>;

export type Rule = (attempt: ChangeAttempt) => RuleBreach | null;

export const breach = (sentence: string, fields: readonly string[] = []): RuleBreach => ({
  ...{ sentence, fields },
  text: "kept",
});

export const moveOf = <K extends ProjectKind>(
  { moves }: Pick<ChangeAttempt, "moves">,
  kind: K,
): Extract<ProjectMove, { kind: K }> | undefined =>
  moves.find((move): move is Extract<ProjectMove, { kind: K }> => move.kind === kind);

export const movesOf = <K extends ProjectKind>(
  { moves }: Pick<ChangeAttempt, "moves">,
  kind: K,
): readonly Extract<ProjectMove, { kind: K }>[] =>
  moves.filter((move): move is Extract<ProjectMove, { kind: K }> => move.kind === kind);

/** Whoever asks, with what they may do. */
export const actorIn = ({ editor, standing }: ChangeAttempt): Actor => actorOf(peopleIn(standing), editor);

/** The procedure as the change would leave it. */
export const procedureAfter = (attempt: ChangeAttempt): Procedure =>
  moveOf(attempt, "procedure")?.after?.model ?? procedureIn(attempt.standing);
