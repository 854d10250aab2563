"use client";
import { useWatch } from "react-hook-form";
import { committeeSchema, levelsOf } from "#lib/committee";
import type { Criterion } from "#lib/criteria";
import { AutosaveForm } from "../../../../../_components/form/autosave-form";
import { ChoiceField } from "../../../../../_components/form/choice-field";
import { LongTextField } from "../../../../../_components/form/long-text-field";
import type { DocumentAddress } from "../../../../../_components/form/save-outcome";
import type { Draft } from "../../../../../_components/form/start-of";
import { TextField } from "../../../../../_components/form/text-field";
import { saveDocument } from "../../../_actions/save-document";
import styles from "./consensus-form.module.css";
import type { ConsensusValues } from "./filled-consensus";

type NamedBid = Readonly<{ id: string; letter: string; bidder: string }>;

/** The agreed value of each bid on each rated criterion, beside what the sheets say. */
export function ConsensusForm({
  where,
  version,
  values,
  draft,
  criteria,
  bids,
}: {
  where: DocumentAddress;
  version: number;
  values: ConsensusValues;
  draft: Draft<ConsensusValues> | null;
  criteria: readonly Readonly<{ criterion: Criterion; levels: React.ReactNode; ratings: React.ReactNode }>[];
  bids: readonly NamedBid[];
}) {
  return (
    <AutosaveForm<ConsensusValues>
      schema={committeeSchema as never}
      where={where}
      version={version}
      values={values}
      draft={draft}
      save={saveDocument}
      label="Consensus sheet"
    >
      {criteria.map(({ criterion, levels, ratings }, row) => (
        <section key={criterion.id} aria-labelledby={`agree-${criterion.id}`}>
          <h2 id={`agree-${criterion.id}`}>{criterion.label}</h2>
          <p>{criterion.reason}</p>
          <details className="printed-open">
            <summary>Levels and their descriptions</summary>
            {levels}
          </details>
          {ratings}
          <div className={styles.bids}>
            {bids.map((bid, column) => (
              <AgreedFields
                key={bid.id}
                criterion={criterion}
                bid={bid}
                name={`agreed.${row * bids.length + column}`}
              />
            ))}
          </div>
        </section>
      ))}
    </AutosaveForm>
  );
}

function AgreedFields({ criterion, bid, name }: { criterion: Criterion; bid: NamedBid; name: string }) {
  const level: string = useWatch({ name: `${name}.level` }) ?? "";
  const of = `“${criterion.label}”, bid ${bid.letter}`;
  return (
    <section className={styles.bid} aria-label={`Agreed on bid ${bid.letter}, ${criterion.label}`}>
      <h3>Bid {bid.letter}</h3>
      <ChoiceField
        name={`${name}.level`}
        label={`Agreed value, ${of}`}
        choices={[
          { value: "", label: "Not agreed yet" },
          ...levelsOf(criterion).map(({ id, label }) => ({ value: id, label })),
          { value: "between", label: "Between two levels" },
        ]}
      />
      {level === "between" ? (
        <TextField name={`${name}.between`} label={`Value from 0 to 1, ${of}`} hint="Such as 0.6 or 60 %." />
      ) : null}
      {level === "" ? null : (
        <>
          <LongTextField name={`${name}.reason`} label={`Reason, ${of}`} rows={2} />
          <LongTextField
            name={`${name}.dissent`}
            label={`Dissent, ${of}`}
            hint="What somebody who does not agree wants remembered. Leave it empty for none."
            rows={1}
          />
        </>
      )}
    </section>
  );
}
