import type { Procedure, StageId, StageStep } from "./model";

/** The stages in their order. The page, the rules and the documents read this list. */
export const stages = [
  {
    id: "draft",
    label: "draft",
    meaning:
      "Everything may still be changed. Nothing is fixed, so nothing can be said to have been decided beforehand.",
  },
  {
    id: "frozen",
    label: "criteria frozen",
    meaning:
      "Criteria, limits, weights, field, use and the conventions of cost stand. They change by a dated amendment with a reason only.",
  },
  {
    id: "prices-open",
    label: "prices open",
    meaning:
      "Prices can be read and levelled. What evaluators agreed on before stays as it is where prices were sealed.",
  },
  { id: "evaluated", label: "evaluated", meaning: "Bids, prices, levelling and agreed values stand." },
  { id: "recommended", label: "recommended", meaning: "The recommendation has gone to the board." },
  {
    id: "awarded",
    label: "awarded",
    meaning: "The board has decided. Submittals, deliveries and tests on the finished field go on.",
  },
] as const satisfies readonly Readonly<{ id: StageId; label: string; meaning: string }>[];

export const stageIds = stages.map(({ id }) => id) as [StageId, ...Exclude<StageId, "draft">[]];

/** The stage a project has reached. */
export const stageOf = ({ steps }: Pick<Procedure, "steps">): StageId => steps.at(-1)?.stage ?? "draft";

/** Whether a project has come as far as a stage. */
export const hasReached = (stage: StageId, wanted: StageId): boolean =>
  stageIds.indexOf(stage) >= stageIds.indexOf(wanted);

/** The move by which the criteria were frozen; null while they are not. */
export const freezingStep = ({ steps }: Pick<Procedure, "steps">): StageStep | null =>
  steps.find(({ stage }) => stage === "frozen") ?? null;

/** Whether prices that are entered now are sealed: nobody reads them before they are opened. */
export const arePricesSealed = ({ prices, steps }: Procedure): boolean =>
  prices === "sealed" && steps.every(({ stage }) => stage === "frozen");

/** A project before anything was decided about its procedure. */
export const startingProcedure: Procedure = { prices: "open", steps: [], amendments: [] };
