"use client";
import { weightLevels } from "#lib/criteria";
import { KindField } from "../../../../_components/form/kind-field";
import { MethodFields, type ToWeigh } from "./method-fields";
import { PeopleFields } from "./people-fields";
import styles from "./requirements.module.css";
import { typedTree, typedWeights } from "./typed-weights";
import { useTyped } from "./use-typed";
import { type WeighingKind, weighingChoices, weighingTemplates } from "./weighing-rows";

/** How weights come about, with the judgements of the way that is chosen. */
export function WeighingFields() {
  const typed = useTyped();
  const { said, isLacking } = typedWeights(typed);
  const toWeigh: ToWeigh = { levels: weightLevels(typedTree(typed)), criteria: typed.criteria };
  return (
    <>
      <KindField<WeighingKind>
        name="weighing"
        label="How the weights come about"
        choices={weighingChoices}
        templates={weighingTemplates}
        className={styles.wide}
        fields={(kind) => <OfKind kind={kind} toWeigh={toWeigh} />}
      />
      <div role="status">{isLacking ? null : said.map((sentence) => <p key={sentence}>{sentence}</p>)}</div>
    </>
  );
}

function OfKind({ kind, toWeigh }: { kind: WeighingKind; toWeigh: ToWeigh }) {
  switch (kind) {
    case "direct":
      return (
        <p className={styles.note}>
          The points stand with each criterion above, under its score, and with each heading.
        </p>
      );
    case "several-people":
      return <PeopleFields toWeigh={toWeigh} />;
    default:
      return <MethodFields at="weighing" kind={kind} toWeigh={toWeigh} />;
  }
}
