"use client";
import { useActionState } from "react";
import { giveOut, type IssueOutcome } from "../actions";
import styles from "./versions.module.css";

/** Gives the section out. What was typed stays where something is the matter. */
export function IssueForm({
  project,
  name,
  today,
  seen,
  blanks,
  isAddendum,
}: {
  project: string;
  /** What it will be called. */
  name: string;
  today: string;
  /** The draft that stands on the page. */
  seen: string;
  blanks: number;
  isAddendum: boolean;
}) {
  const [outcome, send, isSending] = useActionState<IssueOutcome, FormData>(giveOut.bind(null, project), {
    date: today,
    reason: "",
    problems: [],
  });
  return (
    <form action={send} className={`${styles.issue} screen-only`} aria-label={name}>
      <input type="hidden" name="seen" value={seen} />
      <p>
        <label htmlFor="issue-date">Date</label>
        <input id="issue-date" name="date" type="date" defaultValue={outcome.date} required />
      </p>
      {isAddendum ? (
        <p>
          <label htmlFor="issue-reason">Reason</label>
          <span id="issue-reason-hint" className={styles.hint}>
            One sentence that every bidder reads: what was asked or found, and what changes.
          </span>
          <textarea
            id="issue-reason"
            name="reason"
            rows={2}
            defaultValue={outcome.reason}
            aria-describedby="issue-reason-hint"
          />
        </p>
      ) : null}
      {blanks === 0 ? null : (
        <p>
          <label className={styles.check}>
            <input type="checkbox" name="withBlanks" /> Give it out with{" "}
            {blanks === 1 ? "its blank" : `its ${blanks} blanks`}
          </label>
        </p>
      )}
      {outcome.problems.length === 0 ? null : (
        <ul role="alert" className={styles.problems}>
          {outcome.problems.map((problem) => (
            <li key={problem}>{problem}</li>
          ))}
        </ul>
      )}
      <button type="submit" className="primary" aria-disabled={isSending}>
        Give out as “{name}”
      </button>
      <p className="soft">What is given out can’t be changed or taken back. A later change is an addendum.</p>
    </form>
  );
}
