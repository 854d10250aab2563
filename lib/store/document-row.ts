import type { Transaction } from "kysely";
import type { Editor } from "#lib/access";
import type { WrittenBody } from "./bodies";
import { isId } from "./id";
import { type DocumentKind, type Place, type RecordAction, standsOnce } from "./model";
import type { Change, DocumentState } from "./record-entry";
import type { DocumentRow, Tables } from "./tables";

/** The row at a place, removed or not, in a project removed or not. */
export async function documentRow(transaction: Transaction<Tables>, place: Place): Promise<DocumentRow | null> {
  const row = await transaction
    .selectFrom("document")
    .selectAll()
    .where("project_id", "=", place.project)
    .where("kind", "=", place.kind)
    .where("id", "=", place.id)
    .executeTakeFirst();
  return row ?? null;
}

/** The row at a place if it is not removed. */
export async function standingRow(transaction: Transaction<Tables>, place: Place): Promise<DocumentRow | null> {
  const row = await documentRow(transaction, place);
  return row?.removed_at === null ? row : null;
}

/** How a document stood in a version, from the record; null if it never stood in that one. */
export async function recordedState(
  transaction: Transaction<Tables>,
  { project, kind, id }: Place,
  version: number,
): Promise<DocumentState | null> {
  const page = 20; // bodies are large, and what is asked for is nearly always among the last
  for (let before = 2 ** 31 - 1; ; ) {
    const rows = await transaction
      .selectFrom("record")
      .select(["seq", "after"])
      .where("project_id", "=", project)
      .where("kind", "=", kind)
      .where("id", "=", id)
      .where("seq", "<", before)
      .orderBy("seq", "desc")
      .limit(page)
      .execute();
    for (const { after } of rows) {
      const state: DocumentState | null = after === null ? null : JSON.parse(after);
      if (state?.version === version) return state;
    }
    const last = rows.at(-1);
    if (last === undefined || rows.length < page) return null;
    before = last.seq;
  }
}

/** The row of a document that is to be added after the others of its kind, in version 1. `ahead` more of them come before it. */
export async function addedRow(
  transaction: Transaction<Tables>,
  place: Place,
  written: WrittenBody,
  when: Readonly<{ editor: Editor; at: string }>,
  ahead = 0,
): Promise<DocumentRow> {
  return newDocumentRow(place, written, (await nextPosition(transaction, place.project, place.kind)) + ahead, when);
}

/** The position after the last of a kind, removed ones included so that they come back where they stood. */
async function nextPosition(transaction: Transaction<Tables>, project: string, kind: DocumentKind): Promise<number> {
  const last = await transaction
    .selectFrom("document")
    .select("position")
    .where("project_id", "=", project)
    .where("kind", "=", kind)
    .orderBy("position", "desc")
    .limit(1)
    .executeTakeFirst();
  return last ? last.position + 1 : 0;
}

/**
 * The id a new document gets: the one given, or a new one; what stands once stands under its kind.
 * @throws RangeError if the id given is none, or not the kind where it has to be
 */
export function documentId(kind: DocumentKind, given: string | undefined, newId: () => string): string {
  const id = given ?? (standsOnce(kind) ? kind : newId());
  if (!isId(id)) throw new RangeError(`an id has 1 to 64 of a–z, 0–9 and inner hyphens, got “${id}”`);
  if (standsOnce(kind) && id !== kind) throw new RangeError(`the id of the ${kind} is “${kind}”, got “${id}”`);
  return id;
}

/** A row for a document in version 1. */
export function newDocumentRow(
  { project, kind, id }: Place,
  { text, format }: WrittenBody,
  position: number,
  { editor, at }: Readonly<{ editor: Editor; at: string }>,
): DocumentRow {
  const stood = { updated_at: at, updated_by: editor.name, removed_at: null };
  return { project_id: project, kind, id, version: 1, format, position, body: text, ...stood };
}

/** How a row stands in the record: null if it is removed. */
export function documentState(row: DocumentRow | null): DocumentState | null {
  if (row === null || row.removed_at !== null) return null;
  return { version: row.version, format: row.format, position: row.position, body: JSON.parse(row.body) };
}

/** What happened to a document, for the record. */
export const documentChange = (
  action: RecordAction,
  before: DocumentRow | null,
  after: DocumentRow,
  { id: person }: Editor,
): Change => ({
  at: after.updated_at,
  who: after.updated_by,
  person,
  action,
  kind: after.kind,
  id: after.id,
  before: documentState(before),
  after: documentState(after),
});

/** The columns of a row that a change may write. */
export const writtenColumns = ({
  version,
  format,
  position,
  body,
  updated_at,
  updated_by,
  removed_at,
}: DocumentRow): Partial<DocumentRow> => ({ version, format, position, body, updated_at, updated_by, removed_at });
