export type { Location } from "./database";
export type { Documents, NewPlace } from "./documents";
export type { Drafts } from "./drafts";
export { environmentLocation } from "./environment";
export type {
  Address,
  Conflict,
  DocumentKind,
  Draft,
  DraftOutcome,
  Gone,
  LoadedProject,
  NewDocument,
  NewProject,
  Place,
  ProjectOrigin,
  ProjectOutcome,
  ProjectSummary,
  RecordAction,
  Refusal,
  Refused,
  Saved,
  SaveOutcome,
  Schemas,
  StoredDocument,
  Upgrade,
  Upgrades,
} from "./model";
export { documentKinds } from "./model";
export type { Projects } from "./projects";
export type { ProjectRecord, RecordEntry } from "./record";
export { canonicalJson } from "./record-entry";
export { unreadBodies } from "./schema";
export { environmentStore, openStore, type Store, type StoreOptions } from "./store";
export { explainRefusal } from "./text-form";
export { explainRecordFault, type RecordFault, type RecordVerdict } from "./verify";
