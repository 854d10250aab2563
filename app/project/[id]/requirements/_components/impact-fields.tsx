"use client";
import { methodOf, propertyOf } from "#lib/claim";
import type { DepthSensitivityChoice } from "#lib/impact";
import { ChoiceField } from "../../../../_components/form/choice-field";
import { KindField } from "../../../../_components/form/kind-field";
import { TextField } from "../../../../_components/form/text-field";
import { OutlookFields } from "./outlook-fields";
import styles from "./requirements.module.css";

const methods = propertyOf("g-max").methods.map((id) => {
  const { designation, name } = methodOf(id);
  return { value: id, label: `${designation}: ${name}` };
});

const sensitivities = [
  { value: "common-practice", label: "The trade’s rule of thumb (common practice, no source)" },
  { value: "owners-value", label: "A value of the owner’s own" },
];
const sensitivityTemplates = { "common-practice": {}, "owners-value": { perDepth: "", reason: "" } };

const drifts = [
  { name: "low", label: "Low" },
  { name: "likely", label: "Likely" },
  { name: "high", label: "High" },
];

/** What is asked of impact attenuation, by which test, and what is assumed of the years to come. */
export function ImpactFields({ ruleOfThumb, labels }: { ruleOfThumb: string; labels: readonly string[] }) {
  return (
    <>
      <ChoiceField
        name="impact.method"
        label="Test method"
        hint="All levels below are by this method. Levels by a method that measures otherwise are not converted and do not count."
        choices={methods}
        className={styles.wide}
      />
      <div className={styles.group}>
        <TextField name="impact.targetWindow.low" label="Target window from" dimension="impactLevel" />
        <TextField name="impact.targetWindow.high" label="Target window to" dimension="impactLevel" />
        <TextField name="impact.limit" label="Limit, to stay below" dimension="impactLevel" />
      </div>
      <TextField
        name="impact.limitSource"
        label="Where the limit comes from"
        hint="A standard with its edition, a guideline, or your own contract."
        className={styles.wide}
      />
      <div className={styles.group}>
        <TextField
          name="impact.testLocations"
          label="Test locations on the field"
          hint="Each has to stay below the limit."
        />
        <TextField
          name="impact.horizonYears"
          label="Years to look ahead"
          hint="For instance “8 years”."
          dimension="time"
        />
        <TextField
          name="impact.chanceLevel"
          label="Chance that a stated range holds"
          hint="Of one new test result, for instance “95 %”."
          dimension="fraction"
        />
      </div>
      <fieldset id="impact.ownersDrift" className={styles.target}>
        <legend>Change of the impact level a year (owner’s assumption)</legend>
        <p className={styles.note}>
          Used only where a bid’s own figures from fields in use can’t carry a line. No source stands behind it: it is
          yours, and every page that rests on it says so.
        </p>
        <div className={styles.group}>
          {drifts.map(({ name, label }) => (
            <TextField key={name} name={`impact.ownersDrift.${name}`} label={label} dimension="rateOfChange" />
          ))}
        </div>
      </fieldset>
      <KindField<DepthSensitivityChoice["kind"]>
        name="impact.depthSensitivity"
        label="How much harder a spot gets as infill leaves it"
        hint={ruleOfThumb}
        choices={sensitivities}
        templates={sensitivityTemplates}
        className={styles.wide}
        fields={(kind) =>
          kind === "common-practice" ? null : (
            <div className={styles.group}>
              <TextField
                name="impact.depthSensitivity.perDepth"
                label="Growth of the level for each depth lost"
                hint="For instance “0.7 per in”: the share by which the level grows at first."
                dimension="depthSensitivity"
              />
              <TextField name="impact.depthSensitivity.reason" label="Where this value comes from" />
            </div>
          )
        }
      />
      <OutlookFields labels={labels} />
    </>
  );
}
