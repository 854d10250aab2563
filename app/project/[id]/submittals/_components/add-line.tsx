"use client";
import { submittalKinds } from "#lib/requirement";
import { ActForm } from "../../../../_components/act-form";
import { addLine } from "../actions";
import styles from "./make-register.module.css";

/** Adds a line that no clause asks for, such as a drawing that the owner wants to see. */
export function AddLine({ project }: { project: string }) {
  return (
    <ActForm action={addLine.bind(null, project)} button="Add the line" label="Add a line by hand">
      {(typed) => (
        <>
          <div className={styles.field}>
            <label htmlFor="new-item">What is to be handed in</label>
            <input id="new-item" name="item" type="text" maxLength={300} required defaultValue={typed.item} />
          </div>
          <div className={styles.field}>
            <label htmlFor="new-kind">Kind</label>
            <select id="new-kind" name="kind" defaultValue={typed.kind ?? "test-report"}>
              {Object.entries(submittalKinds).map(([value, { label }]) => (
                <option key={value} value={value}>
                  {label}
                </option>
              ))}
            </select>
          </div>
        </>
      )}
    </ActForm>
  );
}
