import type { z } from "zod";
import type { Unlisted } from "#lib/people";
import type { Sealed } from "#lib/procedure";
import type { DocumentKind, Schemas, StoredDocument } from "./model";

/** What can happen to a document. */
export type DocumentAction = "create" | "replace" | "remove" | "restore";

/** A document before and after a change; null where it does not stand. */
export type DocumentMove<S extends Schemas> = {
  [K in DocumentKind]: Readonly<{
    action: DocumentAction;
    kind: K;
    id: string;
    before: StoredDocument<S, K> | null;
    after: StoredDocument<S, K> | null;
  }>;
}[DocumentKind];

/** The documents of a project as they stand before a change, in their order. */
export type Standing<S extends Schemas> = <K extends DocumentKind>(kind: K) => readonly StoredDocument<S, K>[];

/**
 * Everything that is about to be written, together: all of it is kept or nothing. `way` tells one document saved as it was
 * typed from an act, which the server composes of several.
 */
export type Attempt<S extends Schemas> = Readonly<{
  editor: Readonly<{ id: string; name: string; unlisted: Unlisted }>;
  /** The server's clock, ISO 8601 in UTC: the time that the record will name. */
  at: string;
  way: "form" | "act";
  moves: readonly DocumentMove<S>[];
  standing: Standing<S>;
}>;

/** Why a change is not made. */
export type RuleRefusal = Readonly<{
  sentence: string;
  /** What it would have touched, as people read it; nothing that is sealed stands here, as the record shows it. */
  fields: readonly string[];
  /** Whether what was typed is kept as a draft of the editor, or let go, as with prices that must not be shown. */
  text: "kept" | "let-go";
}>;

/** The rules that every write passes, in the transaction that makes it. */
export type Guard<S extends Schemas> = Readonly<{
  /** Kinds that the rules look at besides what is written; an act sees all kinds. */
  needs: readonly DocumentKind[];
  refusal: (attempt: Attempt<S>) => RuleRefusal | null;
}>;

/** A document that an act writes: made where none of this id stands, replaced where one does. */
export type ActedDocument<S extends Schemas> = {
  [K in DocumentKind]: Readonly<{ kind: K; id: string; body: z.input<S[K]> }>;
}[DocumentKind];

/** What an act sees and may use. It must be pure but for these. */
export type ActSetting<S extends Schemas> = Readonly<{
  standing: Standing<S>;
  at: string;
  /** Locks a value away; `of` is the id of the document that it belongs to. */
  seal: (lock: string, of: string, value: unknown) => Sealed;
  /** Opens what was sealed. @throws Error if it was sealed for another document or altered since */
  unseal: (lock: string, of: string, sealed: Sealed) => unknown;
  /** The key of a lock as base64url, to be made public; empty where nothing was ever sealed with it. */
  keyOf: (lock: string) => string;
}>;

/** Several documents written together, or why not. What is not done for lack of something is no breach and not recorded. */
export type Act<S extends Schemas> = (
  setting: ActSetting<S>,
) => Readonly<
  { kind: "writes"; documents: readonly ActedDocument<S>[] } | { kind: "lacks"; sentences: readonly string[] }
>;
