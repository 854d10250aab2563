import type { Transaction } from "kysely";
import type { z } from "zod";
import type { Editor } from "#lib/access";
import type { Bodies, WrittenBody } from "./bodies";
import type { Database } from "./database";
import { addedRow, documentId, documentRow, recordedState, standingRow } from "./document-row";
import { clearDraft, keepDraft } from "./drafts";
import type { Act, RuleRefusal } from "./guard";
import { lockedProject } from "./head";
import { isId } from "./id";
import {
  type ActOutcome,
  type Address,
  type Conflict,
  type DocumentKind,
  documentKinds,
  type Gone,
  isGivenOut,
  type Place,
  type Refused,
  type Saved,
  type SaveOutcome,
  type Schemas,
  type StoredDocument,
} from "./model";
import { appendRefusal, type Move, type Mover, type MoveWriting, refusedBy, standingOf } from "./moves";
import { projectRow } from "./project-row";
import type { RefusalState } from "./record-entry";
import { sealsOf } from "./seals";
import type { DocumentRow, Tables } from "./tables";

/**
 * The documents of projects. Every write names the version it starts from and is refused if another one stands; then,
 * or if the document is gone, what was typed is kept as the editor's draft. So it is, as a rule, where a rule of the project
 * refuses it, and the rules are asked of a stale version first. What was given out stays as it is.
 */
export type Documents<S extends Schemas> = Readonly<{
  read: <K extends DocumentKind>(place: Place<K>) => Promise<StoredDocument<S, K> | null>;
  /** The body that stood in a version, in today's format, from the record; null if there was none. */
  readVersion: <K extends DocumentKind>(address: Address<K>) => Promise<z.input<S[K]> | null>;
  /** How far a project has come, and who last changed which of some documents; unread, so cheap to ask often. */
  lastChanges: (
    project: string,
    documents: readonly Readonly<{ kind: DocumentKind; id: string }>[],
  ) => Promise<LastChanges | null>;
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
  remove: <K extends DocumentKind>(
    address: Address<K>,
    editor: Editor,
  ) => Promise<Saved | Conflict<S, K> | Gone | Refused>;
  /** Undoes a removal; gone if the document never was or its project is removed. A standing document stays as it is. */
  restore: <K extends DocumentKind>(place: Place<K>, editor: Editor) => Promise<Saved | Gone | Refused>;
  /** Writes several documents together, composed from how the project stands in the same moment. */
  act: (project: string, act: Act<S>, editor: Editor) => Promise<ActOutcome>;
  /** Records an attempt that was refused before it came to a write, such as a file that tells falsely of this project. */
  refuse: (
    project: string,
    refusal: Pick<RuleRefusal, "sentence" | "fields">,
    documents: RefusalState["documents"],
    editor: Editor,
  ) => Promise<Refused | Gone>;
}>;

/** `entries` counts the record of the project. A document that was never there is left out; a removed one does not stand. */
export type LastChanges = Readonly<{
  entries: number;
  documents: readonly Readonly<{ kind: DocumentKind; id: string; version: number; by: string; stands: boolean }>[];
}>;

/** Without an id a new one is drawn; brief and requirements have their kind as id. */
export type NewPlace<K extends DocumentKind> = Readonly<{ project: string; kind: K; id?: string | undefined }>;

type Parts<S extends Schemas> = Readonly<{
  database: Database;
  bodies: Bodies<S>;
  moves: MoveWriting;
  now: () => string;
  newId: () => string;
}>;

