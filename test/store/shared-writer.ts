import { z } from "zod";
import { openStore } from "#lib/store";
import { bid, editor, northField, schemas } from "./trial";

/*
 * One of several processes on one database: finds or makes the shared project and adds 20 bids to it.
 * Arguments: the location as JSON and the editor's name. "Writer 1" makes the project, the others wait for it.
 */
const [where = "", name = ""] = process.argv.slice(2);
const location = z
  .union([
    z.object({ kind: z.literal("sqlite"), folder: z.string() }),
    z.object({ kind: z.literal("postgres"), url: z.string() }),
  ])
  .parse(JSON.parse(where));
const writer = editor(name);
const store = await openStore(location, { schemas });

async function sharedProject(): Promise<string> {
  if (name === "Writer 1") await store.projects.create({ ...northField, name: "Shared field", documents: [] }, writer);
  for (let patience = 0; patience < 300; patience++) {
    const [project] = await store.projects.list();
    if (project) return project.id;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  throw new Error("the shared project did not appear");
}

const project = await sharedProject();
for (let index = 0; index < 20; index++) {
  const saved = await store.documents.create({ project, kind: "bid" }, bid(`${name}, bid ${index}`), writer);
  if (saved.kind !== "saved") throw new Error(`bid ${index} of ${name}: ${saved.kind}`);
}
await store.close();
