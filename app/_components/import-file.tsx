"use client";
import { useActionState } from "react";
import { importProject } from "../actions";
import styles from "../page.module.css";
import { InOrganisation } from "./in-organisation";

/** Reads a project file; a file that can't be read is answered with what was found and what was expected. */
export function ImportFile({ organisations }: { organisations: readonly Readonly<{ id: string; name: string }>[] }) {
  const [outcome, open, pending] = useActionState(importProject, { problem: "" });
  return (
    <form action={open}>
      <p>A file that Evenfield wrote, from another computer or from an archive.</p>
      <InOrganisation organisations={organisations} id="file-organisation" />
      <label htmlFor="project-file">Project file</label>
      <input id="project-file" type="file" name="file" accept="application/json,.json" required />
      {outcome.problem === "" ? null : (
        <p role="alert" className={styles.problem}>
          {outcome.problem}
        </p>
      )}
      <button type="submit" aria-disabled={pending}>
        Open the file
      </button>
    </form>
  );
}
