import type { Kysely, Migration } from "kysely";

/**
 * How the tables came to be. A migration that has been released is never edited: the next change is a new entry whose
 * name comes later in the alphabet. Each stands on its own and knows nothing of today's tables.
 */
export const migrations: Readonly<Record<string, Migration>> = {
  "0001-projects-documents-drafts-record": { up: firstTables },
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
