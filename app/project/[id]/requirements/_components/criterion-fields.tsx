"use client";
import { useWatch } from "react-hook-form";
import { type GateKind, gates, type ValueFunctionKind, valueFunctions } from "#lib/criteria";
import { evidenceLevels, formatShare } from "#lib/evaluation";
import type { DimensionName } from "#lib/quantity";
import { ChoiceField } from "../../../../_components/form/choice-field";
import { KindField } from "../../../../_components/form/kind-field";
import { LongTextField } from "../../../../_components/form/long-text-field";
import { TextField } from "../../../../_components/form/text-field";
import { anchorLabels, gateChoices, gateTemplates, type Kind, valueChoices, valueTemplates } from "./criterion-kinds";
import { measureChoices, measureOf } from "./measure-choices";
import styles from "./requirements.module.css";
import { ScoredFigures } from "./scored-figures";
import { typedWeights } from "./typed-weights";
import type { WeighingText } from "./weighing-rows";

const evidence = evidenceLevels.map(({ level, label }) => ({ value: level, label }));
const shortfalls = [
  { value: "keep-open", label: "Keep it open: it may be anything from worst to best" },
  { value: "ask-first", label: "Keep it open and ask the bidder before deciding" },
  { value: "counts-as-worst", label: "Count it as the worst; it does not pass a gate" },
];
const counted = [
  { value: "from", label: "From its figure upwards" },
  { value: "up-to", label: "From its figure downwards" },
];

/** Everything about one criterion. */
export function CriterionFields({ index, curve }: { index: number; curve: React.ReactNode }) {
  const at = `criteria.${index}`;
  const measure = measureOf(useWatch({ name: `${at}.measure` }));
  const dimension = measure?.dimension ?? "number";
  return (
    <>
      <ChoiceField
        name={`${at}.measure`}
        label="Measure"
        choices={measureChoices}
        className={styles.wide}
        {...(measure === null ? {} : { hint: measure.note })}
      />
      <TextField name={`${at}.label`} label="Name of the criterion" className={styles.wide} />
      <LongTextField
        name={`${at}.reason`}
        label="Reason"
        hint="Why you ask, in a sentence that a bidder and the public can follow."
        rows={2}
        className={styles.wide}
      />
      <KindField<Kind<GateKind>>
        name={`${at}.gate`}
        label="Gate"
        choices={gateChoices}
        templates={gateTemplates}
        className={styles.wide}
        fields={(kind) => <Limits kind={kind} at={`${at}.gate`} dimension={dimension} />}
      />
      <div className={styles.score}>
        <div>
          <KindField<Kind<ValueFunctionKind>>
            name={`${at}.valueFunction`}
            label="Score"
            choices={valueChoices}
            templates={valueTemplates}
            className={styles.wide}
            fields={(kind) => <Anchors kind={kind} at={`${at}.valueFunction`} dimension={dimension} />}
          />
          <Weight index={index} />
        </div>
        {curve}
      </div>
      <div className={styles.group}>
        <ChoiceField name={`${at}.evidence.least`} label="Least evidence that counts" choices={evidence} />
        <ChoiceField
          name={`${at}.evidence.shortfall`}
          label="A figure that is missing, shown by less or not comparable"
          choices={shortfalls}
        />
      </div>
    </>
  );
}

function Limits({ kind, at, dimension }: { kind: Kind<GateKind>; at: string; dimension: DimensionName }) {
  if (kind === "none") return null;
  return (
    <>
      <p className={styles.note}>{gates[kind].explanation}</p>
      <div className={styles.group}>
        {kind === "within" ? (
          <>
            <TextField name={`${at}.low`} label="Lower limit" dimension={dimension} />
            <TextField name={`${at}.high`} label="Upper limit" dimension={dimension} />
          </>
        ) : (
          <TextField name={`${at}.limit`} label="Limit" dimension={dimension} />
        )}
      </div>
    </>
  );
}

function Anchors({ kind, at, dimension }: { kind: Kind<ValueFunctionKind>; at: string; dimension: DimensionName }) {
  if (kind === "none") return null;
  return (
    <>
      <p className={styles.note}>{valueFunctions[kind].explanation}</p>
      <AnchorFields kind={kind} at={at} dimension={dimension} />
    </>
  );
}

function AnchorFields({ kind, at, dimension }: { kind: ValueFunctionKind; at: string; dimension: DimensionName }) {
  switch (kind) {
    case "more-is-better":
    case "less-is-better":
    case "target-window":
      return (
        <div className={styles.group}>
          {Object.entries(anchorLabels[kind]).map(([name, label]) => (
            <TextField key={name} name={`${at}.${name}`} label={label} dimension={dimension} />
          ))}
        </div>
      );
    case "steps":
      return (
        <>
          <div className={styles.group}>
            <ChoiceField name={`${at}.counted`} label="A step holds" choices={counted} />
            <TextField name={`${at}.otherwise`} label="Where no step holds, the score is" hint="From 0 to 1." />
          </div>
          <ScoredFigures name={`${at}.steps`} what="Step" dimension={dimension} />
        </>
      );
    case "piecewise":
      return <ScoredFigures name={`${at}.knots`} what="Knot" dimension={dimension} />;
  }
}

function Weight({ index }: { index: number }) {
  const criteria = useWatch({ name: "criteria" });
  const weighing: WeighingText | undefined = useWatch({ name: "weighing" });
  const share = typedWeights(criteria, weighing).shares[index] ?? 0;
  const scored = criteria[index]?.valueFunction.kind !== "none";
  return (
    <div className={styles.weight}>
      {weighing === undefined || weighing.kind === "direct" ? (
        <TextField name={`criteria.${index}.weight`} label="Weight in points" />
      ) : (
        <a href="#requirements-weights">Weight</a>
      )}
      <output>{scored ? `${formatShare(share)} of the whole` : "not scored"}</output>
    </div>
  );
}
