import type { ColumnType } from "kysely";
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
  organisation: OrganisationRow;
  person: PersonRow;
  membership: MembershipRow;
  project_person: ProjectPersonRow;
  way_in: WayInRow;
  attempt: AttemptRow;
  presence: PresenceRow;
} & SignInTables;

/** An owner of projects. */
export type OrganisationRow = {
  id: string;
  /** Empty until its first administrator named it. */
  name: string;
  made_at: string;
};

/** The sign-in library writes times in the type that a database has for them: texts in SQLite, dates in PostgreSQL. */
type LibraryTime = ColumnType<string | Date, string | Date, string | Date>;

/** Somebody who signs in. The columns are those that the sign-in library asks for. */
export type PersonRow = {
  id: string;
  name: string;
  email: string;
  email_verified: ColumnType<number | boolean, number | boolean, number | boolean>;
  image: string | null;
  created_at: LibraryTime;
  updated_at: LibraryTime;
};

/** Tables of the sign-in library, with those of their columns that we write or read beside it. */
type SignInTables = {
  sign_in: { id: string; person_id: string; token: string; expires_at: LibraryTime };
  credential: CredentialRow;
  one_time_value: { id: string; identifier: string };
};

/** What somebody signs in by. `provider_id` is "credential" for a password, which is stored as its scrypt hash. */
type CredentialRow = {
  id: string;
  account_id: string;
  provider_id: string;
  person_id: string;
  password: string | null;
  created_at: LibraryTime;
  updated_at: LibraryTime;
};

/** Somebody belongs to an organisation, since when and until when. */
export type MembershipRow = {
  organisation_id: string;
  person_id: string;
  role: "administrator" | "member";
  made_at: string;
  ended_at: string | null;
};

/** Who stands on the list of people of a project; follows from its document. */
export type ProjectPersonRow = {
  project_id: string;
  person_id: string;
};

/** A link by which somebody sets a password, once. The token itself is known to whoever got the link alone. */
export type WayInRow = {
  token_hash: string;
  purpose: "first-owner" | "invitation" | "new-password";
  /** Null for the first owner, who is nobody yet. */
  person_id: string | null;
  made_by: string | null;
  made_at: string;
  expires_at: string;
  used_at: string | null;
};

/** Attempts to sign in that failed, by the hash of what was tried. */
export type AttemptRow = {
  key: string;
  failures: number;
  last_at: string;
};

/** An open page of somebody, by a random id that the page drew; it lives briefly. */
export type PresenceRow = {
  project_id: string;
  page: string;
  /** Where in the project, as the path of the page below it: "brief". */
  place: string;
  editor: string;
  name: string;
  /** Since when that page stands at that place. */
  since: string;
  seen_at: string;
};

export type ProjectRow = {
  id: string;
  organisation_id: string;
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
