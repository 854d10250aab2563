import { z } from "zod";
import { explainContentFault } from "#lib/store";
import { readBack, sha256Of } from "../store/contents-contract";
import type { TrialStore } from "../store/trial";
import type { Acknowledgement, Written } from "./acknowledgement";

type SavedLine = Extract<Acknowledgement, { kind: "saved" }>;

/** The acknowledged writes that are not in the database as they were acknowledged. */
export async function missingWrites(store: TrialStore, writes: readonly Written[]): Promise<readonly string[]> {
  const project = writes[0]?.project;
  if (project === undefined) return [];
  const loaded = await store.projects.load(project);
  if (loaded === null) return [`project ${project}`];
  const written = await writtenWords(store, project);
  const saved = writes.filter((write): write is SavedLine => write.kind === "saved");
  const gone = saved.flatMap(({ id, version, words }) => {
    const found = written.get(`${id} ${version}`);
    return found === words ? [] : [`${id} version ${version} in the record: ${difference(words, found)}`];
  });
  const last = new Map<string, SavedLine>();
  for (const write of saved) if (write.version > (last.get(write.id)?.version ?? 0)) last.set(write.id, write);
  const stale = [...last.values()].flatMap(({ id, version, words }) => {
    const document = loaded.documents.bid.find((one) => one.id === id);
    const newer = document !== undefined && document.version > version;
    const found = document?.version === version ? document.body.claims[0]?.words : undefined;
    return newer || found === words ? [] : [`${id} version ${version}: ${difference(words, found)}`];
  });
  return [...gone, ...stale, ...(await missingFiles(store, writes))];
}

/** The words of every version of every bid, by id and version, as the record tells them. */
export async function writtenWords(store: TrialStore, project: string): Promise<ReadonlyMap<string, string>> {
  const written = new Map<string, string>();
  for (const { id, after } of await store.record.list(project)) {
    const stood = bidState.safeParse(after);
    if (stood.success) written.set(`${id} ${stood.data.version}`, stood.data.body.claims[0].words);
  }
  return written;
}

/** What does not hold of a project's record and of its files. */
export async function brokenParts(store: TrialStore, project: string): Promise<readonly string[]> {
  const verdict = await store.record.verify(project);
  const files = await store.contents.verify(project);
  return [...(verdict?.kind === "intact" ? [] : [JSON.stringify(verdict)]), ...files.map(explainContentFault)];
}

/** The acknowledged files that are not there as they were acknowledged. */
async function missingFiles(store: TrialStore, writes: readonly Written[]): Promise<readonly string[]> {
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

const bidState = z.object({
  version: z.number(),
  body: z.object({ claims: z.tuple([z.object({ words: z.string() })]) }),
});
