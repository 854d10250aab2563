export {
  amendmentInWords,
  changeInWords,
  procedureSentences,
  stageInWords,
  stageLabel,
  toldByFile,
} from "./amendments-in-words";
export {
  type CompletenessFacts,
  type CompletenessNote,
  type CompletenessTopic,
  completeness,
} from "./completeness";
export { fieldChanges } from "./field-changes";
export { explainLock } from "./lock-in-words";
export { heldParts, type Lock, lockOn } from "./locks";
export type { AmendedKind, Amendment, Doer, FieldChange, Procedure, Sealed, StageId, StageStep } from "./model";
export { dayOf } from "./moments";
export { type NextStage, nextStages } from "./next-stages";
export { sameValue } from "./same-value";
export {
  doerSchema,
  keyField,
  momentField,
  type ProcedureText,
  procedureSchema,
  type SealedPricesText,
  sealedPricesSchema,
  sealedSchema,
} from "./schema";
export { arePricesSealed, freezingStep, hasReached, stageOf, stages, startingProcedure } from "./stages";
