"use client";
import { type CampaignText, documentSchemas } from "#lib/evaluation";
import type { UnitSystem } from "#lib/quantity";
import { AutosaveForm } from "../../../../../_components/form/autosave-form";
import { type Choice, ChoiceField } from "../../../../../_components/form/choice-field";
import { LongTextField } from "../../../../../_components/form/long-text-field";
import type { DocumentAddress } from "../../../../../_components/form/save-outcome";
import type { Draft } from "../../../../../_components/form/start-of";
import { TextField } from "../../../../../_components/form/text-field";
import { saveDocument } from "../../../_actions/save-document";
import styles from "./campaign-form.module.css";
import { DepthsTable } from "./depths-table";
import { DropsTable } from "./drops-table";

const kinds: readonly Choice[] = [
  { value: "acceptance", label: "Acceptance test" },
  { value: "yearly", label: "Yearly test" },
  { value: "other", label: "Other test" },
];
const moistures: readonly Choice[] = [
  { value: "not-stated", label: "Not stated" },
  { value: "dry", label: "Dry" },
  { value: "damp", label: "Damp" },
  { value: "wet", label: "Wet" },
];

/** Everything that is entered of one campaign. */
export function CampaignForm({
  where,
  version,
  values,
  draft,
  bids,
  methods,
  planned,
  units,
}: {
  where: DocumentAddress;
  version: number;
  values: CampaignText;
  draft: Draft<CampaignText> | null;
  bids: readonly Choice[];
  methods: readonly Choice[];
  planned: CampaignText["locations"];
  units: UnitSystem;
}) {
  return (
    <AutosaveForm
      schema={documentSchemas.campaign}
      where={where}
      version={version}
      values={values}
      draft={draft}
      save={saveDocument}
      label="Test campaign"
    >
      <section aria-labelledby="about">
        <h2 id="about">About the test</h2>
        <div className={styles.fields}>
          <ChoiceField name="kind" label="Kind of test" choices={kinds} />
          <TextField name="date" label="Day of the test, as 2027-08-20" />
          <ChoiceField name="installed" label="Bid that was installed" choices={bids} />
          <ChoiceField name="method" label="Test method" choices={methods} />
          <TextField name="edition" label="Edition of the method" />
          <TextField name="laboratory" label="Laboratory" />
          <TextField name="operator" label="Operator" />
          <TextField name="equipment" label="Equipment" />
          <TextField name="calibrated" label="Calibrated on" />
          <TextField name="weather.air" label="Air temperature" dimension="temperature" />
          <TextField name="weather.surface" label="Surface temperature" dimension="temperature" />
          <ChoiceField name="weather.moisture" label="Surface" choices={moistures} />
          <TextField name="weather.description" label="Weather" className={styles.wide} />
          <TextField name="origin" label="Origin of the coordinates" className={styles.wide} />
          <LongTextField name="note" label="Remarks" rows={2} className={styles.wide} />
        </div>
      </section>
      <DropsTable planned={planned} />
      <DepthsTable units={units} />
    </AutosaveForm>
  );
}
