import { peopleIn, scoresheetsIn } from "../standing-project";
import { breach, moveOf, type Rule } from "./model";

/** Whoever has handed in a scoresheet stays on the list as an evaluator, under the same name. */
export const peopleRefusal: Rule = (attempt) => {
  const move = moveOf(attempt, "people");
  if (move === undefined) return null;
  const after = move.after?.model.people ?? [];
  for (const { evaluator } of scoresheetsIn(attempt.standing)) {
    const before = peopleIn(attempt.standing).find(({ id }) => id === evaluator.id);
    const person = after.find(({ id }) => id === evaluator.id);
    if (before === undefined || (person?.name === before.name && person.roles.includes("evaluator"))) continue;
    return breach(
      `${evaluator.name} has handed in a scoresheet and stays on the list as an evaluator under this name.`,
      [before.name],
    );
  }
  return null;
};
