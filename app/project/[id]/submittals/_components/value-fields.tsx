"use client";
import { useWatch } from "react-hook-form";
import {
  evidenceLevels,
  matchProperty,
  methodOf,
  properties,
  propertyGroups,
  propertyOf,
  testMethods,
} from "#lib/claim";
import { ChoiceField } from "../../../../_components/form/choice-field";
import { TextField } from "../../../../_components/form/text-field";
import grid from "../../_components/field-grid.module.css";

export const propertyChoices = propertyGroups.flatMap(({ id, label: group }) =>
  properties.filter((property) => property.group === id).map(({ id: value, label }) => ({ value, label, group })),
);
export const methodChoices = [
  { value: "", label: "Not stated" },
  ...testMethods.map(({ id, designation, name }) => ({ value: id, label: `${designation}, ${name}` })),
];
const evidences = evidenceLevels.map(({ id: value, label }) => ({ value, label }));

/** One value as a paper states it: figure, method, condition, evidence, and where it stands. */
export function ValueFields({ at }: { at: string }) {
  const property = matchProperty(String(useWatch({ name: `${at}.property` }) ?? ""));
  const definition = property === null ? null : propertyOf(property);
  const methods =
    definition === null || definition.methods.length === 0
      ? methodChoices
      : [
          { value: "", label: "Not stated" },
          ...definition.methods.map((value) => ({ value, label: methodOf(value).designation })),
        ];
  return (
    <div className={grid.fields}>
      <ChoiceField name={`${at}.property`} label="Property" choices={propertyChoices} className={grid.wide} />
      {definition?.kind === "choice" ? (
        <ChoiceField
          name={`${at}.figure`}
          label="Value"
          choices={definition.choices.map(({ id: value, label }) => ({ value, label }))}
        />
      ) : (
        <TextField
          name={`${at}.figure`}
          label="Value"
          {...(definition?.kind === "quantity" ? { dimension: definition.dimension } : {})}
        />
      )}
      <ChoiceField name={`${at}.method`} label="Test method" choices={methods} className={grid.wide} />
      <TextField name={`${at}.edition`} label="Edition" />
      <TextField name={`${at}.condition`} label="Condition" hint="“new”, “year 5, wet”" />
      <ChoiceField name={`${at}.evidence`} label="Evidence" choices={evidences} />
      <TextField name={`${at}.document`} label="Document" />
      <TextField name={`${at}.page`} label="Page" />
      <TextField name={`${at}.words`} label="Words of the document" className={grid.full} />
    </div>
  );
}
