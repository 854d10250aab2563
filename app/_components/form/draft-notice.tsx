"use client";
import { useState } from "react";
import styles from "./notice.module.css";
import { VersionTable } from "./version-table";

/** A draft that was typed over an older version: offered, never put in place unasked. */
export function DraftNotice<Values>({
  draft,
  stored,
  bringBack,
}: {
  draft: Values;
  stored: Values;
  bringBack: (draft: Values) => void;
}) {
  const [open, setOpen] = useState(true);
  if (!open) return null;
  return (
    <section className={styles.notice} aria-label="A draft of yours">
      <h2>A draft of yours is kept</h2>
      <p>You typed it over an older version of this page. The page below shows the newer one.</p>
      <VersionTable mine={draft} theirs={stored} theirsTitle="This page" />
      <p className="row">
        <button
          type="button"
          onClick={() => {
            bringBack(draft);
            setOpen(false);
          }}
        >
          Put my draft in place
        </button>
        <button type="button" className="plain" onClick={() => setOpen(false)}>
          Leave it for now
        </button>
      </p>
    </section>
  );
}
