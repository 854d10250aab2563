import { type Kysely, Migrator } from "kysely";
import { migrations } from "./migrations";
import type { Tables } from "./tables";

/**
 * Runs the migrations that are still to do. The caller sees to it that only one process does so at a time.
 * @param upTo the name of the last one wanted, for data of an earlier version; never back
 */
export async function migrate(db: Kysely<Tables>, upTo?: string): Promise<void> {
  const wanted = Object.entries(migrations).filter(([name]) => upTo === undefined || name <= upTo);
  const provider = { getMigrations: async () => Object.fromEntries(wanted) };
  const { error } = await new Migrator({ db, provider }).migrateToLatest();
  if (error !== undefined) throw error;
}
