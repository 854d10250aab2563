"use client";
import { useActionState } from "react";
import { type Choice, options } from "../../../../_components/form/choice-field";
import { addCampaign } from "../actions";
import styles from "./ask-form.module.css";

const kinds: readonly Choice[] = [
  { value: "acceptance", label: "Acceptance test" },
  { value: "yearly", label: "Yearly test" },
  { value: "other", label: "Other test" },
];

/** Starts a campaign by its day; what was typed stays in place if something is missing. */
export function AddCampaign({
  project,
  kind,
  bids,
  installed,
  plan,
}: {
  project: string;
  kind: "acceptance" | "yearly";
  bids: readonly Choice[];
  installed: string;
  /** The plan above as an address; null where it can't be drawn. */
  plan: string | null;
}) {
  const [outcome, add, pending] = useActionState(addCampaign.bind(null, project), { date: "", problem: "" });
  return (
    <form action={add} className={`${styles.form} screen-only`}>
      <input type="hidden" name="plan" value={plan ?? ""} />
      <div className={styles.field}>
        <label htmlFor="new-date">Day of the test</label>
        <input
          id="new-date"
          name="date"
          type="date"
          defaultValue={outcome.date}
          required
          aria-invalid={outcome.problem !== ""}
          aria-describedby={outcome.problem === "" ? undefined : "new-date-problem"}
        />
      </div>
      <div className={styles.field}>
        <label htmlFor="new-kind">Kind of test</label>
        <select id="new-kind" name="kind" defaultValue={kind}>
          {options(kinds)}
        </select>
      </div>
      <div className={styles.field}>
        <label htmlFor="new-installed">Bid that was installed</label>
        <select id="new-installed" name="installed" defaultValue={installed}>
          {options(bids)}
        </select>
      </div>
      <div className={styles.field}>
        <label htmlFor="new-start">Locations to start with</label>
        <select id="new-start" name="start" defaultValue={plan === null ? "empty" : "plan"}>
          {plan === null ? null : <option value="plan">Those of the plan above</option>}
          <option value="empty">None</option>
        </select>
      </div>
      <div>
        <button type="submit" className="primary" aria-disabled={pending}>
          Add the campaign
        </button>
      </div>
      {outcome.problem === "" ? null : (
        <p id="new-date-problem" role="alert" className={`${styles.problem} ${styles.wide}`}>
          {outcome.problem}
        </p>
      )}
    </form>
  );
}
