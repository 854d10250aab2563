import { type Kysely, type Migration, PostgresAdapter, sql } from "kysely";

/**
 * How the tables came to be. A migration that has been released is never edited: the next change is a new entry whose
 * name comes later in the alphabet. Each stands on its own and knows nothing of today's tables.
 */
export const migrations: Readonly<Record<string, Migration>> = {
  "0001-projects-documents-drafts-record": { up: firstTables },
  "0002-content-of-files": { up: contentTables },
  "0003-drafts-by-id-persons-in-record-seals": { up: personsAndSeals },
  "0004-organisations-and-sign-in": { up: organisationsAndSignIn },
  "0005-projects-by-last-change-and-words": { up: projectsFound },
  "0006-presence": { up: presenceTable },
};

async function firstTables(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable("project")
    .addColumn("id", "text", (column) => column.primaryKey())
    .addColumn("name", "text", (column) => column.notNull())
    .addColumn("owner", "text", (column) => column.notNull())
    .addColumn("origin", "text", (column) => column.notNull())
    .addColumn("created_at", "text", (column) => column.notNull())
    .addColumn("created_by", "text", (column) => column.notNull())
    .addColumn("changed_at", "text", (column) => column.notNull())
    .addColumn("changed_by", "text", (column) => column.notNull())
    .addColumn("removed_at", "text")
    .addColumn("head_seq", "integer", (column) => column.notNull())
    .addColumn("head_hash", "text", (column) => column.notNull())
    .execute();
  await db.schema
    .createTable("document")
    .addColumn("project_id", "text", (column) => column.notNull().references("project.id"))
    .addColumn("kind", "text", (column) => column.notNull())
    .addColumn("id", "text", (column) => column.notNull())
    .addColumn("version", "integer", (column) => column.notNull())
    .addColumn("format", "integer", (column) => column.notNull())
    .addColumn("position", "integer", (column) => column.notNull())
    .addColumn("body", "text", (column) => column.notNull())
    .addColumn("updated_at", "text", (column) => column.notNull())
    .addColumn("updated_by", "text", (column) => column.notNull())
    .addColumn("removed_at", "text")
    .addPrimaryKeyConstraint("document_key", ["project_id", "kind", "id"])
    .execute();
  await db.schema
    .createTable("draft")
    .addColumn("project_id", "text", (column) => column.notNull().references("project.id"))
    .addColumn("kind", "text", (column) => column.notNull())
    .addColumn("id", "text", (column) => column.notNull())
    .addColumn("editor", "text", (column) => column.notNull())
    .addColumn("based_on_version", "integer", (column) => column.notNull())
    .addColumn("body", "text", (column) => column.notNull())
    .addColumn("saved_at", "text", (column) => column.notNull())
    .addPrimaryKeyConstraint("draft_key", ["project_id", "kind", "id", "editor"])
    .execute();
  await db.schema
    .createTable("record")
    .addColumn("project_id", "text", (column) => column.notNull().references("project.id"))
    .addColumn("seq", "integer", (column) => column.notNull())
    .addColumn("at", "text", (column) => column.notNull())
    .addColumn("who", "text", (column) => column.notNull())
    .addColumn("action", "text", (column) => column.notNull())
    .addColumn("kind", "text", (column) => column.notNull())
    .addColumn("id", "text", (column) => column.notNull())
    .addColumn("before", "text")
    .addColumn("after", "text")
    .addColumn("previous_hash", "text", (column) => column.notNull())
    .addColumn("hash", "text", (column) => column.notNull())
    .addPrimaryKeyConstraint("record_key", ["project_id", "seq"])
    .execute();
}

/** SQLite takes the name of any type and keeps bytes as bytes; PostgreSQL calls theirs bytea. */
async function contentTables(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable("content")
    .addColumn("project_id", "text", (column) => column.notNull().references("project.id"))
    .addColumn("sha256", "text", (column) => column.notNull())
    .addColumn("bytes", "integer", (column) => column.notNull())
    .addColumn("kept_at", "text", (column) => column.notNull())
    .addPrimaryKeyConstraint("content_key", ["project_id", "sha256"])
    .execute();
  await db.schema
    .createTable("content_part")
    .addColumn("project_id", "text", (column) => column.notNull())
    .addColumn("sha256", "text", (column) => column.notNull())
    .addColumn("part", "integer", (column) => column.notNull())
    .addColumn("bytes", "bytea", (column) => column.notNull())
    .addPrimaryKeyConstraint("content_part_key", ["project_id", "sha256", "part"])
    .addForeignKeyConstraint("content_part_of_content", ["project_id", "sha256"], "content", ["project_id", "sha256"])
    .execute();
}

/**
 * Drafts belong to the id of an editor and no longer to the name, entries of the record name that id beside the name,
 * and keys of what is sealed have a place of their own.
 */
