import type { DocumentKind } from "#lib/store";

/** What an open page hears from the server every few seconds. */
export type News = Readonly<{
  /** Entries in the record of the project. */
  entries: number;
  documents: readonly Readonly<{ kind: DocumentKind; id: string; version: number; by: string; stands: boolean }>[];
  /** Other open pages at the same place; `isSame` where it is one of the same person. */
  others: readonly Other[];
}>;

export type Other = Readonly<{ name: string; since: string; isSame: boolean }>;
