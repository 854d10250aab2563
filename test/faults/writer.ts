import { createHash, randomBytes } from "node:crypto";
import { setTimeout as pause } from "node:timers/promises";
import { openStore } from "#lib/store";
import { bid, editor, schemas } from "../store/trial";
import { type Acknowledgement, writerTask } from "./acknowledgement";

/*
 * Writes bids and keeps files without end until it is killed, and prints one line for each write that the store has
 * acknowledged, and one for each that it has refused to a writer who goes on. Its one argument is its task as JSON.
 */
const { location, round, project: given, goesOn } = writerTask.parse(JSON.parse(process.argv[2] ?? ""));
const writer = editor("Writer");
const acknowledge = (line: Acknowledgement) =>
  new Promise<void>((resolve, reject) => {
    process.stdout.write(`${JSON.stringify(line)}\n`, (problem) => (problem ? reject(problem) : resolve()));
  });

await acknowledge({ kind: "started" });
const store = await openStore(location, { schemas });

async function newProject(): Promise<string> {
  const documents = ["one", "two", "three"].map((id) => ({ kind: "bid" as const, id, body: bid(`${round}, new`) }));
  const made = await store.projects.create({ name: "Trial", owner: "Nobody", origin: "own", documents }, writer);
  if (made.kind !== "saved") throw new Error(`a new project: ${made.kind}`);
  await acknowledge({ kind: "created", project: made.id });
  return made.id;
}

const project = given ?? (await newProject());

/** Writes one bid and now and then a file. Another writer may have come first; then nothing is acknowledged. */
async function write(turn: number, attempt: (id: string, words: string) => void): Promise<void> {
  const id = ["one", "two", "three"][turn % 3] ?? "one";
  const place = { project, kind: "bid", id } as const;
  const version = (await store.documents.read(place))?.version ?? 0;
  // Texts of very different length, so that a write spans one page of the file or many.
  const words = `${round}, turn ${turn} ${"·".repeat((turn * 7919) % 12_000)}`;
  attempt(id, words);
  const saved = await store.documents.replace({ ...place, version }, bid("Bidder", words), writer);
  if (saved.kind === "saved") await acknowledge({ kind: "saved", project, id, version: saved.version, words });
  else if (saved.kind !== "conflict") throw new Error(`turn ${turn}: ${saved.kind}`);
  attempt("", "");
  if (turn % 5 !== 2 || turn > 1000) return;
  // A file of one part or of several.
  const bytes = randomBytes((turn * 104_729) % 900_000);
  const kept = await store.contents.keep(project, { name: `${round}-${turn}.pdf` }, bytes, writer);
  if (kept.kind === "too-many-files") return;
  if (kept.kind !== "saved") throw new Error(`file of turn ${turn}: ${kept.kind}`);
  await acknowledge({ kind: "kept", project, id: kept.id, sha256: createHash("sha256").update(bytes).digest("hex") });
}

for (let turn = 0; ; turn++) {
  const tried = { id: "", words: "" };
  const began = performance.now();
  try {
    await write(turn, (id, words) => Object.assign(tried, { id, words }));
  } catch (problem) {
    if (!goesOn || !(problem instanceof Error)) throw problem;
    const took = Math.round(performance.now() - began);
    await acknowledge({ kind: "failed", project, ...tried, took, message: problem.message, name: problem.name });
    await pause(20);
  }
}