async function personsAndSeals(db: Kysely<unknown>): Promise<void> {
  await db.schema.alterTable("record").addColumn("person", "text").execute();
  await db.schema
    .createTable("seal")
    .addColumn("project_id", "text", (column) => column.notNull().references("project.id"))
    .addColumn("lock", "text", (column) => column.notNull())
    .addColumn("key", "text", (column) => column.notNull())
    .addPrimaryKeyConstraint("seal_key", ["project_id", "lock"])
    .execute();
  const drafts = db as Kysely<{ draft: { editor: string } }>;
  const editors = await drafts.selectFrom("draft").select("editor").distinct().execute();
  for (const { editor } of editors)
    await drafts
      .updateTable("draft")
      .set({ editor: firstIdOfName(editor) })
      .where("editor", "=", editor)
      .execute();
}

/** Projects are listed a page at a time, the last changed first, and found by the words of name and owner. */
async function projectsFound(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .alterTable("project")
    .addColumn("searched", "text", (column) => column.notNull().defaultTo(""))
    .execute();
  const projects = db as Kysely<{ project: { id: string; name: string; owner: string; searched: string } }>;
  for (const { id, name, owner } of await projects.selectFrom("project").select(["id", "name", "owner"]).execute())
    await projects
      .updateTable("project")
      .set({ searched: firstSearched(`${name} ${owner}`) })
      .where("id", "=", id)
      .execute();
  await db.schema
    .createIndex("project_last_changed")
    .on("project")
    .columns(["changed_at desc", "id", "searched"]) // so that a search reads nothing but the index
    .where(sql.ref("removed_at"), "is", null)
    .execute();
}

/** How words were folded when they were first searched; it stays as it was then. */
function firstSearched(text: string): string {
  const folded = text.normalize("NFKD").toLowerCase().normalize("NFKD").replace(/\p{M}/gu, "");
  return [...(folded.match(/[\p{L}\p{N}]+/gu) ?? []).join(" ")].slice(0, 500).join("");
}

/** How an id followed from a name when drafts were given to ids; it stays as it was then. */
function firstIdOfName(name: string): string {
  if (name === "local") return name;
  const folded = name.normalize("NFC").toLowerCase().trim().replace(/\s+/gu, " ");
  const spelled = folded
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .replace(/[^a-z0-9]+/g, "-")
    .slice(0, 40)
    .replace(/^-+|-+$/g, "");
  if (/^[a-z0-9]+(?: [a-z0-9]+)*$/.test(folded) && folded.length <= 40 && folded !== "local") return spelled;
  let hash = 0x811c9dc5;
  for (let at = 0; at < folded.length; at += 1) hash = Math.imul(hash ^ folded.charCodeAt(at), 0x01000193);
  return `${spelled === "" ? "person" : spelled}-${(hash >>> 0).toString(16).padStart(8, "0")}`;
}

/**
 * Projects belong to organisations, people sign in, and each list of people can be asked. What stood before belongs to the
 * first organisation, which has no name until somebody administers it. Tables of sign-in are as its library wants them.
 */
