import { createHash } from "node:crypto";
import type { z } from "zod";
import type { Editor } from "#lib/access";
import type { Bodies } from "./bodies";
import type { Database, Work } from "./database";
import { addedRow } from "./document-row";
import { lockedProject } from "./head";
import { isId } from "./id";
import type { Digest, Gone, Refused, Saved, Schemas } from "./model";
import { type MoveWriting, refusedBy } from "./moves";
import type { DocumentRow } from "./tables";

/** What is known of a file but for its digest, which the store makes. */
export type FileFacts<S extends Schemas> = Omit<z.input<S["attachment"]>, keyof Digest>;

/** A file came that a project knew of and did not have, from an import: it stands where it was missed. */
export type Supplied = Readonly<{ kind: "supplied"; ids: readonly string[] }>;

export type TooManyFiles = Readonly<{ kind: "too-many-files"; limit: number }>;

/** A kept file that is read part by part. */
export type KeptFile = Readonly<{ bytes: number; parts: () => AsyncGenerator<Uint8Array> }>;

/** What is wrong with a kept file. */
export type ContentFault = Readonly<{ id: string; what: "missing" | "altered" }>;

/**
 * The bytes of files that belong to projects. A file is known by its SHA-256 and kept once in a project, in parts; an
 * attachment is a document like any other and names the hash, so the record holds what came, when and from whom.
 */
export type Contents<S extends Schemas> = Readonly<{
  /**
   * Keeps a file and adds the attachment that names it, both or nothing. Where attachments of an imported project wait for
   * this very file, it goes to them and no other is added.
   */
  keep: (
    project: string,
    facts: FileFacts<S>,
    bytes: Uint8Array,
    editor: Editor,
  ) => Promise<Saved | Supplied | TooManyFiles | Gone | Refused>;
  /** The hashes of the files that are here. */
  held: (project: string) => Promise<ReadonlySet<string>>;
  /** The file of a hash; null if it is not here or the project does not stand. */
  open: (project: string, sha256: string) => Promise<KeptFile | null>;
  /** Files that are not as their attachments say. One that came by import may still be awaited. */
  verify: (project: string) => Promise<readonly ContentFault[]>;
}>;

type Parts<S extends Schemas> = Readonly<{
  database: Database;
  bodies: Bodies<S>;
  moves: MoveWriting;
  now: () => string;
  newId: () => string;
}>;

const partBytes = 256 * 1024;
const mostFiles = 300;

export function contentsOf<S extends Schemas>({ database, bodies, moves: writing, now, newId }: Parts<S>): Contents<S> {
  return {
    async keep(project, facts, bytes, editor) {
      const digest: Digest = { sha256: sha256Of(bytes), bytes: bytes.length };
      // both halves of the body are here now; the schema looks at the whole
      const written = bodies.write("attachment", { ...facts, ...digest } as z.input<S["attachment"]>);
      if (written.kind === "refused") return written;
      if (!isId(project)) return { kind: "gone" };
      const id = newId();
      return database.change(async (transaction) => {
        const owner = await lockedProject(transaction, project);
        if (owner === null || owner.removed_at !== null) return { kind: "gone" };
        const at = now();
        const standing = (await attachments(project)(transaction)).filter(({ removed_at }) => removed_at === null);
        const naming = standing.filter((row) => hashIn(row) === digest.sha256);
        const isHere = await isKept(project, digest.sha256)(transaction);
        const put = () => (isHere ? undefined : putContent(project, digest, bytes, at)(transaction));
        if (!isHere && naming.length > 0) {
          await put();
          return { kind: "supplied", ids: naming.map((row) => row.id) };
        }
        if (standing.length >= mostFiles) return { kind: "too-many-files", limit: mostFiles };
        const after = await addedRow(transaction, { project, kind: "attachment", id }, written, { editor, at });
        const moves = [{ action: "create", before: null, after }] as const;
        const refusal = await writing.write(transaction, moves, { owner, editor, at, way: "form" });
        if (refusal) return refusedBy(refusal);
        await put();
        return { kind: "saved", id, version: 1, at };
      });
    },

    async held(project) {
      if (!isId(project)) return new Set();
      const rows = await database.read((transaction) =>
        transaction.selectFrom("content").select("sha256").where("project_id", "=", project).execute(),
      );
      return new Set(rows.map(({ sha256 }) => sha256));
    },

    async open(project, sha256) {
      if (!isId(project)) return null;
      const row = await database.read((transaction) =>
        transaction
          .selectFrom("content")
          .innerJoin("project", "project.id", "content.project_id")
          .select("content.bytes")
          .where("content.project_id", "=", project)
          .where("content.sha256", "=", sha256)
          .where("project.removed_at", "is", null)
          .executeTakeFirst(),
      );
      return row === undefined ? null : { bytes: row.bytes, parts: () => partsOf(database, project, sha256) };
    },

    async verify(project) {
      if (!isId(project)) return [];
      const [rows, imported] = await Promise.all([
        database.read(attachments(project)),
        database.read((transaction) =>
          transaction
            .selectFrom("record")
            .select("id")
            .where("project_id", "=", project)
            .where("kind", "=", "attachment")
            .where("action", "=", "import")
            .execute(),
        ),
      ]);
      const mayWait = new Set(imported.map(({ id }) => id));
      const faults: ContentFault[] = [];
      for (const row of rows) {
        const wanted = hashIn(row);
        const found = await hashOfKept(database, project, wanted);
        if (found === wanted || (found === null && mayWait.has(row.id))) continue;
        faults.push({ id: row.id, what: found === null ? "missing" : "altered" });
      }
      return faults;
    },
  };
}

