import type { Transaction } from "kysely";
import { type Editor, unlistedIn } from "#lib/access";
import type { Bodies } from "./bodies";
import { documentChange, writtenColumns } from "./document-row";
import type { Attempt, DocumentAction, DocumentMove, Guard, RuleRefusal, Standing } from "./guard";
import { append, headOf } from "./head";
import { type DocumentKind, documentKinds, type Refused, type Schemas, type StoredDocument } from "./model";
import { keepListed } from "./project-people";
import type { RefusalState } from "./record-entry";
import type { DocumentRow, ProjectRow, Tables } from "./tables";

/** A row that is about to change; `before` is null for one that is new. */
export type Move = Readonly<{ action: DocumentAction; before: DocumentRow | null; after: DocumentRow }>;

/** Who changes a locked project, when, and how. */
export type Mover = Readonly<{ owner: ProjectRow; editor: Editor; at: string; way: Attempt<Schemas>["way"] }>;

/** Null where the rules have nothing against it, or why they do. */
type AskMoves = (
  transaction: Transaction<Tables>,
  moves: readonly [Move, ...Move[]],
  mover: Mover,
) => Promise<RuleRefusal | null>;

export type MoveWriting = Readonly<{
  /** Writes all of it; or nothing, where the rules refuse it. */
  write: AskMoves;
  /**
   * Only asks the rules. What comes in a stale version is not written in any case, and is asked all the same: whoever
   * sends an earlier request again is refused by the rule, and the record says so.
   */
  ask: AskMoves;
}>;

/** Reads kinds of documents of a project as they stand; asking for another kind is a bug and throws. */
export async function standingOf<S extends Schemas>(
  transaction: Transaction<Tables>,
  bodies: Bodies<S>,
  project: string,
  kinds: readonly DocumentKind[],
): Promise<Standing<S>> {
  const rows =
    kinds.length === 0
      ? []
      : await transaction
          .selectFrom("document")
          .selectAll()
          .where("project_id", "=", project)
          .where("kind", "in", kinds)
          .where("removed_at", "is", null)
          .execute();
  const sorted = rows.sort((one, other) => one.position - other.position || (one.id < other.id ? -1 : 1));
  const read = new Map<DocumentKind, readonly StoredDocument<S, DocumentKind>[]>();
  return <K extends DocumentKind>(kind: K) => {
    if (!kinds.includes(kind)) throw new RangeError(`${kind} was not loaded`);
    const known = read.get(kind) ?? sorted.filter((row) => row.kind === kind).map((row) => bodies.read(kind, row));
    read.set(kind, known);
    return known as readonly StoredDocument<S, K>[];
  };
}

/**
 * The one place where documents of a standing project are written, whichever way the change came: rules first, then rows
 * and record. A change that the rules refuse is recorded as refused.
 */
export function movesOf<S extends Schemas>(
  bodies: Bodies<S>,
  guard: Guard<S> | null,
  newId: () => string,
): MoveWriting {
  const stood = <K extends DocumentKind>(kind: K, row: DocumentRow | null): StoredDocument<S, K> | null =>
    row === null || row.removed_at !== null ? null : bodies.read(kind, row);

  const documentMove = ({ action, before, after }: Move): DocumentMove<S> => {
    const { kind, id } = after;
    return { action, kind, id, before: stood(kind, before), after: stood(kind, after) } as DocumentMove<S>;
  };

  const ask: AskMoves = async (transaction, moves, { owner, editor, at, way }) => {
    const kinds = way === "act" ? documentKinds : (guard?.needs ?? []);
    const refusal =
      guard?.refusal({
        ...{ at, way },
        editor: { id: editor.id, name: editor.name, unlisted: unlistedIn(editor, owner.organisation_id) },
        moves: moves.map(documentMove),
        standing: await standingOf(transaction, bodies, owner.id, kinds),
      }) ?? null;
    if (refusal === null) return null;
    const documents = moves.map(({ action, after }) => ({ attempted: action, kind: after.kind, id: after.id }));
    await appendRefusal(transaction, { owner, editor, at, id: newId() }, refusal, documents);
    return refusal;
  };

  const write: AskMoves = async (transaction, moves, mover) => {
    const refusal = await ask(transaction, moves, mover);
    if (refusal !== null) return refusal;
    const { owner, editor } = mover;
    for (const { before, after } of moves) {
      if (before === null) await transaction.insertInto("document").values(after).execute();
      else
        await transaction
          .updateTable("document")
          .set(writtenColumns(after))
          .where("project_id", "=", after.project_id)
          .where("kind", "=", after.kind)
          .where("id", "=", after.id)
          .execute();
      await keepListed(transaction, after);
    }
    const [first, ...others] = moves.map(({ action, before, after }) => documentChange(action, before, after, editor));
    if (first !== undefined) await append(transaction, headOf(owner), first, ...others);
    return null;
  };

  return { ask, write };
}

/** Appends to the record of a locked project that something was tried and not done. */
export async function appendRefusal(
  transaction: Transaction<Tables>,
  { owner, editor, at, id }: Pick<Mover, "owner" | "editor" | "at"> & Readonly<{ id: string }>,
  { sentence, fields }: Pick<RuleRefusal, "sentence" | "fields">,
  documents: RefusalState["documents"],
): Promise<void> {
  const after: RefusalState = { because: sentence, fields, documents };
  const done = { at, who: editor.name, person: editor.id };
  await append(transaction, headOf(owner), { ...done, action: "refuse", kind: "refusal", id, before: null, after });
}

/** A refusal as whoever asked is answered. */
export const refusedBy = ({ sentence }: Pick<RuleRefusal, "sentence">): Refused => ({
  kind: "refused",
  because: { kind: "rule", sentence },
});
