import { attemptsForgottenAfter } from "#lib/access";
import type { Database, Location } from "./database";
import { libraryTime } from "./sign-in-library";

/** How many of each were deleted. */
export type Swept = Readonly<{ signIns: number; links: number; attempts: number; openPages: number }>;

/**
 * Deletes what has served: sign-ins and links whose time is over, links that were used, failed attempts that count no
 * more, and open pages that could not say that they were closed. Nothing that somebody wrote is among it.
 */
export async function sweep(database: Database, kind: Location["kind"], at: string): Promise<Swept> {
  const before = (seconds: number) => new Date(Date.parse(at) - seconds * 1000).toISOString();
  return database.change(async (transaction) => {
    const signIns = await transaction
      .deleteFrom("sign_in")
      .where("expires_at", "<", libraryTime(kind, at))
      .executeTakeFirst();
    const links = await transaction
      .deleteFrom("way_in")
      .where((eb) => eb.or([eb("used_at", "is not", null), eb("expires_at", "<=", at)]))
      .executeTakeFirst();
    const attempts = await transaction
      .deleteFrom("attempt")
      .where("last_at", "<", before(attemptsForgottenAfter))
      .executeTakeFirst();
    const openPages = await transaction.deleteFrom("presence").where("seen_at", "<", before(300)).executeTakeFirst();
    return {
      signIns: Number(signIns.numDeletedRows),
      links: Number(links.numDeletedRows),
      attempts: Number(attempts.numDeletedRows),
      openPages: Number(openPages.numDeletedRows),
    };
  });
}
