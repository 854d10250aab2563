"use client";
import { contractSchema } from "#lib/submittal";
import { AutosaveForm } from "../../../../../_components/form/autosave-form";
import { type Choice, ChoiceField } from "../../../../../_components/form/choice-field";
import type { SharedDocument } from "../../../../../_components/form/shared-document";
import type { DocumentStart } from "../../../../../_components/form/start-of";
import { TextField } from "../../../../../_components/form/text-field";
import { saveDocument } from "../../../_actions/save-document";
import grid from "../../../_components/field-grid.module.css";
import { type ContractValues, filledContract } from "../../_register/contract-values";

/** What was measured on the field is typed under Promised against measured. */
const shared: SharedDocument<ContractValues> = {
  parts: ["bid", "sameWithin", "reviewDays"],
  filled: (body) => filledContract(body as ContractValues),
};

/** Whose bid the work is held against, and how closely. */
export function AwardForm({
  start,
  bids,
  awarded,
}: {
  start: DocumentStart<ContractValues>;
  bids: readonly Choice[];
  /** Letter of the bid that the procedure awarded; null where it has not come that far. */
  awarded: string | null;
}) {
  return (
    <AutosaveForm schema={contractSchema} {...start} save={saveDocument} label="What was awarded" shared={shared}>
      {awarded === null ? (
        <ChoiceField
          name="bid"
          label="Bid that was taken"
          hint="The procedure here has not come to an award, so the owner says it. With an award, that one counts."
          choices={bids}
        />
      ) : (
        <p>Bid {awarded} was awarded in the procedure. Submittals and tests are held against it.</p>
      )}
      <div className={grid.fields}>
        <TextField
          name="sameWithin"
          label="Counts as the same within"
          hint="A submitted figure this close to the one bid is neither weaker nor stronger."
          dimension="fraction"
        />
        <TextField
          name="reviewDays"
          label="Days for an answer"
          hint="A submittal that waits longer is late on the reviewer’s side."
        />
      </div>
    </AutosaveForm>
  );
}
