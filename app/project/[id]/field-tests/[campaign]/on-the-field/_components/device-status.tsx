"use client";
import type { SaveState } from "../../../../../../_components/form/use-autosave";
import styles from "./field-entry.module.css";
import type { KeptPage } from "./kept-page";

const clock = (at: string) =>
  new Date(at).toLocaleTimeString("en-US", { hour: "numeric", minute: "2-digit", second: "2-digit" });

/** Where the text stands: on this device or with the server. */
function whereItIs(state: SaveState): string {
  switch (state.kind) {
    case "untouched":
      return "What you type is kept on this device at once.";
    case "typing":
      return "Kept on this device, not yet sent.";
    case "saving":
      return "Kept on this device, being sent…";
    case "unreachable":
      return "Kept on this device, not yet sent. It is sent by itself when the connection is back.";
    case "saved":
      return `Sent and saved at ${clock(state.at)}.`;
    case "kept":
      return `Sent and kept as your draft at ${clock(state.at)}.`;
    case "kept-as-draft":
      return state.problems.length === 1
        ? "Sent as a draft: one entry can’t be read yet, so this doesn’t count so far."
        : `Sent as a draft: ${state.problems.length} entries can’t be read yet, so this doesn’t count so far.`;
    case "joining":
      return `Kept on this device, not sent yet: ${state.savedBy} saved meanwhile.`;
    case "conflict":
      return `Kept on this device, not sent: ${state.savedBy} saved another version. Choose at the top of the form.`;
    case "gone":
      return "Kept on this device, not sent: this campaign was removed in the meantime.";
    case "refused":
      return `Kept on this device, not sent: ${state.reason}`;
  }
}

const openedWords: Readonly<Record<KeptPage, string>> = {
  "not-yet": "Wait until this page is kept for use without a connection.",
  kept: "This page opens without a connection.",
  "not-possible": "This browser can’t keep the page: leave it open while there is no connection.",
};

/** One polite live region that says what became of the last change. */
export function DeviceStatus({ id, state, opened }: { id: string; state: SaveState; opened: KeptPage }) {
  const troubled = !["untouched", "typing", "saving", "saved", "kept"].includes(state.kind);
  return (
    <div className={`${styles.status} ${troubled ? styles.troubled : ""} screen-only`}>
      <p id={id} role="status" data-saving={state.kind}>
        {whereItIs(state)}
      </p>
      <p className={styles.opened}>{openedWords[opened]}</p>
    </div>
  );
}
