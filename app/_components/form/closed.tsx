"use client";
import { createContext, use } from "react";
import type { DocumentKind } from "#lib/store";
import styles from "./closed.module.css";

/** Why a kind of document can’t be changed by whoever reads the page, and which parts of it; "all" for the whole. */
export type ClosedKind = Readonly<{ parts: "all" | readonly string[]; sentence: string }>;

const Closed = createContext<Readonly<Partial<Record<DocumentKind, ClosedKind>>>>({});

/** Tells the forms on the pages inside what is closed, so that it is said before anything is typed. */
export function ClosedKinds({
  kinds,
  children,
}: {
  kinds: Readonly<Partial<Record<DocumentKind, ClosedKind>>>;
  children: React.ReactNode;
}) {
  return <Closed value={kinds}>{children}</Closed>;
}

/** Why the whole of a kind of document is closed; null where some of it is open. */
export function useClosedWhole(kind: DocumentKind): string | null {
  const closed = use(Closed)[kind];
  return closed?.parts === "all" ? closed.sentence : null;
}

/** Fields that can be read and not changed, with the sentence that says why; plain fields where nothing is closed. */
export function ClosedFields({ sentence, children }: { sentence: string | null; children: React.ReactNode }) {
  if (sentence === null) return children;
  return (
    <>
      <p className={styles.sentence} role="note">
        {sentence}
      </p>
      <fieldset disabled className={styles.closed}>
        {children}
      </fieldset>
    </>
  );
}

/** Part of a document, under its name there: closed where that part is. */
export function PartOf({ kind, part, children }: { kind: DocumentKind; part: string; children: React.ReactNode }) {
  const closed = use(Closed)[kind];
  const isClosed = closed !== undefined && closed.parts !== "all" && closed.parts.includes(part);
  return <ClosedFields sentence={isClosed ? closed.sentence : null}>{children}</ClosedFields>;
}
