"use client";
import { useState } from "react";
import { useFieldArray, useFormContext } from "react-hook-form";
import type { SpreadChoice } from "#lib/impact";
import { ChoiceField } from "../../../../_components/form/choice-field";
import { KindField } from "../../../../_components/form/kind-field";
import { RemovedNotice } from "../../../../_components/form/removed-notice";
import { TextField } from "../../../../_components/form/text-field";
import { priceLineChoices } from "./price-line-choices";
import styles from "./requirements.module.css";

const spreads = [
  { value: "by-class", label: "By the kind of infill and how often it is levelled (an assumption to start from)" },
  { value: "depth-deviation", label: "A spread of the infill depth of the owner’s own" },
  { value: "level-deviation", label: "A spread of the level itself" },
];
const spreadTemplates = {
  "by-class": { grooming: "every-month" },
  "depth-deviation": { deviation: "", reason: "" },
  "level-deviation": { share: "", reason: "" },
};

const groomings = [
  { value: "every-month", label: "Every month" },
  { value: "less-often", label: "Less often" },
];

const installedSpreads = [
  { value: "without-grid", label: "As above; on its own field tests page as its latest test locations did" },
  { value: "depth-grid", label: "As the infill depths measured over it in its latest campaign" },
];

const laws = [
  { value: "log-linear", label: "By a constant share for each depth lost" },
  { value: "linear", label: "By a constant amount for each depth lost" },
];

const shockLayers = [
  { value: "as-soft-as-the-infill", label: "Half as much: a shock layer as soft as the infill (an assumption)" },
  { value: "owners-value", label: "A value of the owner’s own" },
];
const shockLayerTemplates = { "as-soft-as-the-infill": {}, "owners-value": { factor: "", reason: "" } };

const at = "impact.outlook";

function SpreadFields({ kind }: { kind: SpreadChoice["kind"] }) {
  switch (kind) {
    case "by-class":
      return (
        <ChoiceField
          name={`${at}.spread.grooming`}
          label="How often the infill is levelled"
          choices={groomings}
          className={styles.wide}
        />
      );
    case "depth-deviation":
      return (
        <div className={styles.group}>
          <TextField
            name={`${at}.spread.deviation`}
            label="Standard deviation of the depth"
            hint="Of spots over one field, for instance “0.15 in”."
            dimension="length"
          />
          <TextField name={`${at}.spread.reason`} label="Where this value comes from" />
        </div>
      );
    case "level-deviation":
      return (
        <div className={styles.group}>
          <TextField
            name={`${at}.spread.share`}
            label="Standard deviation of the level, as a share of it"
            hint="Of spots over one field, for instance “8 %”."
            dimension="fraction"
          />
          <TextField name={`${at}.spread.reason`} label="Where this value comes from" />
        </div>
      );
  }
}

/**
 * What the chances of the years to come rest on besides the bids’ own levels.
 * @param labels of the price lines of all bids
 */
export function OutlookFields({ labels }: { labels: readonly string[] }) {
  return (
    <fieldset id="impact.outlook" className={styles.target}>
      <legend>How a field spreads, and what is done to it (owner’s assumptions)</legend>
      <p className={styles.note}>
        From these the hardness outlook works out how sure each bid is to keep the limit at every spot, year by year. No
        source stands behind the values to start from. A measured field is better than any of them.
      </p>
      <TextField
        name={`${at}.wantedChance`}
        label="Chance wanted that every location keeps the limit"
        hint="In every year, for instance “95 %”: the hardness outlook names the first year in which a bid falls below it."
        dimension="fraction"
        className={styles.wide}
      />
      <KindField<SpreadChoice["kind"]>
        name={`${at}.spread`}
        label="How much spots of one field differ"
        choices={spreads}
        templates={spreadTemplates}
        className={styles.wide}
        fields={(kind) => <SpreadFields kind={kind} />}
      />
      <ChoiceField
        name={`${at}.installedSpread`}
        label="How much spots of an installed field differ"
        hint="Counts for the bid that a test campaign names as installed, where at least five depths were measured. For every other bid the choice above stays."
        choices={installedSpreads}
        className={styles.wide}
      />
      <ChoiceField
        name={`${at}.law`}
        label="How the level grows where infill is lost"
        choices={laws}
        className={styles.wide}
      />
      <KindField<"as-soft-as-the-infill" | "owners-value">
        name={`${at}.shockLayer`}
        label="How much less a spot answers to lost depth over a shock layer"
        choices={shockLayers}
        templates={shockLayerTemplates}
        className={styles.wide}
        fields={(kind) =>
          kind === "as-soft-as-the-infill" ? null : (
            <div className={styles.group}>
              <TextField
                name={`${at}.shockLayer.factor`}
                label="Share of the answer that is left"
                hint="For instance “60 %”."
                dimension="fraction"
              />
              <TextField name={`${at}.shockLayer.reason`} label="Where this value comes from" />
            </div>
          )
        }
      />
      <Resets labels={labels} />
    </fieldset>
  );
}

type Reset = { year: string; undone: string; priceLine?: string | undefined; note?: string | undefined };
type ResetValues = { impact: { outlook: { resets: Reset[] } } };

/** Top-ups and deep groomings that take back part of the change. */
function Resets({ labels }: { labels: readonly string[] }) {
  const { control, getValues } = useFormContext<ResetValues>();
  const { fields, append, remove, insert } = useFieldArray({ control, name: `${at}.resets` });
  const [removed, setRemoved] = useState<{ index: number; value: Reset } | null>(null);
  return (
    <>
      {fields.map(({ id }, index) => (
        <fieldset key={id} className={styles.target}>
          <legend>Top-up or deep grooming {index + 1}</legend>
          <div className={styles.group}>
            <TextField name={`${at}.resets.${index}.year`} label="At the end of year" hint="For instance “4”." />
            <TextField
              name={`${at}.resets.${index}.undone`}
              label="Share of the change that it takes back"
              hint="For instance “50 %”."
              dimension="fraction"
            />
            <ChoiceField
              name={`${at}.resets.${index}.priceLine`}
              label="Price line that pays for it"
              choices={priceLineChoices(labels, getValues(`${at}.resets.${index}.priceLine`))}
            />
            <TextField name={`${at}.resets.${index}.note`} label="What it is" hint="May be empty." />
          </div>
          <button
            type="button"
            onClick={() => {
              setRemoved({ index, value: structuredClone(getValues(`${at}.resets.${index}`)) });
              remove(index);
            }}
          >
            Remove it
          </button>
        </fieldset>
      ))}
      {removed === null ? null : (
        <RemovedNotice
          what="the top-up or grooming"
          undo={() => {
            insert(removed.index, removed.value);
            setRemoved(null);
          }}
        />
      )}
      <button type="button" onClick={() => append({ year: "", undone: "", priceLine: "", note: "" })}>
        Add a top-up or deep grooming
      </button>
    </>
  );
}
