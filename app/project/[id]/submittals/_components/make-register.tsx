"use client";
import { ActForm } from "../../../../_components/act-form";
import { counted } from "../../../../_components/in-words";
import { makeRegister } from "../actions";
import styles from "./make-register.module.css";

/** Adds the lines that the specification asks for and that are not here yet, with one due date for all of them. */
export function MakeRegister({ project, lacking }: { project: string; lacking: number }) {
  return (
    <ActForm
      action={makeRegister.bind(null, project)}
      button={`Add ${counted(lacking, "line", "lines")} from the specification`}
      label="Lines from the specification"
      isPrimary
    >
      {(typed) => (
        <div className={styles.field}>
          <label htmlFor="due">Due on</label>
          <span id="due-hint" className={styles.hint}>
            For all of these lines; it can be changed line by line. Empty: no date yet.
          </span>
          <input id="due" name="due" type="date" defaultValue={typed.due} aria-describedby="due-hint" />
        </div>
      )}
    </ActForm>
  );
}
