import type { DocumentKind } from "#lib/store";

/** What the server says of a document that is open on this page. */
export type News = Readonly<{ version: number; by: string; stands: boolean }>;

/** `heard` answers true where the page does not show that version yet. */
export type OpenDocument = Readonly<{ kind: DocumentKind; id: string; heard: (news: News) => boolean }>;

const open = new Set<OpenDocument>();

/** The documents whose forms are open on this page. */
export const openDocuments = (): readonly OpenDocument[] => [...open];

/** Notes that the form of a document is open; call what is returned when it is no longer. */
export function showOpen(document: OpenDocument): () => void {
  open.add(document);
  return () => void open.delete(document);
}
