"use client";
import styles from "./save-status.module.css";
import type { SaveState } from "./use-autosave";

const clock = (at: string) =>
  new Date(at).toLocaleTimeString("en-US", { hour: "numeric", minute: "2-digit", second: "2-digit" });

function sentence(state: SaveState): string {
  switch (state.kind) {
    case "untouched":
      return "Changes save by themselves.";
    case "typing":
      return "Not saved yet.";
    case "saving":
      return "Saving…";
    case "saved":
      return `Saved at ${clock(state.at)}.`;
    case "kept":
      return `Kept at ${clock(state.at)} as your draft. It does not count yet.`;
    case "kept-as-draft":
      return state.problems.length === 1
        ? "Kept as a draft: one entry can’t be read yet, so it doesn’t count so far."
        : `Kept as a draft: ${state.problems.length} entries can’t be read yet, so this doesn’t count so far.`;
    case "joining":
      return `Not saved yet: ${state.savedBy} saved meanwhile. Your text is kept and brought together with theirs.`;
    case "conflict":
      return `Not saved: ${state.savedBy} saved another version. Your text is kept; choose at the top of the form.`;
    case "gone":
      return "Not saved: this was removed in the meantime. Your text is kept in this browser.";
    case "refused":
      return `Not saved: ${state.reason} Your text is kept in this browser.`;
    case "unreachable":
      return "Not saved: the server can’t be reached. Your text is kept in this browser and sent again by itself.";
  }
}

/** Says, in one polite live region, what became of the last change. */
export function SaveStatus({ id, state, goToProblem }: { id: string; state: SaveState; goToProblem: () => void }) {
  const troubled = !["untouched", "typing", "saving", "saved", "kept"].includes(state.kind);
  return (
    <div className={`${styles.status} ${troubled ? styles.troubled : ""} screen-only`}>
      <p id={id} role="status" data-saving={state.kind}>
        {sentence(state)}
      </p>
      <button type="submit" className="plain">
        Save now
      </button>
      {state.kind === "kept-as-draft" ? (
        <button type="button" className="plain" onClick={goToProblem}>
          Go to the first
        </button>
      ) : null}
    </div>
  );
}
