"use client";
import type { FieldShape } from "#lib/field";
import { sportFields, suggestedRunOff } from "#lib/field";
import { ChoiceField } from "../../../../_components/form/choice-field";
import { KindField } from "../../../../_components/form/kind-field";
import { TextField } from "../../../../_components/form/text-field";
import { TextListField } from "../../../../_components/form/text-list-field";
import styles from "./brief-form.module.css";

type Kind = FieldShape["kind"];

const kinds = [
  { value: "rectangle", label: "Rectangle, length and width" },
  { value: "sport", label: "Field of a sport, with run-off around it" },
  { value: "polygon-by-coordinates", label: "Outline by the coordinates of its corners" },
  { value: "polygon-by-sides", label: "Outline by sides and diagonals, measured with a tape" },
  { value: "measured-area", label: "Area that somebody measured" },
];

const templates: Readonly<Record<Kind, Readonly<Record<string, unknown>>>> = {
  rectangle: { length: "", width: "" },
  sport: { sport: "us-football", runOff: suggestedRunOff.text },
  "polygon-by-coordinates": { unit: "ft", corners: ["", "", "", ""] },
  "polygon-by-sides": { sides: ["", "", "", ""], diagonals: [""] },
  "measured-area": { area: "", how: "" },
};

const sports = Object.entries(sportFields).map(([value, { label, size }]) => ({ value, label: `${label}, ${size}` }));
const planUnits = [
  { value: "ft", label: "feet" },
  { value: "yd", label: "yards" },
  { value: "m", label: "metres" },
];

function fieldsOf(kind: Kind): React.ReactNode {
  switch (kind) {
    case "rectangle":
      return (
        <div className={styles.pair}>
          <TextField name="field.length" label="Length" hint="For instance “360 ft”." dimension="distance" />
          <TextField name="field.width" label="Width" hint="For instance “160 ft”." dimension="distance" />
        </div>
      );
    case "sport":
      return (
        <>
          <ChoiceField
            name="field.sport"
            label="Sport and size"
            hint="Sizes as publications quote the rules. The rule book in force decides."
            choices={sports}
          />
          <TextField
            name="field.runOff"
            label="Run-off on every side"
            hint={`Turf beyond the lines. ${suggestedRunOff.text} is ${suggestedRunOff.source}.`}
            dimension="distance"
            className={styles.prose}
          />
        </>
      );
    case "polygon-by-coordinates":
      return (
        <>
          <ChoiceField name="field.unit" label="Unit of the coordinates" choices={planUnits} className={styles.short} />
          <TextListField
            name="field.corners"
            label="Corners, in order around the outline"
            hint="Write x and y with a comma between, like “120.5, 60”. A list from a spreadsheet can be pasted into any of them."
            entry={(index) => `Corner ${index + 1}`}
          />
        </>
      );
    case "polygon-by-sides":
      return (
        <>
          <TextListField
            name="field.sides"
            label="Sides, in order around the outline"
            hint="Number the corners as you walk around. The last side runs back to corner 1."
            entry={(index) => `Side from corner ${index + 1}`}
            dimension="distance"
          />
          <TextListField
            name="field.diagonals"
            label="Diagonals from corner 1"
            hint="Three fewer than sides: from corner 1 to corner 3, 4 and so on. They cut the field into triangles."
            entry={(index) => `Diagonal from corner 1 to ${index + 3}`}
            dimension="distance"
          />
        </>
      );
    case "measured-area":
      return (
        <>
          <TextField name="field.area" label="Area" hint="For instance “80,560 ft²”." dimension="area" />
          <TextField name="field.how" label="How it was measured" hint="A survey, a drawing, a measuring wheel." />
        </>
      );
  }
}

/** The shape of the field, by whichever kind of description is at hand. */
export function FieldShapeFields() {
  return (
    <KindField
      name="field"
      label="How the turfed area is described"
      choices={kinds}
      templates={templates}
      fields={fieldsOf}
    />
  );
}
