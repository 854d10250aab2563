import type { FormCell, FormChange } from "#lib/document";
import { Scroller } from "../../../../_components/scroller";
import type { FormReading } from "../../_actions/read-form";
import styles from "./form-import.module.css";

type Read = Extract<FormReading, { kind: "read" }>;
type Moved = FormChange & Readonly<{ kind: "added" | "changed" }>;

/** What a form would change, what of it needs attention, and every cell as it was read. */
export function FormReport({ reading: { changes, cells, remarks } }: { reading: Read }) {
  const troubled = cells.filter(({ problem }) => problem !== null);
  const moved = changes.filter((change): change is Moved => change.kind === "added" || change.kind === "changed");
  const gone = changes.filter(({ kind }) => kind === "gone");
  const same = changes.length - moved.length - gone.length;
  return (
    <>
      <p role="status">
        {counted(cells.length, "cell was read.", "cells were read.")}{" "}
        {troubled.length === 0
          ? "All of them read."
          : `${counted(troubled.length, "cell needs attention.", "cells need attention.")} What can’t be read keeps its text in a draft of the bid; until it is put right there, the bid counts as it was saved before.`}
      </p>
      {remarks.length === 0 ? null : (
        <ul>
          {remarks.map((remark) => (
            <li key={remark}>{remark}</li>
          ))}
        </ul>
      )}
      {troubled.length === 0 ? null : (
        <Scroller label="Cells that need attention">
          <Cells cells={troubled} caption="Cells that need attention" />
        </Scroller>
      )}
      {moved.length === 0 ? null : (
        <Scroller label="What the import does">
          <Changes changes={moved} />
        </Scroller>
      )}
      {gone.length === 0 ? null : (
        <details>
          <summary>
            {counted(gone.length, "entry of the bid is not in the form", "entries of the bid are not in the form")}
          </summary>
          <ul>
            {gone.map(({ part, what }, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: two entries may be called alike, and the list never moves
              <li key={index}>
                {part}: {what}
              </li>
            ))}
          </ul>
        </details>
      )}
      {same === 0 ? null : <p>{counted(same, "entry stays as it is.", "entries stay as they are.")}</p>}
      <details>
        <summary>Every cell, as it was read</summary>
        <Scroller label="Every cell, as it was read">
          <Cells cells={cells} caption="Every cell, as it was read" />
        </Scroller>
      </details>
    </>
  );
}

const counted = (count: number, one: string, several: string) => (count === 1 ? `1 ${one}` : `${count} ${several}`);

function Cells({ cells, caption }: { cells: readonly FormCell[]; caption: string }) {
  return (
    <table className={styles.table}>
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">Cell</th>
          <th scope="col">As typed, and as read</th>
        </tr>
      </thead>
      <tbody>
        {cells.map(({ sheet, address, about, heading, text, reading, problem }) => (
          <tr key={`${sheet} ${address}`}>
            <th scope="row">
              {sheet} {address}
              <span className={styles.under}>{[about, heading].filter((part) => part !== "").join(", ")}</span>
            </th>
            <td>
              {text === "" ? "empty" : `“${text}”`}
              {problem === null ? (
                reading !== "" && <span className={styles.reading}>{reading}</span>
              ) : (
                <span className={styles.problem}>{problem}</span>
              )}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

const kindWords = { added: "added", changed: "changed" } as const;

/** What an entry says where it says nothing; not worth a line of its own in what is added. */
const nothingSaid = "not stated";

function Changes({ changes }: { changes: readonly Moved[] }) {
  return (
    <table className={styles.table}>
      <caption>What the import does</caption>
      <thead>
        <tr>
          <th scope="col">Entry</th>
          <th scope="col">Text</th>
        </tr>
      </thead>
      <tbody>
        {changes.map(({ part, what, kind, texts }, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: two entries may be called alike, and the list never moves
          <tr key={index}>
            <th scope="row">
              {what}
              <span className={styles.under}>
                {part}, {kindWords[kind]}
              </span>
            </th>
            <td>
              <ul className={styles.texts}>
                {texts
                  .filter(({ to }) => kind === "changed" || to !== nothingSaid)
                  .map(({ field, from, to }) => (
                    <li key={field}>
                      {field}: {kind === "changed" ? `${quoted(from)} → ` : ""}
                      {quoted(to)}
                    </li>
                  ))}
              </ul>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

const quoted = (text: string): string => (text === "" ? "nothing" : `“${text}”`);
