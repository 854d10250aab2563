import type { DocumentKind, ProjectOrigin, RecordAction, RecordedKind } from "./model";

/** Times are ISO 8601 in UTC, bodies JSON texts. Text and integer only, so that both databases hold the same; bytes of kept files are bytes in both. */
export type Tables = {
  project: ProjectRow;
  document: DocumentRow;
  draft: DraftRow;
  record: RecordRow;
  content: ContentRow;
  content_part: ContentPartRow;
  seal: SealRow;
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
  /** The words of name and owner as they are searched: see searched.ts. */
  searched: string;
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
  kind: RecordedKind;
  id: string;
  before: string | null;
  after: string | null;
  previous_hash: string;
  hash: string;
  /** Null in entries from before persons had ids. */
  person: string | null;
};

/** The key of what is sealed; it never leaves this table before its lock is opened. */
export type SealRow = {
  project_id: string;
  lock: string;
  key: string;
};

/** A kept file by its hash; the parts of it hold its bytes. It never changes and is never taken out. */
export type ContentRow = {
  project_id: string;
  sha256: string;
  bytes: number;
  kept_at: string;
};

/** Part of a file, counted from 0. */
export type ContentPartRow = {
  project_id: string;
  sha256: string;
  part: number;
  bytes: Uint8Array;
};
