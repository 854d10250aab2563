"use client";
import { useFieldArray, useFormContext, useWatch } from "react-hook-form";
import { gates, valueFunctions } from "#lib/criteria";
import { measures } from "#lib/evaluation";
import type { DimensionName } from "#lib/quantity";
import { ChoiceField } from "../../../../_components/form/choice-field";
import { KindField } from "../../../../_components/form/kind-field";
import { TextField } from "../../../../_components/form/text-field";
import styles from "./requirements-form.module.css";

type RuleFields = Readonly<{ at: string; dimension: DimensionName | undefined }>;

/** The dimension in which a criterion's limits and anchors are written. */
export const useDimension = (at: string): DimensionName | undefined => {
  const measure: string = useWatch({ name: `${at}.measure` });
  return measures.find(({ id }) => id === measure)?.dimension;
};

const inDimension = (dimension: DimensionName | undefined) => (dimension === undefined ? {} : { dimension });
const capital = (words: string) => words.charAt(0).toUpperCase() + words.slice(1);

const gateChoices = [
  { value: "none", label: "No gate" },
  ...Object.entries(gates).map(([value, { label }]) => ({ value, label: capital(label) })),
];
const gateTemplates = {
  none: {},
  "at-most": { limit: "" },
  "at-least": { limit: "" },
  below: { limit: "" },
  within: { low: "", high: "" },
};

export function GateFields({ at, dimension }: RuleFields) {
  const unit = inDimension(dimension);
  return (
    <KindField
      name={`${at}.gate`}
      label="Gate"
      choices={gateChoices}
      templates={gateTemplates}
      fields={(kind) => {
        switch (kind) {
          case "none":
            return null;
          case "within":
            return (
              <div className={styles.row}>
                <TextField name={`${at}.gate.low`} label="Lowest that passes" {...unit} />
                <TextField name={`${at}.gate.high`} label="Highest that passes" {...unit} />
              </div>
            );
          case "at-most":
          case "at-least":
          case "below":
            return <TextField name={`${at}.gate.limit`} label="Limit" className={styles.short} {...unit} />;
        }
      }}
    />
  );
}

const valueChoices = [
  { value: "none", label: "Not scored" },
  ...Object.entries(valueFunctions).map(([value, { label }]) => ({ value, label: capital(label) })),
];
const emptyPoint = { at: "", value: "" };
const ends = { worst: "", best: "" };
const valueTemplates = {
  none: {},
  "more-is-better": ends,
  "less-is-better": ends,
  "target-window": { nothingBelow: "", fullFrom: "", fullTo: "", nothingAbove: "" },
  steps: { counted: "from", otherwise: "0", steps: [emptyPoint] },
  piecewise: { knots: [emptyPoint, emptyPoint] },
};

export function ValueFields({ at, dimension }: RuleFields) {
  const unit = inDimension(dimension);
  const field = (name: string, label: string) => (
    <TextField name={`${at}.valueFunction.${name}`} label={label} {...unit} />
  );
  return (
    <KindField
      name={`${at}.valueFunction`}
      label="Score"
      choices={valueChoices}
      templates={valueTemplates}
      fields={(kind) => {
        switch (kind) {
          case "none":
            return null;
          case "more-is-better":
          case "less-is-better":
            return (
              <div className={styles.row}>
                {field("worst", "Worth nothing at")}
                {field("best", "Worth all points at")}
              </div>
            );
          case "target-window":
            return (
              <div className={styles.row}>
                {field("nothingBelow", "Nothing below")}
                {field("fullFrom", "All points from")}
                {field("fullTo", "All points to")}
                {field("nothingAbove", "Nothing above")}
              </div>
            );
          case "steps":
            return (
              <>
                <div className={styles.row}>
                  <ChoiceField
                    name={`${at}.valueFunction.counted`}
                    label="A step counts"
                    choices={[
                      { value: "from", label: "From its figure up" },
                      { value: "up-to", label: "Up to its figure" },
                    ]}
                  />
                  <TextField name={`${at}.valueFunction.otherwise`} label="Value otherwise, 0 to 1" />
                </div>
                <Points name={`${at}.valueFunction.steps`} what="step" unit={unit} />
              </>
            );
          case "piecewise":
            return <Points name={`${at}.valueFunction.knots`} what="corner" unit={unit} />;
        }
      }}
    />
  );
}

/** Figures with the value each is worth, in rising order. */
function Points({ name, what, unit }: { name: string; what: string; unit: { dimension?: DimensionName } }) {
  const { control } = useFormContext();
  const { fields, append, remove } = useFieldArray({ control, name, keyName: "key" });
  return (
    <>
      {fields.map(({ key }, index) => (
        <div key={key} className={styles.row}>
          <TextField name={`${name}.${index}.at`} label={`Figure of ${what} ${index + 1}`} {...unit} />
          <TextField name={`${name}.${index}.value`} label={`Value of ${what} ${index + 1}, 0 to 1`} />
          <button type="button" className="plain" onClick={() => remove(index)}>
            Remove {what} {index + 1}
          </button>
        </div>
      ))}
      <button type="button" onClick={() => append(emptyPoint)}>
        Add a {what}
      </button>
    </>
  );
}
