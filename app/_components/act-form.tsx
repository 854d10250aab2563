"use client";
import { useActionState } from "react";
import styles from "./act-form.module.css";

/** Why an act was not done; none where it was, or where nothing was asked yet. What was typed comes back. */
export type ActReply = Readonly<{ sentences: readonly string[]; typed: Readonly<Record<string, string>> }>;

const nothingAsked: ActReply = { sentences: [], typed: {} };

/** One act with its button: what it needs is asked for above the button, and what it lacks is said below. */
export function ActForm({
  action,
  button,
  isPrimary = false,
  label,
  children,
}: {
  action: (before: ActReply, form: FormData) => Promise<ActReply>;
  button: string;
  isPrimary?: boolean;
  label: string;
  children?: (typed: Readonly<Record<string, string>>) => React.ReactNode;
}) {
  const [reply, act, pending] = useActionState(action, nothingAsked);
  return (
    <form action={act} aria-label={label} className={`${styles.form} screen-only`}>
      {children?.(reply.typed)}
      <button type="submit" className={isPrimary ? "primary" : undefined} aria-disabled={pending}>
        {button}
      </button>
      {reply.sentences.length === 0 ? null : (
        <div role="alert" className={styles.problem}>
          <p>Not done:</p>
          <ul>
            {reply.sentences.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </div>
      )}
    </form>
  );
}

/** A reason or a remark that an act is done with. */
export function ActNote({
  id,
  label,
  hint,
  typed,
  isRequired,
}: {
  id: string;
  label: string;
  hint?: string;
  typed: string | undefined;
  isRequired: boolean;
}) {
  return (
    <div className={styles.note}>
      <label htmlFor={id}>{label}</label>
      {hint === undefined ? null : (
        <span id={`${id}-hint`} className={styles.hint}>
          {hint}
        </span>
      )}
      <textarea
        id={id}
        name="note"
        rows={3}
        maxLength={2000}
        defaultValue={typed}
        required={isRequired}
        {...(hint === undefined ? {} : { "aria-describedby": `${id}-hint` })}
      />
    </div>
  );
}
