import type { z } from "zod";
import type { Editor } from "#lib/access";
import type { Bodies } from "./bodies";
import type { Database } from "./database";
import {
  documentChange,
  documentId,
  documentRow,
  newDocumentRow,
  nextPosition,
  standingRow,
  updateDocument,
} from "./document-row";
import { clearDraft, keepDraft } from "./drafts";
import { append, headOf, lockedProject } from "./head";
import { isId } from "./id";
import type {
  Address,
  Conflict,
  DocumentKind,
  Gone,
  Place,
  Saved,
  SaveOutcome,
  Schemas,
  StoredDocument,
} from "./model";
import { projectRow } from "./project-row";
import type { DocumentRow } from "./tables";

/**
 * The documents of projects. Every write names the version it starts from and is refused if another one stands; then,
 * or if the document is gone, what was typed is kept as the editor's draft.
 */
export type Documents<S extends Schemas> = Readonly<{
  read: <K extends DocumentKind>(place: Place<K>) => Promise<StoredDocument<S, K> | null>;
  /** Adds a document after the others of its kind, in version 1; a conflict if one stands there already. */
  create: <K extends DocumentKind>(
    place: NewPlace<K>,
    body: z.input<S[K]>,
    editor: Editor,
  ) => Promise<SaveOutcome<S, K>>;
  replace: <K extends DocumentKind>(
    address: Address<K>,
    body: z.input<S[K]>,
    editor: Editor,
  ) => Promise<SaveOutcome<S, K>>;
  /** Takes a document out of its project. It can be restored; its place in the record stays. */
  remove: <K extends DocumentKind>(address: Address<K>, editor: Editor) => Promise<Saved | Conflict<S, K> | Gone>;
  /** Undoes a removal; gone if the document never was or its project is removed. A standing document stays as it is. */
  restore: <K extends DocumentKind>(place: Place<K>, editor: Editor) => Promise<Saved | Gone>;
}>;

/** Without an id a new one is drawn; brief and requirements have their kind as id. */
export type NewPlace<K extends DocumentKind> = Readonly<{ project: string; kind: K; id?: string | undefined }>;

type Parts<S extends Schemas> = Readonly<{
  database: Database;
  bodies: Bodies<S>;
  now: () => string;
  newId: () => string;
}>;

export function documentsOf<S extends Schemas>({ database, bodies, now, newId }: Parts<S>): Documents<S> {
  const conflict = <K extends DocumentKind>(kind: K, row: DocumentRow): Conflict<S, K> => ({
    kind: "conflict",
    version: row.version,
    savedBy: row.updated_by,
    savedAt: row.updated_at,
    current: bodies.read(kind, row),
  });

  return {
    async read(place) {
      if (!isId(place.project) || !isId(place.id)) return null;
      const row = await database.read(async (transaction) => {
        const project = await projectRow(transaction, place.project);
        return project?.removed_at === null ? standingRow(transaction, place) : null;
      });
      return row ? bodies.read(place.kind, row) : null;
    },

    async create({ project, kind, id: given }, body, editor) {
      const written = bodies.write(kind, body);
      if (written.kind === "refused") return written;
      const place = { project, kind, id: documentId(kind, given, newId) };
      if (!isId(project)) return { kind: "gone" };
      return database.change(async (transaction) => {
        const owner = await lockedProject(transaction, project);
        if (owner === null) return { kind: "gone" };
        const at = now();
        const row = await documentRow(transaction, place);
        if (row || owner.removed_at !== null) {
          await keepDraft(transaction, { ...place, version: 0 }, written.text, { editor, at });
          return row && row.removed_at === null && owner.removed_at === null ? conflict(kind, row) : { kind: "gone" };
        }
        const position = await nextPosition(transaction, project, kind);
        const added = newDocumentRow(place, written, position, { editor, at });
        await transaction.insertInto("document").values(added).execute();
        await append(transaction, headOf(owner), documentChange("create", null, added));
        await clearDraft(transaction, { ...place, version: 0 }, editor);
        return { kind: "saved", id: place.id, version: 1, at };
      });
    },

    async replace(address, body, editor) {
      const written = bodies.write(address.kind, body);
      if (written.kind === "refused") return written;
      if (!isId(address.project) || !isId(address.id)) return { kind: "gone" };
      return database.change(async (transaction) => {
        const owner = await lockedProject(transaction, address.project);
        if (owner === null) return { kind: "gone" };
        const at = now();
        const row = owner.removed_at === null ? await standingRow(transaction, address) : null;
        if (row?.version !== address.version) {
          await keepDraft(transaction, address, written.text, { editor, at });
          return row ? conflict(address.kind, row) : { kind: "gone" };
        }
        const after = {
          ...row,
          version: row.version + 1,
          format: written.format,
          body: written.text,
          ...by(editor, at),
        };
        await updateDocument(transaction, owner, "replace", row, after);
        await clearDraft(transaction, address, editor);
        return { kind: "saved", id: row.id, version: after.version, at };
      });
    },

    async remove(address, editor) {
      if (!isId(address.project) || !isId(address.id)) return { kind: "gone" };
      return database.change(async (transaction) => {
        const owner = await lockedProject(transaction, address.project);
        const row = owner?.removed_at === null ? await standingRow(transaction, address) : null;
        if (!owner || !row) return { kind: "gone" };
        if (row.version !== address.version) return conflict(address.kind, row);
        const at = now();
        const after = { ...row, version: row.version + 1, ...by(editor, at), removed_at: at };
        await updateDocument(transaction, owner, "remove", row, after);
        return { kind: "saved", id: row.id, version: after.version, at };
      });
    },

    async restore(place, editor) {
      if (!isId(place.project) || !isId(place.id)) return { kind: "gone" };
      return database.change(async (transaction) => {
        const owner = await lockedProject(transaction, place.project);
        const row = owner?.removed_at === null ? await documentRow(transaction, place) : null;
        if (!owner || !row) return { kind: "gone" };
        if (row.removed_at === null) return { kind: "saved", id: row.id, version: row.version, at: row.updated_at };
        const at = now();
        const after = { ...row, version: row.version + 1, ...by(editor, at), removed_at: null };
        await updateDocument(transaction, owner, "restore", row, after);
        return { kind: "saved", id: row.id, version: after.version, at };
      });
    },
  };
}

const by = (editor: Editor, at: string) => ({ updated_at: at, updated_by: editor.name });
