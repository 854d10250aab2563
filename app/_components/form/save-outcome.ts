import type { DocumentKind } from "#lib/store";

/** A sentence about one field of a form; `field` is its path with dots, as the form names it. */
export type FieldProblem = Readonly<{ field: string; message: string }>;

/** What became of a save. In every case the text that was sent is kept somewhere; nothing typed is lost. */
export type SaveOutcome = Readonly<
  | { kind: "saved"; version: number; at: string }
  /** Kept as this editor's draft, which is all that was wanted so far. */
  | { kind: "kept"; at: string }
  /** `base` is the text over which the stale one was typed, null where it never was in the record. */
  | { kind: "conflict"; version: number; savedBy: string; savedAt: string; theirs: unknown; base: unknown }
  | { kind: "rejected"; problems: readonly FieldProblem[] }
  | { kind: "gone" }
  | { kind: "refused"; reason: string }
>;

/** The document a form edits. */
export type DocumentAddress = Readonly<{ project: string; kind: DocumentKind; id: string }>;

export type SaveAction = (where: DocumentAddress & { version: number }, draft: unknown) => Promise<SaveOutcome>;
