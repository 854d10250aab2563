import { createHash } from "node:crypto";
import canonicalize from "canonicalize";
import type { DocumentKind, ProjectOrigin, RecordAction, RecordedKind } from "./model";
import type { RecordRow } from "./tables";

/*
 * The record of a project, and how to verify it without Evenfield
 * ---------------------------------------------------------------
 * Every change to a project or to one of its documents appends one entry, in the same transaction as the change. The
 * entries of a project are numbered 1, 2, 3 … without gaps. An entry is this JSON object, with exactly these members:
 *
 *   project       id of the project                                                          table record: project_id
 *   seq           number of the entry, an integer                                                            seq
 *   at            when, ISO 8601 in UTC ("2026-11-25T10:30:00.000Z")                                           at
 *   who           name of the editor                                                                         who
 *   person        id of the editor; this member is absent from entries made before editors had ids           person (null)
 *   action        "create", "import", "replace", "rename", "remove", "restore" or "refuse"                   action
 *   kind          "project", the kind of a document, such as "brief", "bid" or "attachment", or "refusal"    kind
 *   id            id of what was changed; of the project itself for kind "project"                           id
 *   before        how it stood before, or null if it did not stand                                           before
 *   after         how it stands after, or null if it was removed                                             after
 *   previousHash  hash of the entry before; 64 zeros in entry 1                                              previous_hash
 *
 * A document stands as {"version", "format", "position", "body"}: three integers and the body, the form as it was
 * typed. A project stands as {"name", "owner", "origin"}, three texts. Columns before and after hold the canonical JSON of
 * these objects; in the entry they are objects, not texts. Bodies of scoresheets and of sealed prices are unreadable
 * until they are opened; seals.ts says how to open them with the key that the opening made public.
 *
 * A change that a rule of the project did not allow changes nothing and appends an entry all the same: action "refuse",
 * kind "refusal", an id of its own, before null, and after {"because", "fields", "documents"}: the sentence that was
 * answered, what it would have touched, and which documents were to be written how. No table holds a refusal.
 *
 *   hash = SHA-256, in lower-case hexadecimal, of the UTF-8 bytes of the entry in canonical JSON (RFC 8785)
 *
 * RFC 8785 in short: no white space, members sorted by the UTF-16 code units of their names, texts escaped and numbers
 * written as ECMAScript's JSON.stringify does.
 *
 * To verify: read the entries of a project by seq. (1) seq counts 1, 2, 3 …  (2) previousHash is the hash of the entry
 * before, or 64 zeros.  (3) The hash, computed anew, is the one stored.  (4) before is what the last entry on the same
 * kind and id left as after, or null if there was none. These four hold for a saved file as well (record-file.ts).  (5) head_seq and head_hash in table project belong to
 * the last entry, changed_at and changed_by to the last that is no refusal, created_at and created_by to the first.  (6) What the tables project and document
 * hold is the after of the last entry on it, with updated_at and updated_by those of that entry. What was removed keeps
 * its row as it stood before, with removed_at the time of the removal and a version one higher; restoring it adds one again.
 *
 * What this shows: that nobody who lacks write access to the whole database changed anything past or present unseen. Somebody
 * with full access can compute a new chain from any entry on. Against that, write the head hash down elsewhere (in the
 * minutes, in a mail): a record that is verified and contains that hash is the same up to there.
 */

/** A document as the record holds it. */
export type DocumentState = Readonly<{ version: number; format: number; position: number; body: unknown }>;

/** A project's own facts as the record holds them. */
export type ProjectState = Readonly<{ name: string; owner: string; origin: ProjectOrigin }>;

/** A change that a rule of the project did not allow, as the record holds it: never what was sent. */
export type RefusalState = Readonly<{
  because: string;
  fields: readonly string[];
  documents: readonly Readonly<{ attempted: RecordAction; kind: DocumentKind; id: string }>[];
}>;

type State = DocumentState | ProjectState | RefusalState;

/** One thing that happened. `person` is null only in what was recorded before persons had ids. */
export type Change = Readonly<{
  at: string;
  who: string;
  person: string | null;
  action: RecordAction;
  kind: RecordedKind;
  id: string;
  before: State | null;
  after: State | null;
}>;

/** previousHash of a project's first entry. */
export const genesisHash = "0".repeat(64);

/** Canonical JSON by RFC 8785. */
export function canonicalJson(value: unknown): string {
  const text = canonicalize(value);
  if (text === undefined) throw new TypeError(`canonical JSON needs a JSON value, got ${typeof value}`);
  return text;
}

/** SHA-256 of a text in UTF-8, in lower-case hexadecimal. */
export const sha256Of = (text: string): string => createHash("sha256").update(text, "utf8").digest("hex");

/** The row of an entry that follows on `previous`, with its hash. */
export function recordRow(
  previous: Readonly<{ project: string; seq: number; hash: string }>,
  { at, who, person, action, kind, id, before, after }: Change,
): RecordRow {
  const row = {
    project_id: previous.project,
    seq: previous.seq + 1,
    ...{ at, who, person, action, kind, id },
    before: before === null ? null : canonicalJson(before),
    after: after === null ? null : canonicalJson(after),
    previous_hash: previous.hash,
  };
  return { ...row, hash: entryHash(row) };
}

/**
 * The hash that belongs to an entry as stored.
 * @throws SyntaxError if before or after hold no JSON
 */
export function entryHash(row: Omit<RecordRow, "hash">): string {
  const { project_id: project, previous_hash: previousHash, seq, at, who, person, action, kind, id } = row;
  const before: unknown = row.before === null ? null : JSON.parse(row.before);
  const after: unknown = row.after === null ? null : JSON.parse(row.after);
  const named = person === null ? {} : { person };
  const entry = { project, seq, at, who, ...named, action, kind, id, before, after, previousHash };
  return sha256Of(canonicalJson(entry));
}
