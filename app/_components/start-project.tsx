"use client";
import { useActionState } from "react";
import { startProject } from "../actions";
import styles from "../page.module.css";
import { InOrganisation } from "./in-organisation";

/** Starts an empty project; what was typed stays in place if something is missing. */
export function StartProject({ organisations }: { organisations: readonly Readonly<{ id: string; name: string }>[] }) {
  const [outcome, start, pending] = useActionState(startProject, {
    name: "",
    owner: "",
    organisation: "",
    problem: "",
  });
  return (
    <form action={start}>
      <InOrganisation organisations={organisations} id="project-organisation" chosen={outcome.organisation} />
      <label htmlFor="project-name">Name of the project</label>
      <input id="project-name" name="name" defaultValue={outcome.name} autoComplete="off" required maxLength={200} />
      <label htmlFor="project-owner">Owner</label>
      <input
        id="project-owner"
        name="owner"
        defaultValue={outcome.owner}
        autoComplete="organization"
        required
        maxLength={200}
      />
      {outcome.problem === "" ? null : (
        <p role="alert" className={styles.problem}>
          {outcome.problem}
        </p>
      )}
      <button type="submit" aria-disabled={pending}>
        Start an empty project
      </button>
    </form>
  );
}
