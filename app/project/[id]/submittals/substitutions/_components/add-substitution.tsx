"use client";
import { ActForm } from "../../../../../_components/act-form";
import styles from "../../_components/make-register.module.css";
import { addSubstitution } from "../actions";

/** Starts a request by what is to be substituted. */
export function AddSubstitution({ project }: { project: string }) {
  return (
    <ActForm action={addSubstitution.bind(null, project)} button="Add the request" label="Add a request" isPrimary>
      {(typed) => (
        <div className={styles.field}>
          <label htmlFor="new-item">What is to be substituted</label>
          <input id="new-item" name="item" type="text" maxLength={300} required defaultValue={typed.item} />
        </div>
      )}
    </ActForm>
  );
}
