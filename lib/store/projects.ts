import type { Editor } from "#lib/access";
import type { Bodies, WrittenBody } from "./bodies";
import type { Database } from "./database";
import { documentChange, documentId, newDocumentRow } from "./document-row";
import { append, headOf, lockedProject } from "./head";
import { isId } from "./id";
import {
  type DocumentKind,
  documentKinds,
  type Gone,
  type LoadedProject,
  type NewDocument,
  type NewProject,
  type ProjectOutcome,
  type ProjectPage,
  type ProjectSummary,
  type ProjectWish,
  type Refusal,
  type Refused,
  type Schemas,
  type StoredDocument,
} from "./model";
import { keepListed } from "./project-people";
import { projectRow, projectState, summaryFrom } from "./project-row";
import { type Change, genesisHash } from "./record-entry";
import { foldedWords, searchedOf } from "./searched";
import type { DocumentRow, ProjectRow } from "./tables";
import { unstorable } from "./text-form";

/** Projects as wholes. */
export type Projects<S extends Schemas> = Readonly<{
  /** Those that stand and fit a wish, the last changed first, a page at a time. */
  page: (wish: ProjectWish) => Promise<ProjectPage>;
  /** All that stand, the last changed first: for commands that go through all of them. */
  list: () => Promise<readonly ProjectSummary[]>;
  /** Those that were removed and can be restored, the last changed first. */
  listRemoved: () => Promise<readonly ProjectSummary[]>;
  /** A project with all its documents in order, as of one moment; null if it does not stand. */
  load: (project: string) => Promise<LoadedProject<S> | null>;
  /** Gone where the editor’s scope does not hold the organisation of the store. */
  create: (project: NewProject<S>, editor: Editor) => Promise<ProjectOutcome>;
  /** Like `create`, and the record says that it came from a file. All of it is stored or nothing. */
  import: (project: NewProject<S>, editor: Editor) => Promise<ProjectOutcome>;
  rename: (
    project: string,
    facts: Readonly<{ name: string; owner: string }>,
    editor: Editor,
  ) => Promise<ProjectOutcome>;
  /** Puts a project out of sight. Nothing is deleted: it can be restored with all its documents and its record. */
  remove: (project: string, editor: Editor) => Promise<ProjectOutcome>;
  restore: (project: string, editor: Editor) => Promise<ProjectOutcome>;
}>;

type Parts<S extends Schemas> = Readonly<{
  database: Database;
  bodies: Bodies<S>;
  now: () => string;
  newId: () => string;
  /** The organisation that new projects belong to. */
  organisation: string;
}>;

/** Undoes the making of a project that its maker could not reach. */
class OutOfReach extends Error {}

/** More words than a search needs; each has to be looked for. */
const mostWords = 12;
const mostDocuments = 1000; // a register of 400 lines with its files, the bids and tests beside it

