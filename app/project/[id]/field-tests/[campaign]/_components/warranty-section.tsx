import type { WarrantyFacts } from "#lib/fieldtest";
import type { Result } from "#lib/quantity";
import { CopyText } from "../../../_components/copy-text";
import { Along } from "../../_components/along";
import styles from "../../_components/ask-form.module.css";
import type { ClauseChoice } from "../../_tests/clause-choice";
import type { InfillChoice } from "../../_tests/infill-question";

/** The plain facts that a warranty notice needs, to be copied. */
export function WarrantySection({
  choice,
  infill,
  facts,
}: {
  choice: ClauseChoice;
  /** Goes along, so that the infill above stays as it is. */
  infill: InfillChoice;
  facts: Result<WarrantyFacts, string>;
}) {
  return (
    <section aria-labelledby="warranty">
      <h2 id="warranty">Facts for a warranty notice</h2>
      <form action="#warranty" method="get" className={`${styles.form} screen-only`}>
        <Along values={infill} />
        <div className={styles.field}>
          <label htmlFor="clause-where">Where the clause stands</label>
          <input id="clause-where" name="where" defaultValue={choice.where} autoComplete="off" />
        </div>
        <div className={styles.field}>
          <label htmlFor="clause-limit">Level in the clause</label>
          <input id="clause-limit" name="limit" defaultValue={choice.limit} autoComplete="off" />
        </div>
        <div className={`${styles.field} ${styles.wide}`}>
          <label htmlFor="clause-words">Words of the clause</label>
          <textarea id="clause-words" name="words" rows={2} defaultValue={choice.words} />
        </div>
        <div>
          <button type="submit">Put the clause in</button>
        </div>
      </form>
      {facts.ok ? (
        <>
          {facts.value.sentences.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
          <CopyText text={facts.value.sentences.join("\n")} what="the facts" />
        </>
      ) : (
        <p role="alert" className={styles.problem}>
          {facts.problem}
        </p>
      )}
    </section>
  );
}
