import { isAbsolute, join } from "node:path";
import type { Location } from "./database";

/**
 * Where the environment says the data are: `DATABASE_URL` names a PostgreSQL database; without it there is one SQLite
 * file in the folder `EVENFIELD_DATA`, or in ./data. The only place where the store reads the environment.
 */
export function environmentLocation(): Location {
  const { DATABASE_URL: url, EVENFIELD_DATA: folder } = process.env;
  if (url) return { kind: "postgres", url };
  const chosen = folder || "data";
  return {
    kind: "sqlite",
    folder: isAbsolute(chosen) ? chosen : join(/*turbopackIgnore: true*/ process.cwd(), chosen),
  };
}
