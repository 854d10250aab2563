import type { Transaction } from "kysely";
import type { Editor } from "#lib/access";
import type { Database } from "./database";
import { lockedProject } from "./head";
import { isId } from "./id";
import type { Address, Draft, DraftOutcome, Place } from "./model";
import type { DraftRow, Tables } from "./tables";
import { textOf } from "./text-form";

/**
 * What was typed and is not saved, one for each editor and document, whether it parses or not. The document need not
 * exist. Drafts are no part of the record. Saving a document clears the editor's draft on the version saved over; a
 * draft on an older version stays until it is cleared or kept anew.
 */
export type Drafts = Readonly<{
  /** Keeps a form as it is, in place of the editor's last draft on it; gone if there was never such a project. */
  keep: (address: Address, form: unknown, editor: Editor) => Promise<DraftOutcome>;
  read: (place: Place, editor: Editor) => Promise<Draft | null>;
  /** All drafts of an editor in a project, the last first. */
  list: (project: string, editor: Editor) => Promise<readonly Draft[]>;
  /** With a version only the draft that was typed over it. */
  clear: (place: Place & Readonly<{ version?: number }>, editor: Editor) => Promise<void>;
}>;

export const draftsOf = (database: Database, now: () => string): Drafts => ({
  async keep(address, form, editor) {
    const typed = textOf(form, "any-text");
    if (typed.kind === "refused") return typed;
    if (!isId(address.project) || !isId(address.id)) return { kind: "gone" };
    return database.change(async (transaction) => {
      if ((await lockedProject(transaction, address.project)) === null) return { kind: "gone" };
      const at = now();
      await keepDraft(transaction, address, typed.text, { editor, at });
      return { kind: "kept", at };
    });
  },
  async read(place, editor) {
    if (!isId(place.project) || !isId(place.id)) return null;
    const row = await database.read((transaction) =>
      transaction
        .selectFrom("draft")
        .selectAll()
        .where("project_id", "=", place.project)
        .where("kind", "=", place.kind)
        .where("id", "=", place.id)
        .where("editor", "=", editor.id)
        .executeTakeFirst(),
    );
    return row ? draftFrom(row) : null;
  },
  async list(project, editor) {
    if (!isId(project)) return [];
    const rows = await database.read((transaction) =>
      transaction
        .selectFrom("draft")
        .selectAll()
        .where("project_id", "=", project)
        .where("editor", "=", editor.id)
        .orderBy("saved_at", "desc")
        .execute(),
    );
    return rows.map(draftFrom);
  },
  async clear(place, editor) {
    if (!isId(place.project) || !isId(place.id)) return;
    await database.change((transaction) => clearDraft(transaction, place, editor));
  },
});

type When = Readonly<{ editor: Editor; at: string }>;

/** Keeps a draft within a change that has locked its project. */
export async function keepDraft(
  transaction: Transaction<Tables>,
  { project, kind, id, version }: Address,
  body: string,
  { editor, at }: When,
): Promise<void> {
  const kept = { based_on_version: version, body, saved_at: at };
  await transaction
    .insertInto("draft")
    .values({ project_id: project, kind, id, editor: editor.id, ...kept })
    .onConflict((conflict) => conflict.columns(["project_id", "kind", "id", "editor"]).doUpdateSet(kept))
    .execute();
}

/** Clears an editor's draft; with a version, only the draft based on that. */
export async function clearDraft(
  transaction: Transaction<Tables>,
  place: Place & Readonly<{ version?: number }>,
  editor: Editor,
): Promise<void> {
  const drafts = transaction
    .deleteFrom("draft")
    .where("project_id", "=", place.project)
    .where("kind", "=", place.kind)
    .where("id", "=", place.id)
    .where("editor", "=", editor.id);
  const { version } = place;
  await (version === undefined ? drafts : drafts.where("based_on_version", "=", version)).execute();
}

const draftFrom = (row: DraftRow): Draft => ({
  kind: row.kind,
  id: row.id,
  basedOnVersion: row.based_on_version,
  body: JSON.parse(row.body),
  savedAt: row.saved_at,
});
