import type { Editor } from "#lib/access";
import type { Database } from "./database";
import { isId } from "./id";

/** Somebody else's open page at the same place. */
export type Present = Readonly<{ page: string; editor: string; name: string; since: string }>;

/**
 * Who has which page of a project open. It is no part of a project: it takes no lock on one, stands in no record, and is not
 * backed up.
 */
export type PresenceOfOthers = Readonly<{
  /**
   * Notes that a page is open at a place and answers which others are, those who came first before the rest; null where
   * there is no such project.
   * @param page the random id that an open page draws for itself
   */
  seen: (project: string, place: string, editor: Editor, page: string) => Promise<readonly Present[] | null>;
  /** Forgets an open page of this editor. */
  left: (project: string, editor: Editor, page: string) => Promise<void>;
}>;

const countsFor = 30_000; // ms: three times the pause between two notes of an open page
const staysFor = 300_000; // ms

const before = (at: string, milliseconds: number): string => new Date(Date.parse(at) - milliseconds).toISOString();

export const presenceOf = (database: Database, now: () => string): PresenceOfOthers => ({
  async seen(project, place, editor, page) {
    if (!isId(project)) return null;
    return database.change(async (transaction) => {
      const at = now();
      // a write first, which also sweeps what pages left behind that could not say so
      await transaction.deleteFrom("presence").where("seen_at", "<", before(at, staysFor)).execute();
      // asked within the scope, as an insert is not narrowed by it
      const stands = await transaction
        .selectFrom("project")
        .select("id")
        .where("id", "=", project)
        .where("removed_at", "is", null)
        .executeTakeFirst();
      if (stands === undefined) return null;
      const known = await transaction
        .selectFrom("presence")
        .select(["place", "editor", "since"])
        .where("project_id", "=", project)
        .where("page", "=", page)
        .executeTakeFirst();
      const stayed = known?.place === place && known.editor === editor.id;
      const seen = { place, editor: editor.id, name: editor.name, since: stayed ? known.since : at, seen_at: at };
      await transaction
        .insertInto("presence")
        .values({ project_id: project, page, ...seen })
        .onConflict((conflict) => conflict.columns(["project_id", "page"]).doUpdateSet(seen))
        .execute();
      return transaction
        .selectFrom("presence")
        .select(["page", "editor", "name", "since"])
        .where("project_id", "=", project)
        .where("place", "=", place)
        .where("page", "!=", page)
        .where("seen_at", ">=", before(at, countsFor))
        .orderBy("since")
        .orderBy("page")
        .execute();
    });
  },
  async left(project, editor, page) {
    if (!isId(project)) return;
    await database.change((transaction) =>
      transaction
        .deleteFrom("presence")
        .where("project_id", "=", project)
        .where("page", "=", page)
        .where("editor", "=", editor.id)
        .execute(),
    );
  },
});
