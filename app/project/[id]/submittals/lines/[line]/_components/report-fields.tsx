"use client";
import { useFieldArray, useFormContext } from "react-hook-form";
import { accreditations, testedBuilds } from "#lib/claim";
import { type Choice, ChoiceField } from "../../../../../../_components/form/choice-field";
import { freshId } from "../../../../../../_components/form/fresh-id";
import { TextField } from "../../../../../../_components/form/text-field";
import { TextListField } from "../../../../../../_components/form/text-list-field";
import grid from "../../../../_components/field-grid.module.css";
import { useUndo } from "../../../../_components/use-undo";
import { methodChoices } from "../../../_components/value-fields";
import styles from "../../../_components/values-list.module.css";
import { filledReport, type ReportValues, type SubmittalValues } from "../../../_register/submittal-values";

const labelled = (list: readonly Readonly<{ id: string; label: string }>[]): readonly Choice[] =>
  list.map(({ id: value, label }) => ({ value, label }));

/** The laboratory reports of one version, as read off the paper; the checks stand in the review below. */
export function ReportsList({ version, clauses }: { version: number; clauses: readonly Choice[] }) {
  const name = `versions.${version}.reports` as const;
  const { control, getValues } = useFormContext<SubmittalValues>();
  const { fields, append, insert, remove } = useFieldArray({ control, name, keyName: "key" });
  const { keep, notice } = useUndo<ReportValues>((index, value) => insert(index, value));
  return (
    <>
      <ol className={styles.values}>
        {fields.map(({ key }, index) => (
          <li key={key} id={`${name}.${index}`}>
            <fieldset>
              <legend>Report {index + 1}</legend>
              <ReportFields at={`${name}.${index}`} clauses={clauses} />
              <Averages at={`versions.${version}.reports.${index}`} version={version} report={index} />
              <button
                type="button"
                className="plain screen-only"
                onClick={() => {
                  const value = structuredClone(getValues(`${name}.${index}`));
                  remove(index);
                  keep({ index, value, words: `report ${index + 1}` });
                }}
              >
                Remove<span className="visually-hidden"> report {index + 1}</span>
              </button>
            </fieldset>
          </li>
        ))}
      </ol>
      {notice}
      <p className="screen-only">
        <button
          type="button"
          onClick={() => {
            const taken = getValues(name).map(({ id }) => id);
            append(filledReport({ id: freshId("report", taken), clause: clauses[1]?.value ?? "" }), {
              focusName: `${name}.${fields.length}.document`,
            });
          }}
        >
          Add a laboratory report
        </button>
      </p>
    </>
  );
}

function ReportFields({ at, clauses }: { at: string; clauses: readonly Choice[] }) {
  return (
    <div className={grid.fields}>
      <ChoiceField name={`${at}.clause`} label="For the clause" choices={clauses} className={grid.wide} />
      <TextField name={`${at}.document`} label="Document" />
      <TextField name={`${at}.page`} label="Page" />
      <TextField name={`${at}.laboratory`} label="Laboratory" className={grid.wide} />
      <ChoiceField name={`${at}.accreditation`} label="Accreditation" choices={labelled(accreditations)} />
      <TextField name={`${at}.accreditationNumber`} label="Accreditation number" />
      <ChoiceField name={`${at}.build`} label="Build tested" choices={labelled(testedBuilds)} />
      <TextField name={`${at}.date`} label="Date of the report" />
      <ChoiceField name={`${at}.method`} label="Test method" choices={methodChoices} className={grid.wide} />
      <TextField name={`${at}.edition`} label="Edition" />
      <TextField name={`${at}.specimen`} label="Specimen, as the report names it" className={grid.wide} />
      <TextField name={`${at}.expectedSpecimen`} label="Specimen that was expected" className={grid.wide} />
      <TextField name={`${at}.pagesStated`} label="Pages it says it has" />
      <TextField name={`${at}.pagesPresent`} label="Pages that are there" hint="“1-3, 5”" />
    </div>
  );
}

/** Averages that the report prints, with the readings behind them, so that its own arithmetic can be checked. */
function Averages({ at, version, report }: { at: string; version: number; report: number }) {
  const { control } = useFormContext<SubmittalValues>();
  const { fields, append, remove } = useFieldArray({
    control,
    name: `versions.${version}.reports.${report}.averages`,
    keyName: "key",
  });
  return (
    <>
      {fields.map(({ key }, index) => (
        <fieldset key={key}>
          <legend>Average {index + 1}</legend>
          <div className={grid.fields}>
            <TextField name={`${at}.averages.${index}.label`} label="Of what" />
            <TextField name={`${at}.averages.${index}.average`} label="Average as printed" />
          </div>
          <TextListField
            name={`${at}.averages.${index}.readings`}
            label="Readings as printed"
            hint="A column pasted into one of them fills the others."
            entry={(place) => `Reading ${place + 1}`}
          />
          <button type="button" className="plain screen-only" onClick={() => remove(index)}>
            Remove<span className="visually-hidden"> average {index + 1}</span>
          </button>
        </fieldset>
      ))}
      <p className="screen-only">
        <button type="button" onClick={() => append({ label: "", readings: ["", ""], average: "" })}>
          Add an average to check
        </button>
      </p>
    </>
  );
}
