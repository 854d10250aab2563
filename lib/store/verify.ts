import { documentState } from "./document-row";
import { projectState } from "./project-row";
import { canonicalJson, entryHash, genesisHash } from "./record-entry";
import type { DocumentRow, ProjectRow, RecordRow } from "./tables";

/** What does not hold, at the first place where it does not. `seq` is the number of the entry. */
export type RecordFault = Readonly<
  | { kind: "entry-missing"; seq: number }
  | { kind: "link-broken"; seq: number }
  | { kind: "entry-altered"; seq: number }
  | { kind: "entry-out-of-step"; seq: number }
  | { kind: "head-differs"; field: string }
  | { kind: "project-differs"; field: string }
  | { kind: "document-differs"; documentKind: string; id: string; field: string }
  /** A line of a file that does not read as an entry, counted from 1. */
  | { kind: "line-unread"; line: number; reason: string }
>;

/** `setBack` has the numbers of entries whose time lies before that of the entry before: no fault, as numbers give the order. */
export type RecordVerdict = Readonly<
  { kind: "intact"; entries: number; head: string; setBack: readonly number[] } | { kind: "broken"; fault: RecordFault }
>;

/** Everything stored about a project, read in one moment; `entries` by seq. */
export type StoredProject = Readonly<{
  project: ProjectRow;
  entries: readonly RecordRow[];
  documents: readonly DocumentRow[];
}>;

/** Holds a project's record against itself and against what is stored, in the steps that record-entry.ts describes. */
export function recordVerdict({ project, entries, documents }: StoredProject): RecordVerdict {
  const fault =
    entriesFault(project.id, entries) ??
    headFault(project, entries) ??
    projectFault(project, entries) ??
    documentsFault(documents, entries);
  return fault ? { kind: "broken", fault } : intact(entries, project.head_hash);
}

/** Holds entries of a project against each other alone, as in a file: steps (1) to (4) of record-entry.ts. */
export const entriesFault = (project: string, entries: readonly RecordRow[]): RecordFault | null =>
  chainFault(project, entries) ?? stepFault(entries);

export const intact = (entries: readonly RecordRow[], head: string): RecordVerdict => ({
  ...{ kind: "intact", entries: entries.length, head },
  setBack: entries.flatMap(({ seq, at }, index) => (at < (entries[index - 1]?.at ?? "") ? [seq] : [])),
});

/** What a record that holds says of clocks: empty where time only went forward. */
export function explainSetBack(setBack: readonly number[]): string {
  const [first, ...others] = setBack;
  if (first === undefined) return "";
  const more = others.length === 0 ? "" : ` and ${others.length} ${others.length === 1 ? "other" : "others"}`;
  return `Entry ${first}${more} came with an earlier time than the entry before: the computer’s clock was set back. The numbers give the order.`;
}

function chainFault(project: string, entries: readonly RecordRow[]): RecordFault | null {
  let previous = genesisHash;
  for (const [index, entry] of entries.entries()) {
    const seq = index + 1;
    if (entry.seq !== seq) return { kind: "entry-missing", seq };
    if (entry.previous_hash !== previous) return { kind: "link-broken", seq };
    if (entry.project_id !== project || computedHash(entry) !== entry.hash) return { kind: "entry-altered", seq };
    previous = entry.hash;
  }
  return null;
}

/** The hash as the entry stands; null if before or after are not the canonical JSON that was written. */
function computedHash(entry: RecordRow): string | null {
  const canonical = (text: string | null) => text === null || canonicalJson(JSON.parse(text)) === text;
  try {
    return canonical(entry.before) && canonical(entry.after) ? entryHash(entry) : null;
  } catch (problem) {
    if (problem instanceof SyntaxError) return null;
    throw problem;
  }
}

function stepFault(entries: readonly RecordRow[]): RecordFault | null {
  const left = new Map<string, string | null>();
  for (const entry of entries) {
    const what = `${entry.kind}/${entry.id}`;
    if (entry.before !== (left.get(what) ?? null)) return { kind: "entry-out-of-step", seq: entry.seq };
    left.set(what, entry.after);
  }
  return null;
}

