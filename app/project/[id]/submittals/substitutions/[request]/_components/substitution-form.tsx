"use client";
import { substitutionSchema } from "#lib/evaluation";
import { AutosaveForm } from "../../../../../../_components/form/autosave-form";
import { type Choice, ChoiceField } from "../../../../../../_components/form/choice-field";
import { LongTextField } from "../../../../../../_components/form/long-text-field";
import type { DocumentStart } from "../../../../../../_components/form/start-of";
import { TextField } from "../../../../../../_components/form/text-field";
import { saveDocument } from "../../../../_actions/save-document";
import grid from "../../../../_components/field-grid.module.css";
import { InfillFields } from "../../../../bids/[bid]/_components/infill-fields";
import { ValuesList } from "../../../_components/values-list";
import type { SubstitutionValues } from "../../../_register/substitution-values";

const decisions = [
  { value: "", label: "Open" },
  { value: "accepted", label: "Accepted" },
  { value: "rejected", label: "Rejected" },
];

/** What is asked for, what the substitute claims, and what was decided. */
export function SubstitutionForm({
  start,
  materials,
  proposed,
}: {
  start: DocumentStart<SubstitutionValues>;
  materials: readonly Choice[];
  /** Properties that clauses limit: a request has to speak of each. */
  proposed: readonly string[];
}) {
  return (
    <AutosaveForm schema={substitutionSchema} {...start} save={saveDocument} label="Request for substitution">
      <section aria-labelledby="request">
        <h2 id="request">The request</h2>
        <div className={grid.fields}>
          <TextField name="item" label="What is to be substituted" className={grid.wide} />
          <TextField name="requested" label="Requested on" hint="As 2027-06-12" />
          <TextField name="priceChange" label="Change of the price" hint="“-$12,000” for a credit; empty: none" />
          <LongTextField name="reason" label="Reason that is given" rows={2} className={grid.full} />
        </div>
      </section>
      <section aria-labelledby="claims">
        <h2 id="claims">What the substitute claims</h2>
        <p>Each value stands in place of all that the bid says of its property. What is not named stays as bid.</p>
        <ValuesList name="claims" what="value of the substitute" proposed={proposed} condition="new" />
      </section>
      <p>Enter an infill only where it is substituted too; then all of it, layer by layer.</p>
      <InfillFields materials={materials} />
      <section aria-labelledby="decision">
        <h2 id="decision">Decision</h2>
        <div className={grid.fields}>
          <ChoiceField name="decision" label="Decision" choices={decisions} />
          <TextField name="decided" label="Decided on" hint="As 2027-06-20" />
          <LongTextField name="note" label="Why" rows={2} className={grid.full} />
        </div>
      </section>
    </AutosaveForm>
  );
}
