"use client";
import { useFormContext, useWatch } from "react-hook-form";
import { ChoiceField } from "../../../../../_components/form/choice-field";
import { Scroller } from "../../../../../_components/scroller";
import type { SpecificationValues } from "../../_components/specification-values";
import { answers } from "./answers";
import type { SystemQuestions } from "./asked-of";
import styles from "./competition.module.css";

/** Whether each bid does what each clause in words asks. */
export function BidAnswers({ questions: { clauses, bids } }: { questions: SystemQuestions }) {
  const { control } = useFormContext<SpecificationValues>();
  const given = useWatch({ control, name: "bidAnswers" });
  return (
    <Scroller label="Bids on clauses in words, table">
      <table className={styles.matrix}>
        <caption>Does the bid do it?</caption>
        <thead>
          <tr>
            <th scope="col">Clause</th>
            {bids.map(({ id, letter }) => (
              <th key={id} scope="col">
                Bid {letter}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {clauses.map(({ id, label, asked }) => (
            <tr key={id}>
              <th scope="row">
                {label}
                <span className={styles.under}>{asked}</span>
              </th>
              {bids.map((bid) => {
                const at = given.findIndex((answer) => answer.bid === bid.id && answer.clause === id);
                return (
                  <td key={bid.id}>
                    {at === -1 ? null : (
                      <ChoiceField
                        name={`bidAnswers.${at}.meets`}
                        label={`${label}, bid ${bid.letter}`}
                        choices={answers}
                        labelHidden
                      />
                    )}
                  </td>
                );
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </Scroller>
  );
}