function headFault(project: ProjectRow, entries: readonly RecordRow[]): RecordFault | null {
  const first = entries[0];
  const last = entries.at(-1);
  const changed = entries.findLast(({ action }) => action !== "refuse");
  if (!first || !last || !changed) return { kind: "entry-missing", seq: 1 };
  const field = firstDifference(
    {
      head_seq: last.seq,
      head_hash: last.hash,
      changed_at: changed.at,
      changed_by: changed.who,
      created_at: first.at,
      created_by: first.who,
    },
    project,
  );
  return field === null ? null : { kind: "head-differs", field };
}

function projectFault(project: ProjectRow, entries: readonly RecordRow[]): RecordFault | null {
  const last = entries.findLast((entry) => entry.kind === "project" && entry.id === project.id);
  if (!last) return { kind: "project-differs", field: "id" };
  const stood = last.after ?? last.before;
  if (stood !== canonicalJson(projectState(project)))
    return { kind: "project-differs", field: "name, owner or origin" };
  const removed = last.after === null ? last.at : null;
  return project.removed_at === removed ? null : { kind: "project-differs", field: "removed_at" };
}

function documentsFault(documents: readonly DocumentRow[], entries: readonly RecordRow[]): RecordFault | null {
  const last = new Map<string, RecordRow>();
  // what was refused never became a document
  const documented = entries.filter(({ kind }) => kind !== "project" && kind !== "refusal");
  for (const entry of documented) last.set(`${entry.kind}/${entry.id}`, entry);
  for (const row of documents) {
    const key = `${row.kind}/${row.id}`;
    const field = documentDifference(row, last.get(key));
    if (field !== null) return { kind: "document-differs", documentKind: row.kind, id: row.id, field };
    last.delete(key);
  }
  const [lost] = last.values();
  return lost ? { kind: "document-differs", documentKind: lost.kind, id: lost.id, field: "id" } : null;
}

/** The first column of a document that is not as its last entry left it. */
function documentDifference(row: DocumentRow, last: RecordRow | undefined): string | null {
  const stood = last?.after ?? last?.before;
  if (!last || stood === null || stood === undefined) return "id";
  const removed = last.after === null;
  const expected = { updated_at: last.at, updated_by: last.who, removed_at: removed ? last.at : null };
  const field = firstDifference(expected, row);
  if (field !== null) return field;
  const state = stateText({ ...row, version: row.version - (removed ? 1 : 0), removed_at: null });
  return state === stood ? null : "version, format, position or body";
}

/** Null if the body is no JSON. */
function stateText(row: DocumentRow): string | null {
  try {
    return canonicalJson(documentState(row));
  } catch (problem) {
    if (problem instanceof SyntaxError) return null;
    throw problem;
  }
}

function firstDifference<T extends object>(expected: Partial<T>, stored: T): string | null {
  for (const field in expected) if (expected[field] !== stored[field]) return field;
  return null;
}

/** Says where the record stops to hold and what that means. */
export function explainRecordFault(fault: RecordFault): string {
  switch (fault.kind) {
    case "entry-missing":
      return `Entry ${fault.seq} is missing.`;
    case "link-broken":
      return `Entry ${fault.seq} does not follow on the entry before it: one of the two was exchanged.`;
    case "entry-altered":
      return `Entry ${fault.seq} is not as it was written: its hash does not belong to what it says.`;
    case "entry-out-of-step":
      return `Entry ${fault.seq} starts from something else than the entries before it left.`;
    case "head-differs":
      return `The project's ${fault.field} is not that of its record: entries were cut off, or the project was altered.`;
    case "project-differs":
      return `The project's ${fault.field} is not what the record says last: it was altered past the record.`;
    case "document-differs":
      return `The ${fault.field} of ${fault.documentKind} “${fault.id}” is not what the record says last: it was altered past the record.`;
    case "line-unread":
      return `Line ${fault.line} does not read as it should: ${fault.reason}`;
  }
}
