import { type Kysely, Migrator } from "kysely";
import { migrations } from "./migrations";
import type { Tables } from "./tables";

/** Runs the migrations that are still to do. The caller sees to it that only one process does so at a time. */
export async function migrate(db: Kysely<Tables>): Promise<void> {
  const migrator = new Migrator({ db, provider: { getMigrations: async () => ({ ...migrations }) } });
  const { error } = await migrator.migrateToLatest();
  if (error !== undefined) throw error;
}
