import type { DocumentAddress } from "../../../../../../_components/form/save-outcome";
import type { UnsentText } from "../../../../../../_components/form/unsent-text";

/**
 * The text that the server last took from this device. A page that was kept for use without a connection may be older
 * than that; then this goes on from here, with the version that the server gave it.
 */
const keyOf = ({ project, kind, id }: DocumentAddress) => `evenfield saved ${project} ${kind} ${id}`;

export function keepSaved(where: DocumentAddress, text: UnsentText): void {
  try {
    localStorage.setItem(keyOf(where), JSON.stringify(text));
  } catch {
    // Where storage is full or forbidden the page starts from what the server gave it.
  }
}

export function lastSaved(where: DocumentAddress): UnsentText | null {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(keyOf(where)) ?? "null");
    if (typeof kept !== "object" || kept === null || !("version" in kept) || !("values" in kept)) return null;
    return typeof kept.version === "number" ? { version: kept.version, values: kept.values } : null;
  } catch {
    return null;
  }
}
