import type { Transaction } from "kysely";
import { z } from "zod";
import type { DocumentRow, Tables } from "./tables";

/** As much of the body of a list of people as the scope of a person goes by. */
const list = z.object({ people: z.array(z.object({ id: z.string() })).default([]) });

/** Keeps who stands on a project's list of people, so that the database can be asked for the projects of a person. */
export async function keepListed(transaction: Transaction<Tables>, after: DocumentRow): Promise<void> {
  if (after.kind !== "people") return;
  const { people } = after.removed_at === null ? list.parse(JSON.parse(after.body)) : { people: [] };
  await transaction.deleteFrom("project_person").where("project_id", "=", after.project_id).execute();
  for (const person_id of new Set(people.map(({ id }) => id)))
    await transaction.insertInto("project_person").values({ project_id: after.project_id, person_id }).execute();
}
