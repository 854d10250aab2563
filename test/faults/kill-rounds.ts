import { spawn } from "node:child_process";
import { once } from "node:events";
import { z } from "zod";
import { explainContentFault, type Location } from "#lib/store";
import { readBack, sha256Of } from "../store/contents-contract";
import { open, type TrialStore } from "../store/trial";

/** Where in a writer's life it is killed: while it makes or opens the database, or while it writes. */
export type KillMoment = "opening" | "writing";

export type KillFigures = Readonly<{
  rounds: number;
  acknowledged: number;
  lost: readonly string[];
  brokenRecords: readonly string[];
  slowestReopening: number;
}>;

const acknowledgement = z.discriminatedUnion("kind", [
  z.object({ kind: z.literal("started") }),
  z.object({ kind: z.literal("created"), project: z.string() }),
  z.object({
    kind: z.literal("saved"),
    project: z.string(),
    id: z.string(),
    version: z.number(),
    words: z.string(),
  }),
  z.object({ kind: z.literal("kept"), project: z.string(), id: z.string(), sha256: z.string() }),
]);
type Acknowledgement = z.infer<typeof acknowledgement>;
type SavedLine = Extract<Acknowledgement, { kind: "saved" }>;

/**
 * Kills a writing process again and again, each time reopens the database and looks up every write that was
 * acknowledged in that round, by version in the record and, for the last of each document, in the document.
 * `newLocation` gives the database of a round: the same one to go on with, or a new one.
 */
export async function killRounds(
  rounds: number,
  moment: KillMoment,
  random: () => number,
  newLocation: (round: number) => Promise<Location>,
): Promise<KillFigures> {
  const lost: string[] = [];
  const brokenRecords: string[] = [];
  let acknowledged = 0;
  let slowestReopening = 0;
  for (let round = 1; round <= rounds; round++) {
    const location = await newLocation(round);
    const lines = await killedWriter(location, `round ${round}`, moment, random);
    const began = performance.now();
    const store = await open(location);
    slowestReopening = Math.max(slowestReopening, performance.now() - began);
    for (const { id } of await store.projects.list()) {
      const verdict = await store.record.verify(id);
      if (verdict?.kind !== "intact") brokenRecords.push(`round ${round}: ${JSON.stringify(verdict)}`);
      for (const fault of await store.contents.verify(id))
        brokenRecords.push(`round ${round}: ${explainContentFault(fault)}`);
    }
    const writes = lines.filter((line) => line.kind !== "started");
    acknowledged += writes.length;
    lost.push(...(await missingWrites(store, writes)).map((what) => `round ${round}: ${what}`));
    await store.close();
  }
  return { rounds, acknowledged, lost, brokenRecords, slowestReopening: Math.round(slowestReopening) };
}

/** What a writer acknowledged before it was killed. */
async function killedWriter(
  location: Location,
  round: string,
  moment: KillMoment,
  random: () => number,
): Promise<readonly Acknowledgement[]> {
  const script = new URL("./writer.ts", import.meta.url).pathname;
  const writer = spawn(process.execPath, ["--import", "tsx", script, JSON.stringify(location), round], {
    stdio: ["ignore", "pipe", "pipe"],
  });
  let printed = "";
  let complaint = "";
  let armed = false;
  const awaited = moment === "opening" ? '{"kind":"started"' : '{"kind":"saved"';
  const delay = moment === "opening" ? random() * 150 : random() * 400;
  // A chunk may end within a character; the stream's own decoder waits for the rest of it.
  writer.stdout.setEncoding("utf8");
  writer.stdout.on("data", (chunk: string) => {
    printed += chunk;
    if (armed || !printed.includes(awaited)) return;
    armed = true;
    setTimeout(() => writer.kill("SIGKILL"), delay);
  });
  writer.stderr.setEncoding("utf8");
  writer.stderr.on("data", (chunk: string) => {
    complaint += chunk;
  });
  await once(writer, "close");
  if (writer.signalCode !== "SIGKILL") throw new Error(`the writer ended by itself: ${complaint}`);
  const whole = printed.slice(0, printed.lastIndexOf("\n") + 1);
  return whole
    .split("\n")
    .filter((line) => line !== "")
    .map((line) => acknowledgement.parse(JSON.parse(line)));
}

/** The acknowledged writes that are not in the database as they were acknowledged. */
export async function missingWrites(
  store: TrialStore,
  writes: readonly Exclude<Acknowledgement, { kind: "started" }>[],
): Promise<readonly string[]> {
  const project = writes[0]?.project;
  if (project === undefined) return [];
  const loaded = await store.projects.load(project);
  if (loaded === null) return [`project ${project}`];
  const written = new Map<string, unknown>();
  for (const { id, after } of await store.record.list(project)) {
    const stood = z.object({ version: z.number(), body: z.unknown() }).safeParse(after);
    if (stood.success) written.set(`${id} ${stood.data.version}`, stood.data.body);
  }
  const saved = writes.filter((write): write is SavedLine => write.kind === "saved");
  const gone = saved.flatMap(({ id, version, words }) => {
    const found = wordsOf(written.get(`${id} ${version}`));
    return found === words ? [] : [`${id} version ${version} in the record: ${difference(words, found)}`];
  });
  const last = new Map(saved.map((write) => [write.id, write]));
  const stale = [...last.values()].flatMap(({ id, version, words }) => {
    const document = loaded.documents.bid.find((one) => one.id === id);
    const newer = document !== undefined && document.version > version;
    const found = document?.version === version ? document.body.claims[0]?.words : undefined;
    return newer || found === words ? [] : [`${id} version ${version}: ${difference(words, found)}`];
  });
  return [...gone, ...stale, ...(await missingFiles(store, writes))];
}

/** The acknowledged files that are not there as they were acknowledged. */
async function missingFiles(
  store: TrialStore,
  writes: readonly Exclude<Acknowledgement, { kind: "started" }>[],
): Promise<readonly string[]> {
  const missing: string[] = [];
  for (const write of writes) {
    if (write.kind !== "kept") continue;
    const { project, id, sha256 } = write;
    const bytes = await readBack(store, project, sha256);
    const named = await store.documents.read({ project, kind: "attachment", id });
    if (bytes === null || named?.body.sha256 !== sha256) missing.push(`file ${id}: not there`);
    else if (sha256Of(bytes) !== sha256) missing.push(`file ${id}: ${bytes.length} bytes, not those that were kept`);
  }
  return missing;
}

function difference(acknowledged: string, found: string | undefined): string {
  if (found === undefined) return "not there";
  const at = [...acknowledged].findIndex((character, index) => character !== found[index]);
  return `${acknowledged.length} characters acknowledged, ${found.length} found, unlike from character ${at} on`;
}

const bodyWords = z.object({ claims: z.tuple([z.object({ words: z.string() })]) });
const wordsOf = (body: unknown): string | undefined => bodyWords.safeParse(body).data?.claims[0].words;
