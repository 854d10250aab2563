"use client";
import { useWatch } from "react-hook-form";
import { matchMethod, methodOf, propertyOf, testMethods } from "#lib/claim";
import { claimedMeasures } from "#lib/evaluation";
import { submittalKinds } from "#lib/requirement";
import { CheckField, ChecksField } from "../../../../../_components/form/check-field";
import { ChoiceField } from "../../../../../_components/form/choice-field";
import { LongTextField } from "../../../../../_components/form/long-text-field";
import { TextField } from "../../../../../_components/form/text-field";
import { measureOf } from "../../../requirements/_components/measure-choices";
import styles from "./clauses.module.css";

const methods = [
  { value: "", label: "None named" },
  ...testMethods.map(({ id, designation, name }) => ({ value: id, label: `${designation}, ${name}` })),
];
const holdsAt = [
  { value: "not-stated", label: "Not said" },
  { value: "each-point", label: "Each point or sample" },
  { value: "average", label: "The average of all readings" },
  { value: "whole", label: "The whole, as one figure" },
];
const submittals = Object.entries(submittalKinds).map(([value, { label }]) => ({ value, label }));

/** What a specification adds to a requirement. */
export function ClauseFields({ index, measure }: { index: number; measure: string }) {
  const at = `clauses.${index}`;
  const isInWords = measure === "";
  const dimension = measureOf(measure)?.dimension ?? "number";
  const tolerance = dimension === "temperature" ? "temperatureDifference" : dimension;
  return (
    <>
      <CheckField name={`${at}.isOn`} label="Stands in the text" />
      <div className={styles.group}>
        {isInWords ? null : <MethodField at={at} measure={measure} />}
        {isInWords ? null : (
          <TextField name={`${at}.edition`} label="Edition" hint="For instance “2021” or “current edition”." />
        )}
        {isInWords ? null : (
          <TextField
            name={`${at}.condition`}
            label="Condition"
            hint="For instance “new”, “year 5, wet” or “at 60 °C”. Empty: whenever it is tested."
          />
        )}
        {isInWords ? null : <ChoiceField name={`${at}.holdsAt`} label="The limit holds for" choices={holdsAt} />}
        {isInWords ? null : (
          <TextField
            name={`${at}.tolerance`}
            label="Tolerance of one reading"
            hint="How far one reading may stray from the limit. Empty: not at all."
            dimension={tolerance}
          />
        )}
        <TextField
          name={`${at}.laterTests`}
          label="Tested again every"
          hint="For instance “1 year”. Empty: not again."
          dimension="time"
        />
      </div>
      <ChecksField name={`${at}.submittals`} label="To be handed in" choices={submittals} />
      <LongTextField
        name={`${at}.acceptance`}
        label="Test at completion"
        hint="Who checks it on the finished work, how and when; or that the report with the bid is enough, and why."
        rows={2}
        className={styles.wide}
      />
      <LongTextField
        name={`${at}.remedy`}
        label="Remedy when missed"
        hint="What is done, and by when: groom, top up, repair, replace, reduce the price."
        rows={2}
        className={styles.wide}
      />
      <TextField
        name={`${at}.limitSource`}
        label="Source of the limit"
        hint="A standard with its edition, a guideline, the owner’s contract, or “common practice, no source”. Told to the specifier, not given out."
        className={styles.wide}
      />
    </>
  );
}

/** A measure by a method has that method; a limit by another would be another measure. */
function MethodField({ at, measure }: { at: string; measure: string }) {
  const impact: string = useWatch({ name: "impact.method" });
  const claimed = claimedMeasures.find(({ id }) => id === measure);
  if (claimed?.method) {
    const { designation, name } = methodOf(claimed.method);
    return <Fixed label="Method" words={`${designation}, ${name}`} why="It belongs to the measure." />;
  }
  if (measure === "impact-level-as-new") {
    const method = matchMethod(impact);
    const words = method === null || method === "not-stated" ? impact : methodOf(method).designation;
    return <Fixed label="Method" words={words} why="It belongs to the impact requirement." />;
  }
  if (claimed !== undefined && propertyOf(claimed.property).methods.length === 0)
    return <Fixed label="Method" words="None" why="It is read off a paper, not tested." />;
  return <ChoiceField name={`${at}.method`} label="Method" choices={methods} />;
}

function Fixed({ label, words, why }: { label: string; words: string; why: string }) {
  return (
    <div className={styles.fixed}>
      <span>{label}</span>
      <span className={styles.note}>{why}</span>
      <output>{words}</output>
    </div>
  );
}
