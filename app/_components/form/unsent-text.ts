import type { DocumentAddress } from "./save-outcome";

/**
 * What was typed but not yet acknowledged, kept in this browser until it is. It outlives a closed tab, a crash of the
 * browser and a server that is away; the server keeps its own copy of every text that reached it. Each page keeps under
 * a name of its own, so two tabs on one document never take each other's text.
 */
const prefixOf = ({ project, kind, id }: DocumentAddress) => `evenfield unsent ${project} ${kind} ${id} `;
const thisPage = `${Date.now().toString(36)}-${Math.random().toString(36).slice(2)}`;
const lockOf = (page: string) => `evenfield page ${page}`;

/** Typed text and the version of the document it was typed over, so that a newer version is never overwritten unseen. */
export type UnsentText = Readonly<{ version: number; values: unknown }>;

/** Text that a page left behind, and how to let go of that copy. */
export type LeftBehind = UnsentText & Readonly<{ forget: () => void }>;

/** A lock lasts exactly as long as its page, however the page ends: it tells an open tab from one that is gone. */
function showAlive(): void {
  if (typeof navigator === "undefined" || !("locks" in navigator)) return;
  void navigator.locks.request(lockOf(thisPage), () => new Promise(() => {}));
}
showAlive();

async function openPages(): Promise<ReadonlySet<string>> {
  if (!("locks" in navigator)) return new Set();
  const { held = [] } = await navigator.locks.query();
  return new Set(held.flatMap(({ name }) => name ?? []));
}

function read(key: string): UnsentText | null {
  const kept: unknown = JSON.parse(localStorage.getItem(key) ?? "null");
  if (typeof kept !== "object" || kept === null || !("version" in kept) || !("values" in kept)) return null;
  return typeof kept.version === "number" ? { version: kept.version, values: kept.values } : null;
}

export function keepUnsent(where: DocumentAddress, text: UnsentText): void {
  try {
    localStorage.setItem(prefixOf(where) + thisPage, JSON.stringify(text));
  } catch {
    // A full or forbidden storage takes away this second net only; the save itself still goes to the server.
  }
}

export function forgetUnsent(where: DocumentAddress): void {
  try {
    localStorage.removeItem(prefixOf(where) + thisPage);
  } catch {
    // Nothing was kept where storage is forbidden.
  }
}

/** The latest text on this document from a page that is no longer open; null where there is none. */
export async function unsentLeftBehind(where: DocumentAddress): Promise<LeftBehind | null> {
  try {
    const open = await openPages();
    const prefix = prefixOf(where);
    const [latest] = Object.keys(localStorage)
      .filter((key) => key.startsWith(prefix))
      .map((key) => key.slice(prefix.length))
      .filter((page) => page !== thisPage && !open.has(lockOf(page)))
      .sort()
      .reverse();
    const text = latest === undefined ? null : read(prefix + latest);
    return text && { ...text, forget: () => localStorage.removeItem(prefix + latest) };
  } catch {
    return null;
  }
}