async function organisationsAndSignIn(db: Kysely<unknown>): Promise<void> {
  const isPostgres = db.getExecutor().adapter instanceof PostgresAdapter;
  const time = isPostgres ? "timestamptz" : "date";
  const truth = isPostgres ? "boolean" : "integer";
  await db.schema
    .createTable("organisation")
    .addColumn("id", "text", (column) => column.primaryKey())
    .addColumn("name", "text", (column) => column.notNull())
    .addColumn("made_at", "text", (column) => column.notNull())
    .execute();
  await db.schema
    .createTable("person")
    .addColumn("id", "text", (column) => column.primaryKey().notNull())
    .addColumn("name", "text", (column) => column.notNull())
    .addColumn("email", "text", (column) => column.notNull().unique())
    .addColumn("email_verified", truth, (column) => column.notNull())
    .addColumn("image", "text")
    .addColumn("created_at", sql.raw(time), (column) => column.notNull())
    .addColumn("updated_at", sql.raw(time), (column) => column.notNull())
    .execute();
  await db.schema
    .createTable("sign_in")
    .addColumn("id", "text", (column) => column.primaryKey().notNull())
    .addColumn("expires_at", sql.raw(time), (column) => column.notNull())
    .addColumn("token", "text", (column) => column.notNull().unique())
    .addColumn("created_at", sql.raw(time), (column) => column.notNull())
    .addColumn("updated_at", sql.raw(time), (column) => column.notNull())
    .addColumn("ip_address", "text")
    .addColumn("user_agent", "text")
    .addColumn("person_id", "text", (column) => column.notNull().references("person.id").onDelete("cascade"))
    .execute();
  await db.schema
    .createTable("credential")
    .addColumn("id", "text", (column) => column.primaryKey().notNull())
    .addColumn("account_id", "text", (column) => column.notNull())
    .addColumn("provider_id", "text", (column) => column.notNull())
    .addColumn("person_id", "text", (column) => column.notNull().references("person.id").onDelete("cascade"))
    .addColumn("access_token", "text")
    .addColumn("refresh_token", "text")
    .addColumn("id_token", "text")
    .addColumn("access_token_expires_at", sql.raw(time))
    .addColumn("refresh_token_expires_at", sql.raw(time))
    .addColumn("scope", "text")
    .addColumn("password", "text")
    .addColumn("created_at", sql.raw(time), (column) => column.notNull())
    .addColumn("updated_at", sql.raw(time), (column) => column.notNull())
    .execute();
  await db.schema
    .createTable("one_time_value")
    .addColumn("id", "text", (column) => column.primaryKey().notNull())
    .addColumn("identifier", "text", (column) => column.notNull())
    .addColumn("value", "text", (column) => column.notNull())
    .addColumn("expires_at", sql.raw(time), (column) => column.notNull())
    .addColumn("created_at", sql.raw(time), (column) => column.notNull())
    .addColumn("updated_at", sql.raw(time), (column) => column.notNull())
    .execute();
  await db.schema.createIndex("sign_in_of_person").on("sign_in").column("person_id").execute();
  await db.schema.createIndex("credential_of_person").on("credential").column("person_id").execute();
  await db.schema.createIndex("one_time_value_by_identifier").on("one_time_value").column("identifier").execute();
  await db.schema
    .createTable("membership")
    .addColumn("organisation_id", "text", (column) => column.notNull().references("organisation.id"))
    .addColumn("person_id", "text", (column) => column.notNull().references("person.id").onDelete("cascade"))
    .addColumn("role", "text", (column) => column.notNull())
    .addColumn("made_at", "text", (column) => column.notNull())
    .addColumn("ended_at", "text")
    .addPrimaryKeyConstraint("membership_key", ["organisation_id", "person_id"])
    .execute();
  await db.schema.createIndex("membership_of_person").on("membership").column("person_id").execute();
  await db.schema
    .createTable("way_in")
    .addColumn("token_hash", "text", (column) => column.primaryKey())
    .addColumn("purpose", "text", (column) => column.notNull())
    .addColumn("person_id", "text", (column) => column.references("person.id").onDelete("cascade"))
    .addColumn("made_by", "text")
    .addColumn("made_at", "text", (column) => column.notNull())
    .addColumn("expires_at", "text", (column) => column.notNull())
    .addColumn("used_at", "text")
    .execute();
  await db.schema
    .createTable("attempt")
    .addColumn("key", "text", (column) => column.primaryKey())
    .addColumn("failures", "integer", (column) => column.notNull())
    .addColumn("last_at", "text", (column) => column.notNull())
    .execute();
  await db.schema
    .alterTable("project")
    .addColumn("organisation_id", "text", (column) => column.notNull().defaultTo("first"))
    .execute();
  await db.schema.createIndex("project_of_organisation").on("project").column("organisation_id").execute();
  await db.schema
    .createTable("project_person")
    .addColumn("project_id", "text", (column) => column.notNull().references("project.id"))
    .addColumn("person_id", "text", (column) => column.notNull())
    .addPrimaryKeyConstraint("project_person_key", ["project_id", "person_id"])
    .execute();
  await db.schema.createIndex("project_person_by_person").on("project_person").column("person_id").execute();
  const rows = db as Kysely<{
    organisation: { id: string; name: string; made_at: string };
    document: { project_id: string; kind: string; body: string; removed_at: string | null };
    project_person: { project_id: string; person_id: string };
  }>;
  await rows.insertInto("organisation").values({ id: "first", name: "", made_at: new Date().toISOString() }).execute();
  const lists = rows.selectFrom("document").select(["project_id", "body"]).where("kind", "=", "people");
  for (const { project_id, body } of await lists.where("removed_at", "is", null).execute()) {
    const { people = [] } = JSON.parse(body) as { people?: readonly { id: string }[] };
    for (const person_id of new Set(people.map(({ id }) => id)))
      await rows.insertInto("project_person").values({ project_id, person_id }).execute();
  }
}

/** Who has which page of a project open. Rows live for minutes. */
async function presenceTable(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable("presence")
    .addColumn("project_id", "text", (column) => column.notNull().references("project.id"))
    .addColumn("page", "text", (column) => column.notNull())
    .addColumn("place", "text", (column) => column.notNull())
    .addColumn("editor", "text", (column) => column.notNull())
    .addColumn("name", "text", (column) => column.notNull())
    .addColumn("since", "text", (column) => column.notNull())
    .addColumn("seen_at", "text", (column) => column.notNull())
    .addPrimaryKeyConstraint("presence_key", ["project_id", "page"])
    .execute();
}
