import { scoringOf } from "#lib/committee";
import { sameValue } from "#lib/procedure";
import { committeeIn, peopleIn, scoresheetsIn } from "../standing-project";
import { breach, moveOf, movesOf, type Rule } from "./model";

/** Values are agreed on over open sheets, and sheets are opened once, all of them together, when none is awaited. */
export const committeeRefusal: Rule = (attempt) => {
  const move = moveOf(attempt, "committee");
  if (move === undefined) return null;
  const before = committeeIn(attempt.standing);
  const after = move.after?.model;
  if (after === undefined) return breach("What the committee did can’t be taken out of a project.");
  if (!sameValue(before.opened, after.opened)) {
    const scoresheets = scoresheetsIn(attempt.standing);
    const { awaited } = scoringOf(peopleIn(attempt.standing), scoresheets, before);
    const opened = movesOf(attempt, "scoresheet").filter(({ after: sheet }) => sheet?.model.contents.kind === "open");
    if (before.opened !== null || after.opened === null || attempt.way === "form")
      return breach("Scoresheets are opened once, and stay open.");
    if (awaited.length > 0)
      return breach(`Sheets are still awaited from ${awaited.map(({ name }) => name).join(", ")}.`);
    if (opened.length !== scoresheets.length || scoresheets.length === 0)
      return breach("Scoresheets are opened together, and there has to be one.");
    if (after.opened.at !== attempt.at || after.opened.by.id !== attempt.editor.id)
      return breach("An opening has the time at which it happens and the name of who does it.");
  }
  const agreesEarly = after.opened === null && after.agreed.some(({ value }) => value !== null);
  return agreesEarly
    ? breach("Evaluators score alone first: values are agreed on once all scoresheets are in and open.")
    : null;
};
