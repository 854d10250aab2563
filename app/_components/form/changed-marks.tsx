"use client";
import { createContext, use } from "react";
import styles from "./autosave-form.module.css";

/** What somebody else changed on the page a moment ago: paths as the form names its fields, and what people call them. */
export type ChangedMarks = Readonly<{ by: string; paths: readonly string[]; names: readonly string[] }>;

const Marks = createContext<ChangedMarks | null>(null);

export const MarkedFields = ({ marks, children }: { marks: ChangedMarks | null; children: React.ReactNode }) => (
  <Marks value={marks}>{children}</Marks>
);

/** Who changed a field a moment ago, or the list that it stands in; null where nobody did. */
export function useChangedBy(name: string): string | null {
  const marks = use(Marks);
  return marks?.paths.some((path) => name === path || name.startsWith(`${path}.`)) ? marks.by : null;
}

const mostNamed = 3;

/** Says once, without moving anything, what others changed here. */
export function ChangedStatus({ marks }: { marks: ChangedMarks | null }) {
  return (
    <p role="status" className={`${styles.changes} screen-only`} data-changed={marks?.paths.length ?? 0}>
      {marks === null ? null : sentence(marks)}
    </p>
  );
}

function sentence({ by, names }: ChangedMarks): string {
  const count = names.length === 1 ? "an entry" : `${names.length} entries`;
  const named = names.length <= mostNamed ? `: ${names.join("; ")}` : "";
  return `${by} changed ${count} on this page just now${named}. What you typed stands as it is.`;
}
