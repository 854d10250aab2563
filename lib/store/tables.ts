import type { DocumentKind, ProjectOrigin, RecordAction } from "./model";

/** Times are ISO 8601 in UTC, bodies JSON texts. Text and integer only, so that both databases hold the same. */
export type Tables = {
  project: ProjectRow;
  document: DocumentRow;
  draft: DraftRow;
  record: RecordRow;
};

export type ProjectRow = {
  id: string;
  name: string;
  owner: string;
  origin: ProjectOrigin;
  created_at: string;
  created_by: string;
  changed_at: string;
  changed_by: string;
  removed_at: string | null;
  head_seq: number;
  head_hash: string;
};

export type DocumentRow = {
  project_id: string;
  kind: DocumentKind;
  id: string;
  version: number;
  format: number;
  position: number;
  body: string;
  updated_at: string;
  updated_by: string;
  removed_at: string | null;
};

export type DraftRow = {
  project_id: string;
  kind: DocumentKind;
  id: string;
  editor: string;
  based_on_version: number;
  body: string;
  saved_at: string;
};

export type RecordRow = {
  project_id: string;
  seq: number;
  at: string;
  who: string;
  action: RecordAction;
  kind: DocumentKind | "project";
  id: string;
  before: string | null;
  after: string | null;
  previous_hash: string;
  hash: string;
};
