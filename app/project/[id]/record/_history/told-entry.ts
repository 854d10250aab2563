import { type FieldChange, fieldChanges, type StageId, stageLabel } from "#lib/procedure";
import type { RecordEntry } from "#lib/store";
import { kindLabels } from "./kind-labels";

/** An entry of the record as people read it. */
export type ToldEntry = Readonly<{
  seq: number;
  at: string;
  who: string;
  /** What stands out among ordinary changes. */
  mark: "refused" | "amendment" | "stage" | "sealed" | null;
  sentence: string;
  changes: readonly FieldChange[];
  /** Further changes that are not listed. */
  more: number;
}>;

type Branch = Readonly<Record<string, unknown>>;

const isBranch = (value: unknown): value is Branch => typeof value === "object" && value !== null;
const at = (value: unknown, ...path: readonly string[]): unknown =>
  path.reduce<unknown>((inner, key) => (isBranch(inner) ? inner[key] : undefined), value);
const list = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);
const text = (value: unknown): string => (typeof value === "string" ? value : "");

const done: Readonly<Record<RecordEntry["action"], string>> = {
  create: "added",
  import: "came from a file",
  replace: "changed",
  rename: "renamed",
  remove: "removed",
  restore: "brought back",
  refuse: "refused",
};

/** What was changed: "Bid A", "Requirements". */
function thing({ kind, before, after }: RecordEntry): string {
  const body = at(after, "body") ?? at(before, "body");
  if (kind === "bid") return `Bid ${text(at(body, "letter"))}`;
  if (kind === "scoresheet") return `Scoresheet of ${text(at(body, "evaluator", "name"))}`;
  if (kind === "attachment") return `Attachment “${text(at(body, "name"))}”`;
  return kindLabels[kind];
}

const mostChanges = 40;

function changesOf({ before, after }: RecordEntry): Pick<ToldEntry, "changes" | "more"> {
  if (before === null || after === null) return { changes: [], more: 0 };
  const found = fieldChanges(at(before, "body") ?? before, at(after, "body") ?? after);
  return { changes: found.slice(0, mostChanges), more: Math.max(0, found.length - mostChanges) };
}

const nothing = { changes: [], more: 0 } as const;

/** Kinds whose texts are likely to name a bidder. */
const namesBidders: ReadonlySet<RecordEntry["kind"]> = new Set(["bid", "committee", "costing", "recommendation"]);

/** What the stages of a project gained. */
function procedureEntry(entry: RecordEntry): Pick<ToldEntry, "mark" | "sentence"> | null {
  const [were, are] = [at(entry.before, "body"), at(entry.after, "body")];
  const amendment = list(at(are, "amendments"))[list(at(were, "amendments")).length];
  if (amendment !== undefined)
    return {
      mark: "amendment",
      sentence: `Amended the ${text(at(amendment, "document"))}: ${text(at(amendment, "reason"))}`,
    };
  const step = list(at(are, "steps"))[list(at(were, "steps")).length];
  if (step === undefined) return null;
  const note = text(at(step, "note"));
  const stage = stageLabel(text(at(step, "stage")) as StageId);
  return { mark: "stage", sentence: `Moved the project to “${stage}”${note === "" ? "." : `: ${note}`}` };
}

/**
 * One entry in a sentence, with what it changed. What is sealed shows nothing of itself.
 * @param bids whether texts that name bidders may be shown; not where the reader hides bidders' names
 */
export function toldEntry(entry: RecordEntry, bids: "shown" | "hidden"): ToldEntry {
  const { seq, at: time, who, kind, action } = entry;
  const head = { seq, at: time, who };
  if (kind === "refusal") {
    const tried = list(at(entry.after, "documents")).map(
      (document) => kindLabels[text(at(document, "kind")) as "bid"] ?? "",
    );
    const fields = list(at(entry.after, "fields")).map(text);
    const touched = fields.length === 0 ? "" : ` It would have changed: ${fields.join("; ")}.`;
    const sentence = `Tried to change ${[...new Set(tried)].join(" and ")}. ${text(at(entry.after, "because"))}${touched}`;
    return { ...head, mark: "refused", sentence, ...nothing };
  }
  if (kind === "procedure") {
    const told = procedureEntry(entry);
    if (told !== null) return { ...head, ...told, ...nothing };
  }
  if (kind === "sealed-prices") return { ...head, mark: "sealed", sentence: "Sealed the prices of a bid.", ...nothing };
  if (kind === "scoresheet") {
    const isOpen = at(entry.after, "body", "contents", "kind") === "open";
    const sentence = `${thing(entry)} ${isOpen ? (action === "import" ? done.import : "opened") : "handed in, sealed"}.`;
    return { ...head, mark: isOpen ? null : "sealed", sentence, ...nothing };
  }
  const sentence = `${thing(entry)} ${done[action]}.`;
  if (bids === "hidden" && namesBidders.has(kind)) return { ...head, mark: null, sentence, ...nothing };
  return { ...head, mark: null, sentence, ...changesOf(entry) };
}
