import { z } from "zod";
import type { RecordEntry } from "./record";
import { canonicalJson } from "./record-entry";
import type { RecordRow } from "./tables";
import { entriesFault, intact, type RecordVerdict } from "./verify";

/*
 * The record of a project as a file
 * ---------------------------------
 * JSON lines: UTF-8, one JSON object a line, each line ended by a line feed, no empty lines.
 *
 * The first line says what the file is:
 *
 *   format   "evenfield-record"
 *   version  1
 *   project  id of the project
 *   entries  how many lines follow
 *   head     hash of the last of them
 *
 * Every other line is one entry, in the order of `seq`, with exactly the members that record-entry.ts describes, and `hash`.
 * A line is canonical JSON, but nothing rests on that: read the line, take `hash` out, write the rest as canonical JSON
 * and compute its SHA-256. Then hold each previousHash against the hash before it, each `before` against the last `after` of the same
 * kind and id, and the last hash against `head`. test/checks/verify_record.py does so with nothing but Python.
 */

const fileFormat = "evenfield-record";

/** The record as JSON lines. */
export function recordLines(project: string, entries: readonly RecordEntry[]): string {
  const head = entries.at(-1)?.hash ?? "";
  const first = { format: fileFormat, version: 1, project, entries: entries.length, head };
  return [first, ...entries.map((entry) => ({ project, ...entry }))].map((line) => `${canonicalJson(line)}\n`).join("");
}

const headSchema = z.strictObject({
  format: z.literal(fileFormat, `Expected “format” to read “${fileFormat}” in the first line.`),
  version: z.literal(1, "This version of Evenfield reads records of version 1."),
  project: z.string(),
  entries: z.int(),
  head: z.string(),
});

const entrySchema = z.strictObject({
  ...{ project: z.string(), seq: z.int(), at: z.string(), who: z.string(), person: z.string().optional() },
  ...{ action: z.string(), kind: z.string(), id: z.string(), before: z.unknown(), after: z.unknown() },
  ...{ previousHash: z.string(), hash: z.string() },
});

/** Whether a record that was saved as a file is as it was written; it says nothing of what is stored now. */
export function recordFileVerdict(text: string): RecordVerdict {
  const [first = "", ...lines] = text
    .replace(/^\uFEFF/, "")
    .replace(/\n$/, "")
    .split("\n");
  const head = parsedLine(headSchema, first);
  if (!head.ok) return unread(1, head.reason);
  const rows: RecordRow[] = [];
  for (const [index, line] of lines.entries()) {
    const entry = parsedLine(entrySchema, line);
    if (!entry.ok) return unread(index + 2, entry.reason);
    rows.push(rowOf(entry.value));
  }
  const fault = entriesFault(head.value.project, rows);
  if (fault) return { kind: "broken", fault };
  if (rows.length !== head.value.entries) return { kind: "broken", fault: { kind: "head-differs", field: "entries" } };
  if (rows.at(-1)?.hash !== head.value.head) return { kind: "broken", fault: { kind: "head-differs", field: "head" } };
  return intact(rows, head.value.head);
}

const unread = (line: number, reason: string): RecordVerdict => ({
  kind: "broken",
  fault: { kind: "line-unread", line, reason },
});

type Parsed<T> = Readonly<{ ok: true; value: T } | { ok: false; reason: string }>;

function parsedLine<T>(schema: z.ZodType<T>, line: string): Parsed<T> {
  let json: unknown;
  try {
    json = JSON.parse(line);
  } catch (problem) {
    return { ok: false, reason: problem instanceof Error ? problem.message : String(problem) };
  }
  const parsed = schema.safeParse(json);
  if (parsed.success) return { ok: true, value: parsed.data };
  const [issue] = parsed.error.issues;
  return { ok: false, reason: `${issue?.path.join(".") ?? ""} ${issue?.message ?? ""}`.trim() };
}

/** An entry of a file as a row, for the same checks; words that no Evenfield writes are shown by their hash. */
const rowOf = ({ project, previousHash, person, before, after, ...entry }: z.output<typeof entrySchema>): RecordRow =>
  ({
    ...entry,
    project_id: project,
    previous_hash: previousHash,
    person: person ?? null,
    before: before === null ? null : canonicalJson(before),
    after: after === null ? null : canonicalJson(after),
  }) as RecordRow;
