export type {
  AccountPerson,
  Accounts,
  Belonging,
  Entry,
  EntryOutcome,
  OpenSignIn,
  SignedIn,
  SignInCookie,
  SignInOutcome,
  WayIn,
} from "./accounts";
export { newToken, tokenHash } from "./accounts";
export { type BackupCount, type BackupFault, backUp, explainBackupFault, restore } from "./backup";
export {
  type ContentFault,
  type Contents,
  explainContentFault,
  type FileFacts,
  type KeptFile,
  type Supplied,
} from "./contents";
export type { Location } from "./database";
export type { Documents, LastChanges, NewPlace } from "./documents";
export type { Drafts } from "./drafts";
export { environmentLocation } from "./environment";
export type {
  Act,
  ActedDocument,
  ActSetting,
  Attempt,
  DocumentAction,
  DocumentMove,
  Guard,
  RuleRefusal,
  Standing,
} from "./guard";
export type {
  ActOutcome,
  Address,
  Conflict,
  Digest,
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
  ProjectPage,
  ProjectPlace,
  ProjectSummary,
  ProjectWish,
  RecordAction,
  RecordedKind,
  Refusal,
  Refused,
  Saved,
  SaveOutcome,
  Schemas,
  StoredDocument,
  Upgrade,
  Upgrades,
} from "./model";
export { documentKinds, isGivenOut } from "./model";
export type { InviteOutcome, Member, MemberOutcome, Organisations } from "./organisations";
export type { PresenceOfOthers, Present } from "./presence";
export type { Projects } from "./projects";
export type { ProjectRecord, RecordEntry, RecordPage, RecordWish } from "./record";
export { canonicalJson, sha256Of } from "./record-entry";
export { recordFileVerdict, recordLines } from "./record-file";
export { unreadBodies } from "./schema";
export type { Scope } from "./scope";
export type { SignInSettings } from "./sign-in-library";
export {
  environmentPeople,
  environmentStore,
  firstOrganisation,
  openPeople,
  openStore,
  type People,
  type Store,
  type StoreOptions,
} from "./store";
export { explainRefusal } from "./text-form";
export { explainRecordFault, explainSetBack, type RecordFault, type RecordVerdict } from "./verify";
