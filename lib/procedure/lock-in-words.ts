import type { Lock } from "./locks";
import type { Procedure, StageId, StageStep } from "./model";
import { dayOf } from "./moments";
import { stages } from "./stages";

const labelOf = (id: StageId): string => stages.find((stage) => stage.id === id)?.label ?? id;

/** The last move to the stage that began to hold something. */
const stepTo = ({ steps }: Procedure, stage: StageId): StageStep | undefined =>
  steps.findLast((step) => step.stage === stage) ?? steps.at(-1);

/** Why something can't be changed, since when and by whom, and which way is left. */
export function explainLock(procedure: Procedure, { from, opens }: Lock, what: string): string {
  const step = stepTo(procedure, from);
  const since = step === undefined ? "" : ` since ${dayOf(step.at)}, set by ${step.by.name}`;
  const stands = `${what} can’t be changed: the project is at the stage “${labelOf(from)}”${since}.`;
  switch (opens) {
    case "by-amendment":
      return `${stands} What is frozen changes by an amendment with a reason, which every later page shows.`;
    case "by-going-back":
      return `${stands} To change it, the project goes back to “${labelOf("prices-open")}” with a reason.`;
    case "never":
      return `${stands} It stays as it was before prices were read.`;
  }
}
