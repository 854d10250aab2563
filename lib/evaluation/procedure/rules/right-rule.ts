import { type ActId, actRefused } from "#lib/people";
import { hasReached, stageOf } from "#lib/procedure";
import { actOfKind } from "../closed-kinds";
import type { ProjectMove } from "../project-documents";
import { procedureIn } from "../standing-project";
import { actorIn, breach, type ChangeAttempt, procedureAfter, type Rule } from "./model";

/** What a change of the procedure takes: freezing and amending are the architect’s too, stages after that are not. */
function actOfProcedure(attempt: ChangeAttempt): ActId {
  const [before, after] = [procedureIn(attempt.standing), procedureAfter(attempt)];
  if (after.amendments.length > before.amendments.length) return "freeze-and-amend";
  return hasReached(stageOf(before), "frozen") ? "move-stage" : "freeze-and-amend";
}

function actOf(move: ProjectMove, attempt: ChangeAttempt): ActId {
  if (move.kind === "procedure") return actOfProcedure(attempt);
  if (move.kind === "scoresheet") return move.after?.model.contents.kind === "open" ? "agree" : "score";
  return actOfKind[move.kind];
}

/** Everybody does what their role lets them do. */
export const rightRefusal: Rule = (attempt) => {
  const actor = actorIn(attempt);
  for (const move of attempt.moves) {
    const refused = actRefused(actor, actOf(move, attempt));
    if (refused !== null) return breach(refused);
  }
  return null;
};
