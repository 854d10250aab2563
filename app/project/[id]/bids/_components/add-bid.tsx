"use client";
import { useActionState } from "react";
import { addBid } from "../actions";
import styles from "./add-bid.module.css";

/** Starts a bid by its bidder; the letter is given by itself. */
export function AddBid({ project, letter }: { project: string; letter: string }) {
  const [outcome, add, pending] = useActionState(addBid.bind(null, project), { bidder: "", problem: "" });
  return (
    <form action={add} className={`${styles.form} screen-only`}>
      <div className={styles.field}>
        <label htmlFor="new-bidder">Bidder</label>
        <input
          id="new-bidder"
          name="bidder"
          defaultValue={outcome.bidder}
          autoComplete="off"
          required
          maxLength={200}
          aria-invalid={outcome.problem !== ""}
          aria-describedby={outcome.problem === "" ? undefined : "new-bidder-problem"}
        />
      </div>
      <button type="submit" aria-disabled={pending}>
        Add bid {letter}
      </button>
      {outcome.problem === "" ? null : (
        <p id="new-bidder-problem" role="alert" className={styles.problem}>
          {outcome.problem}
        </p>
      )}
    </form>
  );
}
