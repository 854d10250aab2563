import type { Procedure, StageId } from "./model";
import { stageOf } from "./stages";

/** A move that the order of the stages allows. A way back asks for a reason. */
export type NextStage = Readonly<{ stage: Exclude<StageId, "draft">; way: "on" | "back" }>;

const nextOf: Readonly<Record<StageId, readonly NextStage[]>> = {
  draft: [{ stage: "frozen", way: "on" }],
  frozen: [{ stage: "prices-open", way: "on" }],
  "prices-open": [{ stage: "evaluated", way: "on" }],
  evaluated: [
    { stage: "recommended", way: "on" },
    { stage: "prices-open", way: "back" },
  ],
  recommended: [
    { stage: "awarded", way: "on" },
    { stage: "prices-open", way: "back" },
  ],
  awarded: [],
};

/** Where a project may go from its stage. Criteria are never thawed: they are amended. */
export const nextStages = (procedure: Procedure): readonly NextStage[] => nextOf[stageOf(procedure)];
