import type { DocumentAddress } from "./save-outcome";

/**
 * What was typed but not yet acknowledged, kept in this browser until it is. It outlives a closed tab, a crash of the
 * browser and a server that is away; the server keeps its own copy of every text that reached it.
 */
const keyOf = ({ project, kind, id }: DocumentAddress) => `evenfield unsent ${project} ${kind} ${id}`;

/** Typed text and the version of the document it was typed over, so that a newer version is never overwritten unseen. */
export type UnsentText = Readonly<{ version: number; values: unknown }>;

export function keepUnsent(where: DocumentAddress, text: UnsentText): void {
  try {
    localStorage.setItem(keyOf(where), JSON.stringify(text));
  } catch {
    // A full or forbidden storage takes away this second net only; the save itself still goes to the server.
  }
}

export function readUnsent(where: DocumentAddress): UnsentText | null {
  try {
    const text = localStorage.getItem(keyOf(where));
    const kept: unknown = text === null ? null : JSON.parse(text);
    if (typeof kept !== "object" || kept === null || !("version" in kept) || !("values" in kept)) return null;
    return typeof kept.version === "number" ? { version: kept.version, values: kept.values } : null;
  } catch {
    return null;
  }
}

export function forgetUnsent(where: DocumentAddress): void {
  try {
    localStorage.removeItem(keyOf(where));
  } catch {
    // Nothing was kept where storage is forbidden.
  }
}