export function projectsOf<S extends Schemas>({ database, bodies, now, newId, organisation }: Parts<S>): Projects<S> {
  const listed = async (removed: "is" | "is not") => {
    const rows = await database.read((transaction) =>
      transaction.selectFrom("project").selectAll().where("removed_at", removed, null).execute(),
    );
    return rows.sort(lastChangedFirst).map(summaryFrom);
  };

  const writtenDocuments = (documents: readonly NewDocument<S>[]): readonly WrittenDocument[] | Refused => {
    const written: WrittenDocument[] = [];
    for (const { kind, id, body } of documents) {
      const one = bodies.write(kind, body);
      if (one.kind === "refused") return one;
      written.push({ kind, id: documentId(kind, id, newId), written: one });
    }
    return written;
  };

  const add = async (action: "create" | "import", project: NewProject<S>, editor: Editor): Promise<ProjectOutcome> => {
    const { name, owner, origin, documents } = project;
    const because = unstorable({ name, owner }, []) ?? tooMany(documents.length);
    if (because) return { kind: "refused", because };
    const written = writtenDocuments(documents);
    if ("because" in written) return written;
    const id = newId();
    const at = now();
    const rows = documentRows(id, written, editor, at);
    const made = database.change(async (transaction) => {
      const row = newProjectRow({ id, organisation_id: organisation, name, owner, origin }, editor, at);
      await transaction.insertInto("project").values(row).execute();
      // Whoever may not reach all of that organisation may not begin a project in it either.
      if ((await lockedProject(transaction, id)) === null) throw new OutOfReach();
      for (const document of rows) {
        await transaction.insertInto("document").values(document).execute();
        await keepListed(transaction, document);
      }
      const made = projectChange(action, row, { before: null, after: projectState(row) }, editor, at);
      await append(transaction, headOf(row), made, ...rows.map((one) => documentChange(action, null, one, editor)));
    });
    try {
      await made;
    } catch (problem) {
      if (problem instanceof OutOfReach) return { kind: "gone" };
      throw problem;
    }
    return { kind: "saved", id, at };
  };

  const alter = async (
    project: string,
    action: "rename" | "remove" | "restore",
    editor: Editor,
    altered: (row: ProjectRow, at: string) => Pick<ProjectRow, "name" | "owner" | "removed_at"> | null,
  ): Promise<Readonly<{ kind: "saved"; id: string; at: string }> | Gone> => {
    if (!isId(project)) return { kind: "gone" };
    return database.change(async (transaction) => {
      const row = await lockedProject(transaction, project);
      const at = now();
      const set = row && altered(row, at);
      if (!row || !set) return { kind: "gone" };
      const searched = searchedOf(set);
      await transaction
        .updateTable("project")
        .set({ ...set, searched })
        .where("id", "=", project)
        .execute();
      const stood = { before: standing(row), after: standing({ ...row, ...set }) };
      await append(transaction, headOf(row), projectChange(action, row, stood, editor, at));
      return { kind: "saved", id: project, at };
    });
  };

  return {
    async page({ search = "", after, limit }) {
      const words = foldedWords(search);
      if (words.length === 0 && search.trim() !== "") return { projects: [], found: 0, more: false };
      return database.read(async (transaction) => {
        let standing = transaction.selectFrom("project").where("removed_at", "is", null);
        for (const word of words.slice(0, mostWords)) standing = standing.where("searched", "like", `%${word}%`);
        let wanted = standing.selectAll();
        if (after !== undefined)
          wanted = wanted
            .where("changed_at", "<=", after.changedAt)
            .where(({ or, eb }) => or([eb("changed_at", "<", after.changedAt), eb("id", ">", after.id)]));
        const rows = await wanted
          .orderBy("changed_at", "desc")
          .orderBy("id")
          .limit(limit + 1)
          .execute();
        const { found } = await standing.select(({ fn }) => fn.countAll().as("found")).executeTakeFirstOrThrow();
        return { projects: rows.slice(0, limit).map(summaryFrom), found: Number(found), more: rows.length > limit };
      });
    },
    list: () => listed("is"),
    listRemoved: () => listed("is not"),
    async load(project) {
      if (!isId(project)) return null;
      const found = await database.read(async (transaction) => {
        const row = await projectRow(transaction, project);
        const documents = transaction.selectFrom("document").selectAll().where("project_id", "=", project);
        return row?.removed_at === null ? { row, documents: await documents.execute() } : null;
      });
      if (found === null) return null;
      const standingRows = found.documents.filter((row) => row.removed_at === null).sort(byPosition);
      const all = <K extends DocumentKind>(kind: K): readonly StoredDocument<S, K>[] =>
        standingRows.filter((row) => row.kind === kind).map((row) => bodies.read(kind, row));
      const documents = Object.fromEntries(documentKinds.map((kind) => [kind, all(kind)]));
      return { summary: summaryFrom(found.row), documents: documents as LoadedProject<S>["documents"] };
    },
    create: (project, editor) => add("create", project, editor),
    import: (project, editor) => add("import", project, editor),
    async rename(project, { name, owner }, editor) {
      const because = unstorable({ name, owner }, []);
      if (because) return { kind: "refused", because };
      return alter(project, "rename", editor, (row) =>
        row.removed_at === null ? { name, owner, removed_at: null } : null,
      );
    },
    remove: (project, editor) =>
      alter(project, "remove", editor, ({ name, owner, removed_at }, at) =>
        removed_at === null ? { name, owner, removed_at: at } : null,
      ),
    restore: (project, editor) =>
      alter(project, "restore", editor, ({ name, owner, removed_at }) =>
        removed_at === null ? null : { name, owner, removed_at: null },
      ),
  };
}

type WrittenDocument = Readonly<{ kind: DocumentKind; id: string; written: WrittenBody }>;

const tooMany = (documents: number): Refusal | null =>
  documents > mostDocuments ? { kind: "too-many-documents", documents, limit: mostDocuments } : null;

/** Rows in the order given, positions counted for each kind. */
function documentRows(project: string, documents: readonly WrittenDocument[], editor: Editor, at: string) {
  const places = new Map<DocumentKind, number>();
  return documents.map(({ kind, id, written }) => {
    const place = places.get(kind) ?? 0;
    places.set(kind, place + 1);
    return newDocumentRow({ project, kind, id }, written, place, { editor, at });
  });
}

function newProjectRow(
  facts: Pick<ProjectRow, "id" | "organisation_id" | "name" | "owner" | "origin">,
  { name: who }: Editor,
  at: string,
): ProjectRow {
  const made = { created_at: at, created_by: who, changed_at: at, changed_by: who, removed_at: null };
  return { ...facts, ...made, head_seq: 0, head_hash: genesisHash, searched: searchedOf(facts) };
}

const standing = (row: ProjectRow) => (row.removed_at === null ? projectState(row) : null);

const projectChange = (
  action: Change["action"],
  { id }: ProjectRow,
  { before, after }: Pick<Change, "before" | "after">,
  { id: person, name: who }: Editor,
  at: string,
): Change => ({ at, who, person, action, kind: "project", id, before, after });

const lastChangedFirst = (one: ProjectRow, other: ProjectRow): number =>
  one.changed_at === other.changed_at ? ordered(one.id, other.id) : ordered(other.changed_at, one.changed_at);

const byPosition = (one: DocumentRow, other: DocumentRow): number =>
  one.position - other.position || ordered(one.id, other.id);

/** By code units and not by a database's language, so that both databases order alike. */
const ordered = (one: string, other: string): number => (one < other ? -1 : one > other ? 1 : 0);
