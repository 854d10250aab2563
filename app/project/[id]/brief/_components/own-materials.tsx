"use client";
import { useState } from "react";
import { useFieldArray, useFormContext, useWatch } from "react-hook-form";
import type { BriefText } from "#lib/evaluation";
import { ChoiceField } from "../../../../_components/form/choice-field";
import { freshId } from "../../../../_components/form/fresh-id";
import { LongTextField } from "../../../../_components/form/long-text-field";
import { RemovedNotice } from "../../../../_components/form/removed-notice";
import { TextField } from "../../../../_components/form/text-field";
import styles from "./brief-form.module.css";

type MaterialText = BriefText["ownMaterials"][number];

const classes = [
  { value: "mineral", label: "Mineral, such as sand" },
  { value: "polymer", label: "Polymer, such as rubber" },
  { value: "organic", label: "Organic, such as cork or wood" },
  { value: "blend", label: "Blend of mineral and other granules" },
];
const inWater = [
  { value: "sinks", label: "Sinks" },
  { value: "floats", label: "Floats" },
  { value: "floats-then-wets", label: "Floats, then wets" },
  { value: "depends", label: "Depends on recipe or treatment" },
];

const startingMaterial = (id: string): MaterialText => ({
  id,
  label: "",
  class: "mineral",
  mineralShare: "",
  bulkDensity: "",
  particleDensity: "",
  inWater: "sinks",
  usualGrain: "",
  notes: "",
  source: "",
});

/** Materials that the catalogue lacks, or that the owner knows better. */
export function OwnMaterials() {
  const { control, getValues } = useFormContext<BriefText>();
  const { fields, append, remove, insert } = useFieldArray({ control, name: "ownMaterials", keyName: "key" });
  const [removed, setRemoved] = useState<{ index: number; value: MaterialText } | null>(null);
  const takenIds = () => getValues("ownMaterials").map(({ id }) => id);
  return (
    <>
      <p>
        The bids choose their infill from a catalogue of common materials. Add one here if the catalogue lacks it.
        Figures may be ranges, like “450–520 kg/m³”.
      </p>
      {fields.map(({ key }, index) => (
        <MaterialFields
          key={key}
          index={index}
          remove={() => {
            setRemoved({ index, value: structuredClone(getValues(`ownMaterials.${index}`)) });
            remove(index);
          }}
        />
      ))}
      {removed === null ? null : (
        <RemovedNotice
          what={removed.value.label || "the material"}
          undo={() => {
            insert(removed.index, removed.value);
            setRemoved(null);
          }}
        />
      )}
      <button type="button" onClick={() => append(startingMaterial(freshId("own-material", takenIds())))}>
        Add a material
      </button>
    </>
  );
}

function MaterialFields({ index, remove }: { index: number; remove: () => void }) {
  const at = `ownMaterials.${index}` as const;
  const label: string = useWatch({ name: `${at}.label` });
  const kind: string = useWatch({ name: `${at}.class` });
  const share: string = useWatch({ name: `${at}.mineralShare` });
  return (
    <fieldset className={styles.material}>
      <legend>{label === "" ? `Material ${index + 1}` : label}</legend>
      <div className={styles.pair}>
        <TextField name={`${at}.label`} label="Name" />
        <ChoiceField name={`${at}.class`} label="Made of" choices={classes} />
        {kind === "blend" || share !== "" ? (
          <TextField name={`${at}.mineralShare`} label="Mineral share of the mass" dimension="fraction" />
        ) : null}
        <TextField
          name={`${at}.bulkDensity`}
          label="Loose density, as poured"
          hint="For instance “1500–1600 kg/m³” or “96 pcf”."
          dimension="bulkDensity"
        />
        <TextField
          name={`${at}.particleDensity`}
          label="Density of a single grain"
          hint="It decides what floats."
          dimension="bulkDensity"
        />
        <ChoiceField name={`${at}.inWater`} label="In water it" choices={inWater} />
        <TextField name={`${at}.usualGrain`} label="Usual grain size" hint="May stay empty." dimension="length" />
        <TextField
          name={`${at}.source`}
          label="Where the figures come from"
          hint="A data sheet, a laboratory report, common practice."
        />
      </div>
      <LongTextField name={`${at}.notes`} label="Notes" rows={2} className={styles.prose} />
      <button type="button" onClick={remove}>
        Remove<span className="visually-hidden"> {label === "" ? `material ${index + 1}` : label}</span>
      </button>
    </fieldset>
  );
}
