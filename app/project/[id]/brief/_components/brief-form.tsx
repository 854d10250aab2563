"use client";
import { type BriefText, briefSchema } from "#lib/evaluation";
import { currencies, currencyCodes } from "#lib/quantity";
import { AutosaveForm } from "../../../../_components/form/autosave-form";
import { ChoiceField } from "../../../../_components/form/choice-field";
import { PartOf } from "../../../../_components/form/closed";
import { LongTextField } from "../../../../_components/form/long-text-field";
import type { DocumentAddress, SaveAction } from "../../../../_components/form/save-outcome";
import type { Draft } from "../../../../_components/form/start-of";
import { TextField } from "../../../../_components/form/text-field";
import { saveDocument } from "../../_actions/save-document";
import styles from "./brief-form.module.css";
import { FieldShapeFields } from "./field-shape-fields";
import { OwnMaterials } from "./own-materials";

const frost = [
  { value: "not-stated", label: "Not stated" },
  { value: "yes", label: "Yes" },
  { value: "no", label: "No" },
];

const currencyChoices = currencyCodes.map((code) => ({ value: code, label: `${code}, ${currencies[code].label}` }));

const moneys = [
  { value: "constant", label: "Constant money, without inflation" },
  { value: "current", label: "Current money, with inflation" },
];

const timings = [
  { value: "end-of-year", label: "At the end of each year" },
  { value: "mid-year", label: "In the middle of each year" },
];

export function BriefForm({
  where,
  version,
  values,
  draft,
  save = saveDocument,
  area,
}: {
  where: DocumentAddress;
  version: number;
  values: BriefText;
  draft: Draft<BriefText> | null;
  save?: SaveAction;
  /** The area as last saved, with its working. */
  area: React.ReactNode;
}) {
  return (
    <AutosaveForm
      schema={briefSchema}
      where={where}
      version={version}
      values={values}
      draft={draft}
      save={save}
      label="Brief"
    >
      <section aria-labelledby="brief-project">
        <h2 id="brief-project">The project</h2>
        <div className={styles.pair}>
          <TextField name="name" label="Name of the project" />
          <TextField name="owner" label="Owner" />
        </div>
        <LongTextField
          name="purpose"
          label="Purpose"
          hint="What is to be built or replaced, and who will play on it."
          className={styles.prose}
        />
        <TextField
          name="notice"
          label="Notice on every page"
          hint="A line that stands on each page and each printed sheet, such as “Draft for the board”. Leave it empty for none."
          className={styles.prose}
        />
      </section>
      <section aria-labelledby="brief-field">
        <h2 id="brief-field">The field</h2>
        <div className={styles.beside}>
          <div>
            <PartOf kind="brief" part="field">
              <FieldShapeFields />
            </PartOf>
          </div>
          <aside className={styles.result} aria-labelledby="brief-area">
            <h3 id="brief-area">Turfed area, as last saved</h3>
            {area}
          </aside>
        </div>
      </section>
      <section aria-labelledby="brief-use">
        <h2 id="brief-use">Use</h2>
        <PartOf kind="brief" part="use">
          <TextField
            name="use.hoursPerYear"
            label="Hours of use a year"
            hint="The cost per hour of use is worked out from it. Write the unit, for instance “1,500 h/year”."
            dimension="yearlyUse"
            className={styles.short}
          />
          <LongTextField name="use.description" label="Who plays, and when" className={styles.prose} />
        </PartOf>
      </section>
      <section aria-labelledby="brief-climate">
        <h2 id="brief-climate">Climate</h2>
        <div className={styles.pair}>
          <TextField
            name="climate.hottestSummerAir"
            label="Hottest air in summer"
            hint="For instance “98 °F”. Leave it empty if nobody has measured it."
            dimension="temperature"
          />
          <ChoiceField name="climate.frost" label="Frost in winter" choices={frost} />
        </div>
        <LongTextField
          name="climate.description"
          label="Heat, frost and rain in words"
          hint="Heavy rain matters to infill that floats, heat to players, frost to the base."
          className={styles.prose}
        />
      </section>
      <section aria-labelledby="brief-money">
        <h2 id="brief-money">Money over time</h2>
        <p>
          All prices are entered as they are on the base date. In <strong>constant money</strong> inflation is left out
          of them, and later costs are discounted at a <strong>real rate</strong>, the rate over and above inflation. In{" "}
          <strong>current money</strong> payments and rate both carry inflation. What a bid is worth today is the same
          either way. Year 0 is the base date. A single payment in a later year falls at the{" "}
          <strong>end of that year</strong>; you choose when costs that come every year fall.
        </p>
        <PartOf kind="brief" part="money">
          <div className={styles.pair}>
            <ChoiceField name="money.currency" label="Currency" choices={currencyChoices} />
            <TextField name="money.baseDate" label="Base date" hint="Year-month-day, for instance 2027-06-01." />
            <TextField
              name="money.studyPeriod"
              label="Study period"
              hint="The years over which every bid is costed alike, for instance “20 years”."
            />
            <TextField
              name="money.serviceStart"
              label="Start of service"
              hint="Years from the base date until the field is used; empty or “0 years” for none."
            />
            <ChoiceField name="money.money" label="Money in which payments are shown" choices={moneys} />
            <TextField
              name="money.realRate"
              label="Real rate a year"
              hint="Over inflation, for instance “3 %”. The owner’s finance office states it."
            />
            <TextField
              name="money.nominalRate"
              label="Nominal rate a year"
              hint="Only in place of a real rate: leave one of the two empty."
            />
            <TextField
              name="money.rateTable"
              label="Table of real rates by term"
              hint="Only in place of a rate: published real rates, for instance “5 years 1.9 %, 10 years 2.0 %, 30 years 2.3 %”. The rate for the study period is read off it, on a straight line between two terms."
            />
            <TextField
              name="money.rateSource"
              label="Where the rate comes from"
              hint="Document and date. A rate is good for a year or so; look up the current one."
            />
            <TextField
              name="money.inflation"
              label="General inflation a year"
              hint="For current money or a nominal rate, for instance “2.5 %”."
            />
            <ChoiceField name="money.timing" label="When costs that come every year fall" choices={timings} />
          </div>
        </PartOf>
      </section>
      <section aria-labelledby="brief-materials" id="materials">
        <h2 id="brief-materials">Infill materials of your own</h2>
        <OwnMaterials />
      </section>
    </AutosaveForm>
  );
}
