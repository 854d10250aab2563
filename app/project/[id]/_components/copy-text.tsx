"use client";
import { useState } from "react";

type Outcome = "" | "Copied." | "The browser did not allow copying. Select the text and copy it.";

/** Puts a text on the clipboard and says whether it worked. */
export function CopyText({ text, what }: { text: string; what: string }) {
  const [outcome, setOutcome] = useState<Outcome>("");
  const copy = () =>
    navigator.clipboard.writeText(text).then(
      () => setOutcome("Copied."),
      () => setOutcome("The browser did not allow copying. Select the text and copy it."),
    );
  return (
    <p className="row screen-only">
      <button type="button" onClick={() => void copy()}>
        Copy {what}
      </button>
      <span role="status">{outcome}</span>
    </p>
  );
}
