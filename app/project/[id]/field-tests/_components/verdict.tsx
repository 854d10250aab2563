import { type LocationVerdict, locationVerdicts } from "#lib/fieldtest";
import { statusMarks } from "../../../../_components/status";
import styles from "./verdict.module.css";

export type VerdictKind = LocationVerdict | "nothing-tested" | "no-level" | "not-comparable";

const words: Readonly<Record<VerdictKind, string>> = {
  ...locationVerdicts,
  "nothing-tested": "nothing tested yet",
  "no-level": "no level",
  "not-comparable": "not comparable",
};

/** A wave under the mark: within the measuring uncertainty either answer may be the true one. */
const wave = <path d="M2 15q3 -3 6 -1t6 -1" fill="none" stroke="currentColor" strokeWidth="1.25" />;

const marks: Readonly<Record<VerdictKind, React.ReactNode>> = {
  meets: statusMarks.meets,
  "meets-within-uncertainty": (
    <>
      <path d="M2 6.5 6 10.5 14 1.5" fill="none" stroke="currentColor" strokeWidth="2" />
      {wave}
    </>
  ),
  "does-not-meet-within-uncertainty": (
    <>
      <path d="M2 1.5h12M8 2v8M4.5 6.5 8 10l3.5-3.5" fill="none" stroke="currentColor" strokeWidth="2" />
      {wave}
    </>
  ),
  "does-not-meet": statusMarks["falls short"],
  "nothing-tested": statusMarks["not shown"],
  "no-level": statusMarks["not shown"],
  "not-comparable": statusMarks["not comparable"],
};

/** How a level or a field stands to its limit: a word and a mark of its own. */
export function Verdict({ of }: { of: VerdictKind }) {
  const troubled = of === "does-not-meet" || of === "does-not-meet-within-uncertainty";
  return (
    <span className={`${styles.verdict} ${troubled ? styles.trouble : ""}`}>
      <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
        {marks[of]}
      </svg>
      {words[of]}
    </span>
  );
}
