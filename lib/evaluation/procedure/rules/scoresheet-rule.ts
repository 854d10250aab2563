import { stageOf } from "#lib/procedure";
import { committeeIn, procedureIn } from "../standing-project";
import { actorIn, breach, moveOf, movesOf, type Rule } from "./model";

const notAfter = new Set(["prices-open", "evaluated", "recommended", "awarded"]);

/** Everybody hands in a sheet of their own, sealed, before the sheets are opened; opening changes nothing in them. */
export const scoresheetRefusal: Rule = (attempt) => {
  const actor = actorIn(attempt);
  const procedure = procedureIn(attempt.standing);
  const { opened } = committeeIn(attempt.standing);
  const isOpening = opened === null && (moveOf(attempt, "committee")?.after?.model.opened ?? null) !== null;
  for (const { id, before, after } of movesOf(attempt, "scoresheet")) {
    const sheet = after?.model;
    if (sheet === undefined) return breach("A scoresheet can’t be taken out of a project.");
    if (sheet.contents.kind === "open") {
      const isSame = before?.model.handedInAt === sheet.handedInAt && before.model.evaluator.id === sheet.evaluator.id;
      if (isOpening && isSame && before.model.contents.kind === "sealed") continue;
      return breach("Scoresheets are opened together, each as it was handed in.");
    }
    if (id !== actor.id || sheet.evaluator.id !== actor.id)
      return breach(`This is the scoresheet of ${sheet.evaluator.name}. Each evaluator hands in their own.`);
    if (sheet.handedInAt !== attempt.at) return breach("The time of a scoresheet is the time at which it arrives.");
    if (opened !== null) return breach("The scoresheets are open, so none can be handed in or changed any more.");
    if (procedure.prices === "sealed" && notAfter.has(stageOf(procedure)))
      return breach("Prices are open, so no scoresheet can be handed in any more.");
  }
  return null;
};
