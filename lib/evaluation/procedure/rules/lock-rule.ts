import { explainLock, heldParts, lockOn, sameValue } from "#lib/procedure";
import { kindAtStart } from "../closed-kinds";
import type { ProjectMove } from "../project-documents";
import { procedureIn } from "../standing-project";
import { heldFields } from "./held-fields";
import { breach, type ChangeAttempt, procedureAfter, type Rule } from "./model";

/** An amendment of this document is written together with its change; the rule of the procedure looks at the amendment. */
const isAmended = (attempt: ChangeAttempt, { kind }: ProjectMove): boolean => {
  const before = procedureIn(attempt.standing).amendments.length;
  return procedureAfter(attempt)
    .amendments.slice(before)
    .some(({ document }) => document === kind);
};

/** What a stage holds fast stays as it is, whichever way the change comes; in what it leaves free, nothing is asked. */
export const lockRefusal: Rule = (attempt) => {
  const procedure = procedureIn(attempt.standing);
  for (const move of attempt.moves) {
    const lock = lockOn(procedure, move.kind);
    if (lock === null) continue;
    const [before, after] = [heldParts(lock, move.before?.model), heldParts(lock, move.after?.model)];
    if (move.before !== null && move.after !== null && sameValue(before, after)) continue;
    if (lock.opens === "by-amendment" && move.action === "replace" && isAmended(attempt, move)) continue;
    const read = (document: typeof move.before) => ({ text: document?.body, model: document?.model });
    return breach(
      explainLock(procedure, lock, kindAtStart(move.kind)),
      heldFields(lock, read(move.before), read(move.after)),
    );
  }
  return null;
};
