import { notAgreed } from "#lib/committee";
import {
  completeness,
  hasReached,
  nextStages,
  type Procedure,
  type StageStep,
  sameValue,
  stageLabel,
  stageOf,
} from "#lib/procedure";
import { completenessFacts } from "../completeness-facts";
import type { StandingDocuments } from "../project-documents";
import { saysPrice } from "../says-price";
import { committeeIn, criteriaIn, procedureIn } from "../standing-project";
import { breach, type ChangeAttempt, moveOf, type Rule, type RuleBreach } from "./model";

/** The stages of a project only go on by what its present stage allows, by one step or amendment at a time, signed and dated by the server. */
export const procedureRefusal: Rule = (attempt) => {
  const move = moveOf(attempt, "procedure");
  if (move === undefined) return null;
  const before = procedureIn(attempt.standing);
  const after = move.after?.model;
  if (after === undefined) return breach("The stages of a project can’t be taken out of it.");
  const steps = added(before.steps, after.steps);
  const amendments = added(before.amendments, after.amendments);
  if (steps === null || amendments === null || steps.length + amendments.length > 1)
    return breach("What happened stays as it was recorded; a stage or an amendment is added, one at a time.");
  const [step] = steps;
  const [amendment] = amendments;
  const doing = step ?? amendment;
  if (doing !== undefined && (doing.at !== attempt.at || doing.by.id !== attempt.editor.id))
    return breach("A stage or an amendment has the time at which it happens and the name of who does it.");
  if (before.prices !== after.prices) return sealingRefusal(attempt, before);
  if (step !== undefined) return stepRefusal(attempt, before, step);
  return amendment === undefined ? null : amendmentRefusal(attempt, before, amendment.document);
};

/** What came to a list; null where something in it changed. */
function added<T>(before: readonly T[], after: readonly T[]): readonly T[] | null {
  return sameValue(before, after.slice(0, before.length)) ? after.slice(before.length) : null;
}

function sealingRefusal({ standing }: ChangeAttempt, before: Procedure): RuleBreach | null {
  if (stageOf(before) !== "draft")
    return breach("Whether prices are sealed is settled before the criteria are frozen.");
  if (standing("sealed-prices").length > 0)
    return breach("Sealed prices are entered already. They are opened after the criteria are frozen.");
  const priced = standing("bid").filter(({ model }) => saysPrice(model));
  if (priced.length === 0) return null;
  const letters = priced.map(({ model }) => model.letter).join(", ");
  return breach(
    `Bid${priced.length === 1 ? "" : "s"} ${letters} show${priced.length === 1 ? "s" : ""} prices already, so they can’t be sealed any more.`,
  );
}

function stepRefusal({ standing }: ChangeAttempt, before: Procedure, step: StageStep): RuleBreach | null {
  const next = nextStages(before).find(({ stage }) => stage === step.stage);
  if (next === undefined)
    return breach(`A project at the stage “${stageLabel(stageOf(before))}” can’t go to “${stageLabel(step.stage)}”.`);
  if (next.way === "back" && step.note.trim() === "") return breach("A step back needs a reason.");
  const open = openBefore(standing, before, step);
  return open === null ? null : breach(open);
}

/** What has to be done before a stage; null where all of it is. */
export function openBefore(
  standing: StandingDocuments,
  before: Procedure,
  { stage, bid }: Pick<StageStep, "stage" | "bid">,
): string | null {
  switch (stage) {
    case "frozen":
      return missingIn(standing);
    case "prices-open":
      return before.prices === "sealed" && stageOf(before) === "frozen"
        ? notAgreedIn(standing, "Sealed prices are opened once evaluators have agreed on every rated value.")
        : null;
    case "evaluated":
      if (standing("bid").length === 0) return "There is no bid to have evaluated.";
      return notAgreedIn(standing, "An evaluation is closed once evaluators have agreed on every rated value.");
    case "recommended":
      return null;
    case "awarded":
      return standing("bid").some(({ id }) => id === bid) ? null : "Name the bid that the award goes to.";
  }
}

function missingIn(standing: StandingDocuments): string | null {
  const missing = completeness(completenessFacts(standing)).filter(({ verdict }) => verdict === "missing");
  return missing.length === 0 ? null : missing.map(({ sentence }) => sentence).join(" ");
}

const mostNamed = 6;

function notAgreedIn(standing: StandingDocuments, why: string): string | null {
  const bids = standing("bid");
  const letterOf = (id: string) => bids.find((bid) => bid.id === id)?.model.letter ?? id;
  const open = notAgreed(
    committeeIn(standing),
    criteriaIn(standing),
    bids.map(({ id }) => id),
  );
  if (open.length === 0) return null;
  const named = open.slice(0, mostNamed).map(({ criterion, bid }) => `“${criterion}” for bid ${letterOf(bid)}`);
  const more = open.length - named.length;
  return `${why} Still open: ${named.join(", ")}${more > 0 ? ` and ${more} more` : ""}.`;
}

function amendmentRefusal(
  attempt: ChangeAttempt,
  before: Procedure,
  document: "brief" | "requirements",
): RuleBreach | null {
  const stage = stageOf(before);
  if (!hasReached(stage, "frozen")) return breach("Nothing is frozen yet, so there is nothing to amend.");
  if (hasReached(stage, "awarded")) return breach("The award is made, so what it rests on can’t be amended any more.");
  return moveOf(attempt, document) === undefined
    ? breach("An amendment is written together with what it changes.")
    : null;
}
