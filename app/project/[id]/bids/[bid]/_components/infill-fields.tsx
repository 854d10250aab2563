"use client";
import { useFieldArray, useFormContext } from "react-hook-form";
import { accreditations, evidenceLevels, testedBuilds } from "#lib/claim";
import type { BidText } from "#lib/evaluation";
import { grainShapes } from "#lib/material";
import { type Choice, ChoiceField } from "../../../../../_components/form/choice-field";
import { freshId } from "../../../../../_components/form/fresh-id";
import { LongTextField } from "../../../../../_components/form/long-text-field";
import { TextField } from "../../../../../_components/form/text-field";
import grid from "../../../_components/field-grid.module.css";
import { useUndo } from "../../../_components/use-undo";
import styles from "./fields.module.css";
import { idsOf } from "./ids-of";
import { GrainReading, QuantityReading } from "./quantity-reading";

const placements: readonly Choice[] = [
  { value: "layered", label: "In layers, one on the other" },
  { value: "blended", label: "Mixed with each other" },
];
const asChoice = ({ id, label }: Readonly<{ id: string; label: string }>): Choice => ({ value: id, label });
const evidences = evidenceLevels.map(asChoice);
const accreditationChoices = accreditations.map(asChoice);
const buildChoices = testedBuilds.map(asChoice);
const shapes = grainShapes.map(asChoice);

const noReport = { date: "", laboratory: "", accreditation: "not-stated", build: "not-stated" };

/** What the bid fills the carpet with. Layers stand bottom to top. */
export function InfillFields({ materials }: { materials: readonly Choice[] }) {
  const { control, getValues } = useFormContext<BidText>();
  const { fields, append, remove, insert } = useFieldArray({ control, name: "infill.components", keyName: "key" });
  const { keep, notice } = useUndo<BidText["infill"]["components"][number]>(insert);
  const add = () => {
    const blank = {
      material: "",
      arealDensity: "",
      bulkDensity: "",
      particleSize: "",
      shape: "not-stated",
      evidence: "stated",
    };
    append(
      { id: freshId("component", idsOf(getValues())), ...blank, document: "", page: "", words: "", ...noReport },
      { focusName: `infill.components.${fields.length}.material` },
    );
  };
  const takeOut = (index: number) => {
    const value = getValues(`infill.components.${index}`);
    const label = materials.find((material) => material.value === value.material)?.label ?? "component";
    remove(index);
    keep({ index, value, words: `${label} ${value.arealDensity}`.trim() });
  };
  return (
    <section aria-labelledby="infill">
      <h2 id="infill">Infill</h2>
      <div className={grid.fields}>
        <ChoiceField name="infill.placement" label="How the materials lie" choices={placements} className={grid.wide} />
      </div>
      {fields.length === 0 ? (
        <p>No infill is entered. Add each material of the infill, from the bottom up, with its mass per area.</p>
      ) : null}
      <ol className={styles.entries}>
        {fields.map(({ key, id, material }, index) => (
          <li key={key} id={id}>
            <Component
              name={`infill.components.${index}`}
              place={index + 1}
              materials={withUnlisted(materials, material)}
            />
            <button type="button" className="plain screen-only" onClick={() => takeOut(index)}>
              Remove component {index + 1}
            </button>
          </li>
        ))}
      </ol>
      {notice}
      <button type="button" className="screen-only" onClick={add}>
        Add a component
      </button>
    </section>
  );
}

/** A material that neither the catalogue nor the brief describes keeps its place in the list, so that it is not lost. */
const withUnlisted = (materials: readonly Choice[], material: string): readonly Choice[] => [
  { value: "", label: "Choose the material" },
  ...(material === "" || materials.some(({ value }) => value === material)
    ? []
    : [{ value: material, label: `“${material}”, not described yet` }]),
  ...materials,
];

function Component({ name, place, materials }: { name: string; place: number; materials: readonly Choice[] }) {
  return (
    <fieldset className={grid.fields}>
      <legend className="visually-hidden">Component {place}</legend>
      <ChoiceField name={`${name}.material`} label="Material" choices={materials} className={grid.wide} />
      <div>
        <TextField name={`${name}.arealDensity`} label="Mass per area" dimension="arealDensity" />
        <QuantityReading name={`${name}.arealDensity`} dimension="arealDensity" />
      </div>
      <div>
        <TextField name={`${name}.bulkDensity`} label="Loose density, if stated" dimension="bulkDensity" />
        <QuantityReading name={`${name}.bulkDensity`} dimension="bulkDensity" />
      </div>
      <div>
        <TextField name={`${name}.particleSize`} label="Particle size, mesh or mm" />
        <GrainReading name={`${name}.particleSize`} />
      </div>
      <ChoiceField name={`${name}.shape`} label="Particle shape" choices={shapes} />
      <ChoiceField name={`${name}.evidence`} label="Evidence" choices={evidences} />
      <TextField name={`${name}.document`} label="Document" />
      <TextField name={`${name}.page`} label="Page" className={grid.short} />
      <TextField name={`${name}.laboratory`} label="Laboratory or tester" />
      <ChoiceField name={`${name}.accreditation`} label="Accreditation for the method" choices={accreditationChoices} />
      <TextField name={`${name}.date`} label="Date of the report" />
      <ChoiceField name={`${name}.build`} label="Tested build" choices={buildChoices} />
      <LongTextField name={`${name}.words`} label="The bid’s words" rows={1} className={grid.wide} />
    </fieldset>
  );
}
