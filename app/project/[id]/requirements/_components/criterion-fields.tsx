"use client";
import { useWatch } from "react-hook-form";
import {
  type GateKind,
  ratingMeasure,
  type ShortfallRule,
  shortfallRules,
  type ValueFunctionKind,
  valueFunctions,
} from "#lib/criteria";
import { evidenceLevels, formatShare } from "#lib/evaluation";
import type { DimensionName } from "#lib/quantity";
import { ChoiceField } from "../../../../_components/form/choice-field";
import { KindField } from "../../../../_components/form/kind-field";
import { LongTextField } from "../../../../_components/form/long-text-field";
import { TextField } from "../../../../_components/form/text-field";
import {
  type AskedOfKind,
  anchorLabels,
  askedOfChoices,
  askedOfTemplates,
  gateChoices,
  gateTemplates,
  type Kind,
  limitChoices,
  limitTemplates,
  valueChoicesOf,
  valueTemplates,
} from "./criterion-kinds";
import { LimitFields } from "./limit-fields";
import { measureChoices, measureOf } from "./measure-choices";
import { RatingLevels } from "./rating-levels";
import styles from "./requirements.module.css";
import { ScoredFigures } from "./scored-figures";
import { typedWeights } from "./typed-weights";
import { useTyped } from "./use-typed";

const evidence = evidenceLevels.map(({ level, label }) => ({ value: level, label }));
const shortfalls = Object.entries(shortfallRules).map(([value, { label }]) => ({ value, label }));
const counted = [
  { value: "from", label: "From its figure upwards" },
  { value: "up-to", label: "From its figure downwards" },
];

/** Everything about one criterion. */
export function CriterionFields({ index, curve }: { index: number; curve: React.ReactNode }) {
  const at = `criteria.${index}`;
  const measure = measureOf(useWatch({ name: `${at}.measure` }));
  const dimension = measure?.dimension ?? "number";
  const isRated = measure?.id === ratingMeasure.id;
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
      <HeadingField name={`${at}.heading`} />
      <LongTextField
        name={`${at}.reason`}
        label="Reason"
        hint="Why you ask, in a sentence that a bidder and the public can follow."
        rows={2}
        className={styles.wide}
      />
      <TextField
        name={`${at}.source`}
        label="Where the figures come from"
        hint="A standard with its edition, a guideline, your own contract or judgement. May be empty."
        className={styles.wide}
      />
      <KindField<AskedOfKind>
        name={`${at}.askedOf`}
        label="Asked of"
        choices={askedOfChoices}
        templates={askedOfTemplates}
        className={styles.wide}
        fields={(kind) => (kind === "every-bid" ? null : <Condition at={`${at}.askedOf`} />)}
      />
      <KindField<Kind<GateKind>>
        name={`${at}.gate`}
        label="Gate"
        choices={gateChoices}
        templates={gateTemplates}
        className={styles.wide}
        fields={(kind) => <LimitFields kind={kind} at={`${at}.gate`} dimension={dimension} />}
      />
      <div className={styles.score}>
        <div>
          <KindField<Kind<ValueFunctionKind>>
            name={`${at}.valueFunction`}
            label="Score"
            choices={valueChoicesOf(isRated)}
            templates={valueTemplates}
            className={styles.wide}
            fields={(kind) => <Anchors kind={kind} at={`${at}.valueFunction`} dimension={dimension} />}
          />
          <Weight index={index} />
        </div>
        {curve}
      </div>
      {isRated ? null : <EvidenceFields at={`${at}.evidence`} />}
    </>
  );
}

/** The heading that the criterion is weighed under; nothing to choose where there is none. */
function HeadingField({ name }: { name: string }) {
  const { headings } = useTyped();
  if (headings.length === 0) return null;
  const choices = headings.map(({ id, label }) => ({ value: id, label: label === "" ? id : label }));
  return (
    <ChoiceField
      name={name}
      label="Heading"
      choices={[{ value: "", label: "None: weighed beside the headings" }, ...choices]}
      className={styles.wide}
    />
  );
}

/** The least evidence that counts, and what becomes of a figure that lacks it. */
function EvidenceFields({ at }: { at: string }) {
  const shortfall: ShortfallRule = useWatch({ name: `${at}.shortfall` });
  return (
    <>
      <div className={styles.group}>
        <ChoiceField name={`${at}.least`} label="Least evidence that counts" choices={evidence} />
        <ChoiceField
          name={`${at}.shortfall`}
          label="A figure that is missing, shown by less or not comparable"
          choices={shortfalls}
        />
        {shortfall === "discount" ? (
          <TextField name={`${at}.discount`} label="Part of the points taken off" hint="For instance “25 %”." />
        ) : null}
      </div>
      <p className={styles.note}>{shortfallRules[shortfall].explanation}</p>
    </>
  );
}

/** What has to hold of a bid for the criterion to be asked of it. */
function Condition({ at }: { at: string }) {
  const measure = measureOf(useWatch({ name: `${at}.measure` }));
  return (
    <>
      <p className={styles.note}>
        A bid of which it does not hold passes the gate and scores in full here, as nothing is asked of it.
      </p>
      <ChoiceField
        name={`${at}.measure`}
        label="What has to hold: measure"
        choices={[{ value: "", label: "Choose a measure" }, ...measureChoices]}
        className={styles.wide}
      />
      <KindField<GateKind>
        name={`${at}.is`}
        label="What has to hold: its figure is"
        choices={limitChoices}
        templates={limitTemplates}
        className={styles.wide}
        fields={(kind) => <LimitFields kind={kind} at={`${at}.is`} dimension={measure?.dimension ?? "number"} />}
      />
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
    case "rating":
      return <RatingLevels name={`${at}.levels`} />;
    case "piecewise":
      return <ScoredFigures name={`${at}.knots`} what="Knot" dimension={dimension} />;
  }
}

function Weight({ index }: { index: number }) {
  const typed = useTyped();
  const { criteria, weighing, headings } = typed;
  const share = typedWeights(typed).shares[index] ?? 0;
  const scored = criteria[index]?.valueFunction.kind !== "none";
  const isUnderHeading = headings.some(({ id }) => id === criteria[index]?.heading);
  return (
    <div className={styles.weight}>
      {weighing === undefined || weighing.kind === "direct" ? (
        <TextField
          name={`criteria.${index}.weight`}
          label="Weight in points"
          {...(isUnderHeading ? { hint: "Beside the others under its heading." } : {})}
        />
      ) : (
        <a href="#requirements-weights">Weight</a>
      )}
      <output>{scored ? `${formatShare(share)} of the whole` : "not scored"}</output>
    </div>
  );
}
