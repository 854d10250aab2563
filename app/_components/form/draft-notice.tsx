"use client";
import Link from "next/link";
import { useState } from "react";
import { conflictPage } from "./conflict-page";
import { discardDraft } from "./discard-draft";
import styles from "./notice.module.css";
import type { DocumentAddress } from "./save-outcome";
import { VersionTable } from "./version-table";

/** A draft that was typed over an older version: offered, never put in place unasked, kept until it is discarded. */
export function DraftNotice<Values>({
  where,
  draft,
  stored,
  bringBack,
}: {
  where: DocumentAddress;
  draft: Values;
  stored: Values;
  bringBack: (draft: Values) => void;
}) {
  const [open, setOpen] = useState(true);
  if (!open) return null;
  const choosing = conflictPage(where);
  const discard = async () => {
    setOpen(false);
    await discardDraft(where);
  };
  return (
    <section className={styles.notice} aria-label="A draft of yours">
      <h2>A draft of yours is kept</h2>
      <p>
        You typed it over an older version of this page, or it could not be saved as it was. The page below shows what
        stands now.
      </p>
      <VersionTable mine={draft} theirs={stored} theirsTitle="This page" />
      <p className="row">
        <button
          type="button"
          onClick={() => {
            bringBack(draft);
            void discard();
          }}
        >
          Put my draft in place
        </button>
        <button type="button" className="plain" onClick={() => setOpen(false)}>
          Leave it for now
        </button>
        {choosing === null ? null : (
          <Link href={choosing} prefetch={false}>
            Choose entry by entry
          </Link>
        )}
        <button type="button" className="plain" onClick={() => void discard()}>
          Discard my draft
        </button>
      </p>
    </section>
  );
}
