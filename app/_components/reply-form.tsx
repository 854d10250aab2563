"use client";
import { useActionState, useEffect, useId, useRef } from "react";
import styles from "./reply-form.module.css";

/** What a form came to. What was typed and chosen comes back, so that nothing has to be typed twice; passwords never do. */
export type Reply = Readonly<{
  problem: string;
  done: string;
  /** A link to be given to somebody, shown once. */
  link: string;
  /** By field; several values of one field as lines. */
  typed: Readonly<Record<string, string>>;
}>;

/** What is asked for, as one line. */
export type AskedField = Readonly<{
  name: string;
  label: string;
  type?: "text" | "email" | "password" | "date";
  hint?: string;
  autoComplete?: string;
  value?: string;
  longest?: number;
  isOptional?: true;
}>;

/** One or several of a few things; what was chosen comes back where something else is amiss. */
export type AskedChoice = Readonly<{
  name: string;
  legend: string;
  choose: "one" | "several";
  choices: readonly Readonly<{ value: string; label: string }>[];
  /** What is chosen at first. */
  chosen?: string;
}>;

const nothingYet: Reply = { problem: "", done: "", link: "", typed: {} };

/** A form that is sent once and answered in place. */
export function ReplyForm({
  action,
  label,
  button,
  fields,
  choice,
  isPlain = false,
}: {
  action: (before: Reply, form: FormData) => Promise<Reply>;
  label: string;
  button: string;
  fields: readonly AskedField[];
  /** A button alone, such as in a row of a table. */
  isPlain?: boolean;
  choice?: AskedChoice;
}) {
  const [reply, send, pending] = useActionState(action, nothingYet);
  const id = useId();
  const answer = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (reply.link !== "") answer.current?.focus();
  }, [reply]);
  return (
    <form action={send} aria-label={label} className={isPlain ? undefined : styles.form}>
      {fields.map(
        ({ name, label: words, type = "text", hint, autoComplete = "off", value, longest = 200, isOptional }) => (
          <div key={name} className={styles.field}>
            <label htmlFor={`${id}-${name}`}>{words}</label>
            {hint === undefined ? null : (
              <span id={`${id}-${name}-hint`} className={styles.hint}>
                {hint}
              </span>
            )}
            <input
              id={`${id}-${name}`}
              name={name}
              type={type}
              autoComplete={autoComplete}
              defaultValue={type === "password" ? "" : (reply.typed[name] ?? value ?? "")}
              maxLength={longest}
              required={!isOptional}
              {...(hint === undefined ? {} : { "aria-describedby": `${id}-${name}-hint` })}
            />
          </div>
        ),
      )}
      {choice === undefined ? null : <Choice asked={choice} typed={reply.typed[choice.name]} />}
      <button type="submit" className={isPlain ? "plain" : "primary"} aria-disabled={pending}>
        {button}
      </button>
      {reply.problem === "" ? null : (
        <p role="alert" className={styles.problem}>
          {reply.problem}
        </p>
      )}
      {reply.done === "" ? null : (
        <div role="status" className={styles.done} tabIndex={-1} ref={answer}>
          <p>{reply.done}</p>
          {reply.link === "" ? null : (
            <input
              aria-label="The link"
              className={styles.link}
              readOnly
              value={reply.link}
              onFocus={({ target }) => target.select()}
            />
          )}
        </div>
      )}
    </form>
  );
}

function Choice({ asked, typed }: { asked: AskedChoice; typed: string | undefined }) {
  const { name, legend, choose, choices, chosen = "" } = asked;
  const held = (typed ?? chosen).split("\n");
  return (
    <fieldset className={styles.choice}>
      <legend>{legend}</legend>
      {choices.map(({ value, label }) => (
        <label key={value}>
          <input
            type={choose === "one" ? "radio" : "checkbox"}
            name={name}
            value={value}
            defaultChecked={held.includes(value)}
          />{" "}
          {label}
        </label>
      ))}
    </fieldset>
  );
}
