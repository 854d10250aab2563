"use client";
import { useFieldArray, useFormContext } from "react-hook-form";
import { submittalKinds } from "#lib/requirement";
import { reviewActions, submittalSchema } from "#lib/submittal";
import { AutosaveForm } from "../../../../../../_components/form/autosave-form";
import { ChecksField } from "../../../../../../_components/form/check-field";
import { type Choice, ChoiceField } from "../../../../../../_components/form/choice-field";
import { LongTextField } from "../../../../../../_components/form/long-text-field";
import type { DocumentStart } from "../../../../../../_components/form/start-of";
import { TextField } from "../../../../../../_components/form/text-field";
import { saveDocument } from "../../../../_actions/save-document";
import grid from "../../../../_components/field-grid.module.css";
import { useUndo } from "../../../../_components/use-undo";
import { ValuesList } from "../../../_components/values-list";
import { filledVersion, type SubmittalValues, type VersionValues } from "../../../_register/submittal-values";
import { ReportsList } from "./report-fields";
import styles from "./submittal-form.module.css";

const kinds = Object.entries(submittalKinds).map(([value, { label }]) => ({ value, label }));
const actions = [
  { value: "", label: "In review" },
  ...Object.entries(reviewActions).map(([value, { label }]) => ({ value, label })),
];

/** A comment as drafted, for a row of the review. */
export type DraftedComment = Readonly<{ key: string; title: string; draft: string }>;

/** Everything that is entered of one line of the register. */
export function SubmittalForm({
  start,
  clauses,
  asked,
  drafts,
  today,
}: {
  start: DocumentStart<SubmittalValues>;
  /** The clauses of the specification, and those among them whose report a value can be handed in for. */
  clauses: readonly Choice[];
  /** Properties that the clauses of the line ask for. */
  asked: readonly string[];
  /** Drafted comments of each version, as last saved. */
  drafts: readonly (readonly DraftedComment[])[];
  today: string;
}) {
  return (
    <AutosaveForm schema={submittalSchema} {...start} save={saveDocument} label="Submittal">
      <section aria-labelledby="line">
        <h2 id="line">What is to be handed in</h2>
        <div className={grid.fields}>
          <TextField name="item" label="Item" className={grid.wide} />
          <ChoiceField name="kind" label="Kind" choices={kinds} />
          <TextField name="due" label="Due on" hint="As 2027-04-01" />
        </div>
        <details>
          <summary>Clauses that it is for</summary>
          <ChecksField name="clauses" label="Clauses" choices={clauses} />
        </details>
      </section>
      <Versions clauses={clauses} asked={asked} drafts={drafts} today={today} />
    </AutosaveForm>
  );
}

function Versions({
  clauses,
  asked,
  drafts,
  today,
}: {
  clauses: readonly Choice[];
  asked: readonly string[];
  drafts: readonly (readonly DraftedComment[])[];
  today: string;
}) {
  const { control, getValues } = useFormContext<SubmittalValues>();
  const { fields, append, insert, remove } = useFieldArray({ control, name: "versions", keyName: "key" });
  const { keep, notice } = useUndo<VersionValues>((index, value) => insert(index, value));
  return (
    <section aria-labelledby="versions">
      <h2 id="versions">What came</h2>
      {fields.length === 0 ? <p>Nothing has come yet.</p> : null}
      {fields.map(({ key }, index) => (
        <details key={key} open={index === fields.length - 1} className={styles.version}>
          <summary>
            <strong>Version {index + 1}</strong>
          </summary>
          <fieldset>
            <legend className="visually-hidden">Version {index + 1}</legend>
            <VersionFields index={index} clauses={clauses} asked={asked} drafts={drafts[index] ?? []} />
            <button
              type="button"
              className="plain screen-only"
              onClick={() => {
                const value = structuredClone(getValues(`versions.${index}`));
                remove(index);
                keep({ index, value, words: `version ${index + 1}` });
              }}
            >
              Remove version {index + 1}
            </button>
          </fieldset>
        </details>
      ))}
      {notice}
      <p className="screen-only">
        <button
          type="button"
          onClick={() =>
            append(filledVersion({ received: today }), { focusName: `versions.${fields.length}.received` })
          }
        >
          {fields.length === 0 ? "Something came" : "Another version came"}
        </button>
      </p>
    </section>
  );
}

function VersionFields({
  index,
  clauses,
  asked,
  drafts,
}: {
  index: number;
  clauses: readonly Choice[];
  asked: readonly string[];
  drafts: readonly DraftedComment[];
}) {
  const at = `versions.${index}`;
  const reportFor = [{ value: "", label: "Not said" }, ...clauses];
  return (
    <>
      <div className={grid.fields}>
        <TextField name={`${at}.received`} label="Received on" hint="As 2027-03-12" />
        <TextField name={`${at}.reviewer`} label="Reviewer" />
        <ChoiceField name={`${at}.action`} label="Action" choices={actions} />
        <TextField name={`${at}.answered`} label="Answered on" hint="Empty while in review" />
      </div>
      <h3>Values as stated</h3>
      <ValuesList name={`${at}.values`} what={`value of version ${index + 1}`} proposed={asked} condition="new" />
      <h3>Laboratory reports</h3>
      <ReportsList version={index} clauses={reportFor} />
      {drafts.length === 0 ? null : (
        <>
          <h3>Comments</h3>
          <p>Each comment is drafted from what was found. Write your own where the draft does not say it right.</p>
          {drafts.map(({ key, title, draft }) => (
            <Comment key={key} name={`versions.${index}.remarks.${key}`} title={title} draft={draft} />
          ))}
        </>
      )}
    </>
  );
}

/** The draft beside the reviewer’s own words; the draft can be taken over to be worked on. */
function Comment({ name, title, draft }: { name: string; title: string; draft: string }) {
  const { setValue } = useFormContext();
  return (
    <div className={styles.comment}>
      <p>
        <strong>{title}</strong>. Drafted: {draft}
      </p>
      <LongTextField name={name} label={`Your comment instead: ${title}`} rows={2} />
      <button
        type="button"
        className="plain screen-only"
        onClick={() => setValue(name, draft, { shouldDirty: true, shouldTouch: true })}
      >
        Take the draft to work on<span className="visually-hidden">: {title}</span>
      </button>
    </div>
  );
}
