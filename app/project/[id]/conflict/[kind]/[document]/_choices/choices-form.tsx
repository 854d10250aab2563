"use client";
import { useActionState } from "react";
import type { Side } from "#lib/together";
import type { Reply } from "../../../../../../_components/reply-form";
import { Scroller } from "../../../../../../_components/scroller";
import styles from "./choices-form.module.css";

/** One place at which two versions differ, in words. */
export type Choice = Readonly<{
  name: string;
  place: string;
  changedBy: string;
  base: readonly string[];
  mine: readonly string[];
  theirs: readonly string[];
  chosen: Side | null;
}>;

const nothingYet: Reply = { problem: "", done: "", link: "", typed: {} };

/** Each place with both versions and the choice between them. Where only one side changed it, that side is chosen at first. */
export function ChoicesForm({
  action,
  choices,
  savedBy,
}: {
  action: (before: Reply, form: FormData) => Promise<Reply>;
  choices: readonly Choice[];
  savedBy: string;
}) {
  const [reply, send, pending] = useActionState(action, nothingYet);
  return (
    <form action={send} aria-label="Choose place by place">
      <Scroller label="Places at which the versions differ">
        <table className={styles.table}>
          <caption className="visually-hidden">Places at which the versions differ</caption>
          <thead>
            <tr>
              <th scope="col">Place</th>
              <th scope="col">Changed by</th>
              <th scope="col">Before</th>
              <th scope="col">Yours</th>
              <th scope="col">{savedBy}</th>
            </tr>
          </thead>
          <tbody>
            {choices.map((choice) => (
              <Row key={choice.name} choice={choice} savedBy={savedBy} typed={reply.typed[choice.name]} />
            ))}
          </tbody>
        </table>
      </Scroller>
      <p className={styles.buttons}>
        <button type="submit" className="primary" aria-disabled={pending}>
          Save what is chosen
        </button>
      </p>
      {reply.problem === "" ? null : (
        <p role="alert" className={styles.problem}>
          {reply.problem}
        </p>
      )}
    </form>
  );
}

function Row({ choice, savedBy, typed }: { choice: Choice; savedBy: string; typed: string | undefined }) {
  const { name, place, changedBy, base } = choice;
  const chosen = typed ?? choice.chosen;
  return (
    <tr>
      <th scope="row">{place}</th>
      <td>{changedBy}</td>
      <td>
        <Lines lines={base} />
      </td>
      {(["mine", "theirs"] as const).map((side) => (
        <td key={side}>
          <label className={styles.choice}>
            <input
              type="radio"
              name={name}
              value={side}
              defaultChecked={chosen === side}
              aria-label={`${side === "mine" ? "Yours" : savedBy}: ${place}`}
            />
            <span>
              <Lines lines={choice[side]} />
            </span>
          </label>
        </td>
      ))}
    </tr>
  );
}

const Lines = ({ lines }: { lines: readonly string[] }) =>
  lines.map((line, index) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: lines of a text have no other name
    <span key={index} className={styles.line}>
      {line}
    </span>
  ));
