"use client";
import { contractSchema } from "#lib/submittal";
import { AutosaveForm } from "../../../../_components/form/autosave-form";
import type { SharedDocument } from "../../../../_components/form/shared-document";
import type { DocumentStart } from "../../../../_components/form/start-of";
import { saveDocument } from "../../_actions/save-document";
import { ValuesList } from "../../submittals/_components/values-list";
import { type ContractValues, filledContract } from "../../submittals/_register/contract-values";

/** Whose bid was taken is said under Submittals. */
const shared: SharedDocument<ContractValues> = {
  parts: ["measured"],
  filled: (body) => filledContract(body as ContractValues),
};

/** What was measured on the finished field beside the impact tests. */
export function MeasuredForm({
  start,
  proposed,
}: {
  start: DocumentStart<ContractValues>;
  /** Properties that are specified and not measured yet. */
  proposed: readonly string[];
}) {
  return (
    <AutosaveForm schema={contractSchema} {...start} save={saveDocument} label="Measured values" shared={shared}>
      <p>
        Impact levels and infill depths come from the field tests. Enter here what else was measured: with the condition
        “new” it stands under Acceptance, with “year 3” under that year.
      </p>
      <ValuesList name="measured" what="measured value" proposed={proposed} condition="new" />
    </AutosaveForm>
  );
}
