import type { z } from "zod";
import type { Doer, Sealed } from "#lib/procedure";
import type { documentSchemas } from "../schema";

/** Kinds of documents that a project is made of. */
export type ProjectKind = keyof typeof documentSchemas;

type Text<K extends ProjectKind> = z.input<(typeof documentSchemas)[K]>;
type Model<K extends ProjectKind> = z.output<(typeof documentSchemas)[K]>;

/** A document as it is held: its text as typed and what the schema makes of it. */
export type HeldDocument<K extends ProjectKind> = Readonly<{
  id: string;
  version: number;
  body: Text<K>;
  model: Model<K>;
}>;

/** The documents of a project before a change, by kind. */
export type StandingDocuments = <K extends ProjectKind>(kind: K) => readonly HeldDocument<K>[];

/** A document before and after a change; null where it does not stand. */
export type ProjectMove = {
  [K in ProjectKind]: Readonly<{
    action: "create" | "replace" | "remove" | "restore";
    kind: K;
    id: string;
    before: HeldDocument<K> | null;
    after: HeldDocument<K> | null;
  }>;
}[ProjectKind];

/** A document that an act writes. */
export type WrittenDocument = {
  [K in ProjectKind]: Readonly<{ kind: K; id: string; body: Text<K> }>;
}[ProjectKind];

/** What an act sees and may use; the store keeps the locks. */
export type ProjectActSetting = Readonly<{
  standing: StandingDocuments;
  /** The server's clock, ISO 8601 in UTC. */
  at: string;
  seal: (lock: string, of: string, value: unknown) => Sealed;
  unseal: (lock: string, of: string, sealed: Sealed) => unknown;
  keyOf: (lock: string) => string;
}>;

/** Several documents written together, or what is lacking for that. */
export type ProjectAct = (
  setting: ProjectActSetting,
) => Readonly<
  { kind: "writes"; documents: readonly WrittenDocument[] } | { kind: "lacks"; sentences: readonly string[] }
>;

/** Somebody who acts, as the documents remember them. */
export const doerOf = ({ id, name }: Doer): Doer => ({ id, name });

/** The locks that contents are sealed with. */
export const locks = { prices: "prices", scores: "scores" } as const;

export const lacks = (...sentences: readonly string[]) => ({ kind: "lacks", sentences }) as const;
export const writes = (...documents: readonly WrittenDocument[]) => ({ kind: "writes", documents }) as const;