const sha256Of = (bytes: Uint8Array): string => createHash("sha256").update(bytes).digest("hex");

/** The hash that the body of an attachment names; empty where it names none. */
function hashIn({ body }: DocumentRow): string {
  const read: unknown = JSON.parse(body);
  const held = typeof read === "object" && read !== null && "sha256" in read ? read.sha256 : "";
  return typeof held === "string" ? held : "";
}

const attachments =
  (project: string): Work<readonly DocumentRow[]> =>
  (transaction) =>
    transaction
      .selectFrom("document")
      .selectAll()
      .where("project_id", "=", project)
      .where("kind", "=", "attachment")
      .orderBy("position")
      .execute();

const isKept =
  (project: string, sha256: string): Work<boolean> =>
  async (transaction) => {
    const row = await transaction
      .selectFrom("content")
      .select("bytes")
      .where("project_id", "=", project)
      .where("sha256", "=", sha256)
      .executeTakeFirst();
    return row !== undefined;
  };

const putContent =
  (project: string, { sha256, bytes: length }: Digest, bytes: Uint8Array, at: string): Work<void> =>
  async (transaction) => {
    await transaction
      .insertInto("content")
      .values({ project_id: project, sha256, bytes: length, kept_at: at })
      .execute();
    for (let part = 0; part * partBytes < length; part += 1) {
      const size = Math.min(partBytes, length - part * partBytes);
      const view = Buffer.from(bytes.buffer, bytes.byteOffset + part * partBytes, size); // drivers take Buffers
      await transaction.insertInto("content_part").values({ project_id: project, sha256, part, bytes: view }).execute();
    }
  };

/** Part by part, each read by itself: what is kept never changes, so all belong to one file. */
async function* partsOf(database: Database, project: string, sha256: string): AsyncGenerator<Uint8Array> {
  for (let part = 0; ; part += 1) {
    const row = await database.read((transaction) =>
      transaction
        .selectFrom("content_part")
        .select("bytes")
        .where("project_id", "=", project)
        .where("sha256", "=", sha256)
        .where("part", "=", part)
        .executeTakeFirst(),
    );
    if (row === undefined) return;
    yield row.bytes;
  }
}

/** The hash of what is kept under a hash, its parts taken together; null where nothing is. */
async function hashOfKept(database: Database, project: string, sha256: string): Promise<string | null> {
  if (!(await database.read(isKept(project, sha256)))) return null;
  const hash = createHash("sha256");
  for await (const part of partsOf(database, project, sha256)) hash.update(part);
  return hash.digest("hex");
}

/** Says what is wrong with a kept file and what that means. */
export const explainContentFault = ({ id, what }: ContentFault): string =>
  what === "missing"
    ? `The file of attachment “${id}” is not there: it was taken out past the record.`
    : `The file of attachment “${id}” is not the one that was kept: its hash does not belong to what is there.`;
