"use client";
import { useActionState } from "react";
import type { Side } from "#lib/together";
import type { Reply } from "../../../../../../_components/reply-form";
import blocks from "../../../../../../_components/rows-as-blocks.module.css";
import { Scroller } from "../../../../../../_components/scroller";
import { tableRoles } from "../../../../../../_components/table-roles";
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
        <table {...tableRoles.table} className={`${blocks.table} ${styles.table}`}>
          <caption className="visually-hidden">Places at which the versions differ</caption>
          <thead {...tableRoles.rows}>
            <tr {...tableRoles.row}>
              {["Place", "Changed by", "Before", "Yours", savedBy].map((head) => (
                <th key={head} {...tableRoles.columnHead} scope="col">
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody {...tableRoles.rows}>
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
    <tr {...tableRoles.row}>
      <th {...tableRoles.rowHead} scope="row">
        {place}
      </th>
      <td {...tableRoles.cell} data-label="Changed by">
        {changedBy}
      </td>
      <td {...tableRoles.cell} data-label="Before">
        <Lines lines={base} />
      </td>
      {(["mine", "theirs"] as const).map((side) => (
        <td key={side} {...tableRoles.cell} data-label={side === "mine" ? "Yours" : savedBy}>
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