export function documentsOf<S extends Schemas>({
  database,
  bodies,
  moves: writing,
  now,
  newId,
}: Parts<S>): Documents<S> {
  const conflict = <K extends DocumentKind>(kind: K, row: DocumentRow): Conflict<S, K> => ({
    kind: "conflict",
    version: row.version,
    savedBy: row.updated_by,
    savedAt: row.updated_at,
    current: bodies.read(kind, row),
  });

  /** What becomes of text that was typed over another version than the one that stands; null where none does. */
  const stale = async <K extends DocumentKind>(
    transaction: Transaction<Tables>,
    address: Address<K>,
    stands: DocumentRow | null,
    written: WrittenBody,
    mover: Mover,
  ): Promise<Conflict<S, K> | Gone | Refused> => {
    const { editor, at } = mover;
    if (stands !== null) {
      const after = replaced(stands, written, editor, at);
      const refusal = await writing.ask(transaction, [{ action: "replace", before: stands, after }], mover);
      if (refusal) return typedKept(transaction, address, written, { refusal, editor, at });
    }
    await keepDraft(transaction, address, written.text, { editor, at });
    return stands === null ? { kind: "gone" } : conflict(address.kind, stands);
  };

  return {
    async read(place) {
      if (!isId(place.project) || !isId(place.id)) return null;
      const row = await database.read(async (transaction) => {
        const project = await projectRow(transaction, place.project);
        return project?.removed_at === null ? standingRow(transaction, place) : null;
      });
      return row ? bodies.read(place.kind, row) : null;
    },

    async readVersion({ version, ...place }) {
      if (!isId(place.project) || !isId(place.id)) return null;
      return database.read(async (transaction) => {
        const row = await documentRow(transaction, place);
        const state = row && (await recordedState(transaction, place, version));
        if (!row || !state) return null;
        const stood = { ...row, version, format: state.format, body: JSON.stringify(state.body) };
        return bodies.read(place.kind, stood).body;
      });
    },

    async lastChanges(project, asked) {
      if (!isId(project)) return null;
      return database.read(async (transaction) => {
        const row = await projectRow(transaction, project);
        if (row === null || row.removed_at !== null) return null;
        const found = [];
        for (const { kind, id } of asked) {
          const held = await transaction
            .selectFrom("document")
            .select(["version", "updated_by", "removed_at"])
            .where("project_id", "=", project)
            .where("kind", "=", kind)
            .where("id", "=", id)
            .executeTakeFirst();
          if (held === undefined) continue;
          found.push({ kind, id, version: held.version, by: held.updated_by, stands: held.removed_at === null });
        }
        return { entries: row.head_seq, documents: found };
      });
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
          const stood = row && row.removed_at === null && owner.removed_at === null ? row : null;
          return stale(transaction, { ...place, version: 0 }, stood, written, { owner, editor, at, way: "form" });
        }
        const after = await addedRow(transaction, place, written, { editor, at });
        const moves: [Move] = [{ action: "create", before: null, after }];
        const refusal = await writing.write(transaction, moves, { owner, editor, at, way: "form" });
        if (refusal) return typedKept(transaction, { ...place, version: 0 }, written, { refusal, editor, at });
        await clearDraft(transaction, { ...place, version: 0 }, editor);
        return { kind: "saved", id: place.id, version: 1, at };
      });
    },

    async replace(address, body, editor) {
      if (isGivenOut(address.kind)) return { kind: "refused", because: { kind: "given-out" } };
      const written = bodies.write(address.kind, body);
      if (written.kind === "refused") return written;
      if (!isId(address.project) || !isId(address.id)) return { kind: "gone" };
      return database.change(async (transaction) => {
        const owner = await lockedProject(transaction, address.project);
        if (owner === null) return { kind: "gone" };
        const at = now();
        const row = owner.removed_at === null ? await standingRow(transaction, address) : null;
        if (row?.version !== address.version)
          return stale(transaction, address, row, written, { owner, editor, at, way: "form" });
        const after = replaced(row, written, editor, at);
        const moves: [Move] = [{ action: "replace", before: row, after }];
        const refusal = await writing.write(transaction, moves, { owner, editor, at, way: "form" });
        if (refusal) return typedKept(transaction, address, written, { refusal, editor, at });
        await clearDraft(transaction, address, editor);
        return { kind: "saved", id: row.id, version: after.version, at };
      });
    },

    async remove(address, editor) {
      if (isGivenOut(address.kind)) return { kind: "refused", because: { kind: "given-out" } };
      if (!isId(address.project) || !isId(address.id)) return { kind: "gone" };
      return database.change(async (transaction) => {
        const owner = await lockedProject(transaction, address.project);
        const row = owner?.removed_at === null ? await standingRow(transaction, address) : null;
        if (!owner || !row) return { kind: "gone" };
        const at = now();
        const after = { ...row, version: row.version + 1, ...by(editor, at), removed_at: at };
        const moves: [Move] = [{ action: "remove", before: row, after }];
        const isStale = row.version !== address.version;
        const refusal = await writing[isStale ? "ask" : "write"](transaction, moves, {
          ...{ owner, editor, at, way: "form" },
        });
        if (refusal) return refusedBy(refusal);
        return isStale ? conflict(address.kind, row) : { kind: "saved", id: row.id, version: after.version, at };
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
        const moves: [Move] = [{ action: "restore", before: row, after }];
        const refusal = await writing.write(transaction, moves, { owner, editor, at, way: "form" });
        return refusal ? refusedBy(refusal) : { kind: "saved", id: row.id, version: after.version, at };
      });
    },

    async act(project, act, editor) {
      if (!isId(project)) return { kind: "gone" };
      return database.change(async (transaction) => {
        const owner = await lockedProject(transaction, project);
        if (owner === null || owner.removed_at !== null) return { kind: "gone" };
        const at = now();
        const standing = await standingOf(transaction, bodies, project, documentKinds);
        const { keep, ...seals } = await sealsOf(transaction, project);
        const acted = act({ standing, at, ...seals });
        if (acted.kind === "lacks") return acted;
        const moves: Move[] = [];
        for (const { kind, id: given, body } of acted.documents) {
          const written = bodies.write(kind, body);
          if (written.kind === "refused") return written;
          const place = { project, kind, id: documentId(kind, given, newId) };
          const row = await documentRow(transaction, place);
          if (row !== null && row.removed_at !== null) return { kind: "gone" };
          if (row !== null) {
            moves.push({ action: "replace", before: row, after: replaced(row, written, editor, at) });
            continue;
          }
          const added = moves.filter(({ before, after }) => before === null && after.kind === kind).length;
          const after = await addedRow(transaction, place, written, { editor, at }, added);
          moves.push({ action: "create", before: null, after });
        }
        const [first, ...others] = moves;
        if (first === undefined) throw new RangeError("an act that writes nothing");
        const refusal = await writing.write(transaction, [first, ...others], { owner, editor, at, way: "act" });
        if (refusal) return refusedBy(refusal);
        await keep();
        for (const { before, after } of moves)
          await clearDraft(
            transaction,
            { project, kind: after.kind, id: after.id, version: before?.version ?? 0 },
            editor,
          );
        return { kind: "done", at };
      });
    },

    async refuse(project, refusal, documents, editor) {
      if (!isId(project)) return { kind: "gone" };
      return database.change(async (transaction) => {
        const owner = await lockedProject(transaction, project);
        if (owner === null || owner.removed_at !== null) return { kind: "gone" };
        await appendRefusal(transaction, { owner, editor, at: now(), id: newId() }, refusal, documents);
        return refusedBy(refusal);
      });
    },
  };
}

const by = (editor: Editor, at: string) => ({ updated_at: at, updated_by: editor.name });

const replaced = (row: DocumentRow, { text, format }: WrittenBody, editor: Editor, at: string): DocumentRow => ({
  ...row,
  version: row.version + 1,
  ...{ format, body: text },
  ...by(editor, at),
});

/**
 * What a rule refuses is kept as a draft like anything typed, unless the rule lets go of it. The draft is based on no
 * version: it is offered to whoever typed it and never sent again by itself.
 */
async function typedKept(
  transaction: Transaction<Tables>,
  address: Address,
  { text }: WrittenBody,
  { refusal, editor, at }: Readonly<{ refusal: RuleRefusal; editor: Editor; at: string }>,
): Promise<Refused> {
  if (refusal.text === "kept") await keepDraft(transaction, { ...address, version: 0 }, text, { editor, at });
  return refusedBy(refusal);
}
