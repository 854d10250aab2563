import { createHash, randomBytes } from "node:crypto";
import { z } from "zod";
import { openStore } from "#lib/store";
import { bid, editor, schemas } from "../store/trial";

/*
 * Writes bids and keeps files without end until it is killed and prints one line for each write that the store has
 * acknowledged: project, document, version and what was written, or the hash of a file, as JSON. Arguments: the location as JSON and a word that marks the round.
 */
const [where = "", round = ""] = process.argv.slice(2);
const location = z
  .union([
    z.object({ kind: z.literal("sqlite"), folder: z.string() }),
    z.object({ kind: z.literal("postgres"), url: z.string() }),
  ])
  .parse(JSON.parse(where));
const writer = editor("Writer");
const acknowledge = (line: object) =>
  new Promise<void>((resolve, reject) => {
    process.stdout.write(`${JSON.stringify(line)}\n`, (problem) => (problem ? reject(problem) : resolve()));
  });

await acknowledge({ kind: "started" });
const store = await openStore(location, { schemas });
const documents = ["one", "two", "three"].map((id) => ({ kind: "bid" as const, id, body: bid(`${round}, new`) }));
const [known] = await store.projects.list();
const made = known
  ? null
  : await store.projects.create({ name: "Trial", owner: "Nobody", origin: "own", documents }, writer);
const project = known?.id ?? (made?.kind === "saved" ? made.id : "");
if (made) await acknowledge({ kind: "created", project });

for (let turn = 0; ; turn++) {
  const id = ["one", "two", "three"][turn % 3] ?? "one";
  const place = { project, kind: "bid", id } as const;
  const version = (await store.documents.read(place))?.version ?? 0;
  // Texts of very different length, so that a write spans one page of the file or many.
  const words = `${round}, turn ${turn} ${"·".repeat((turn * 7919) % 12_000)}`;
  const saved = await store.documents.replace({ ...place, version }, bid("Bidder", words), writer);
  if (saved.kind !== "saved") throw new Error(`turn ${turn}: ${saved.kind}`);
  await acknowledge({ kind: "saved", project, id, version: saved.version, words });
  if (turn % 5 !== 2 || turn > 1000) continue;
  // A file of one part or of several.
  const bytes = randomBytes((turn * 104_729) % 900_000);
  const kept = await store.contents.keep(project, { name: `${round}-${turn}.pdf` }, bytes, writer);
  if (kept.kind === "too-many-files") continue;
  if (kept.kind !== "saved") throw new Error(`file of turn ${turn}: ${kept.kind}`);
  await acknowledge({ kind: "kept", project, id: kept.id, sha256: createHash("sha256").update(bytes).digest("hex") });
}
