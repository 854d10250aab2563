"use client";
import { useWatch } from "react-hook-form";
import type { GateKind } from "#lib/criteria";
import { evidenceLevels } from "#lib/evaluation";
import { clausePlaces } from "#lib/requirement";
import { ChoiceField } from "../../../../../_components/form/choice-field";
import { KindField } from "../../../../../_components/form/kind-field";
import { LongTextField } from "../../../../../_components/form/long-text-field";
import { TextField } from "../../../../../_components/form/text-field";
import { gateTemplates, type Kind } from "../../../requirements/_components/criterion-kinds";
import { LimitFields } from "../../../requirements/_components/limit-fields";
import { measureChoices, measureOf } from "../../../requirements/_components/measure-choices";
import styles from "./clauses.module.css";
import { limitChoices } from "./limit-choices";

const measures = [{ value: "", label: "Asked in words" }, ...measureChoices];
const evidence = evidenceLevels.map(({ level, label }) => ({ value: level, label }));
const places = Object.entries(clausePlaces).map(([value, label]) => ({ value, label }));

/** What a clause says that no criterion says for it. */
export function OwnClauseFields({ index }: { index: number }) {
  const at = `clauses.${index}`;
  const measure = measureOf(useWatch({ name: `${at}.measure` }));
  return (
    <>
      <TextField name={`${at}.label`} label="Name of the clause" className={styles.wide} />
      <LongTextField
        name={`${at}.reason`}
        label="Reason"
        hint="Why you ask, in a sentence that a bidder and the public can follow."
        rows={2}
        className={styles.wide}
      />
      <ChoiceField name={`${at}.measure`} label="Property" choices={measures} className={styles.wide} />
      {measure === null ? (
        <>
          <LongTextField
            name={`${at}.asked`}
            label="What is asked"
            hint="One sentence, in small letters at its start, that can be answered by yes or no."
            rows={2}
            className={styles.wide}
          />
          <ChoiceField name={`${at}.place`} label="Article in which it stands" choices={places} />
        </>
      ) : (
        <KindField<Kind<GateKind>>
          name={`${at}.limit`}
          label="Kind of limit"
          choices={limitChoices}
          templates={gateTemplates}
          className={styles.wide}
          fields={(kind) => <LimitFields kind={kind} at={`${at}.limit`} dimension={measure.dimension} />}
        />
      )}
      <ChoiceField name={`${at}.evidence`} label="Least evidence with the bid" choices={evidence} />
    </>
  );
}
