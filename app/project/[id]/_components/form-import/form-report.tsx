import type { FormCell, FormChange } from "#lib/document";
import { Scroller } from "../../../../_components/scroller";
import type { FormReading } from "../../_actions/read-form";
import styles from "./form-import.module.css";

type Read = Extract<FormReading, { kind: "read" }>;

/** What a form would change, what of it needs attention, and every cell as it was read. */
export function FormReport({ reading: { changes, cells, remarks } }: { reading: Read }) {
  const troubled = cells.filter(({ problem }) => problem !== null);
  const moved = changes.filter(({ kind }) => kind !== "unchanged");
  const same = changes.length - moved.length;
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
          <th scope="col">About</th>
          <th scope="col">Column</th>
          <th scope="col">As typed</th>
          <th scope="col">As read</th>
        </tr>
      </thead>
      <tbody>
        {cells.map(({ sheet, address, about, heading, text, reading, problem }) => (
          <tr key={`${sheet} ${address}`}>
            <th scope="row">
              {sheet} {address}
            </th>
            <td>{about}</td>
            <td>{heading}</td>
            <td>{text === "" ? "empty" : text}</td>
            <td>{problem === null ? reading || "as typed" : <span className={styles.problem}>{problem}</span>}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

const kindWords = { added: "Added", changed: "Changed", gone: "Not in the form", unchanged: "As it is" } as const;

function Changes({ changes }: { changes: readonly FormChange[] }) {
  return (
    <table className={styles.table}>
      <caption>What the import does</caption>
      <thead>
        <tr>
          <th scope="col">Part</th>
          <th scope="col">Entry</th>
          <th scope="col">What happens</th>
          <th scope="col">Text</th>
        </tr>
      </thead>
      <tbody>
        {changes.map(({ part, what, kind, texts }, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: two entries may be called alike, and the list never moves
          <tr key={index}>
            <td>{part}</td>
            <th scope="row">{what}</th>
            <td>{kindWords[kind]}</td>
            <td>
              <ul className={styles.texts}>
                {texts.map(({ field, from, to }) => (
                  <li key={field}>
                    {field}: {kind === "changed" ? `${from === "" ? "nothing" : `“${from}”`} → ` : ""}
                    {kind === "gone" ? `“${from}”` : to === "" ? "nothing" : `“${to}”`}
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
