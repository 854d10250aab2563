"use client";
import { costingSchema } from "#lib/cost";
import type { CostingText } from "#lib/evaluation";
import { AutosaveForm } from "../../../../../_components/form/autosave-form";
import type { DocumentAddress } from "../../../../../_components/form/save-outcome";
import type { Draft } from "../../../../../_components/form/start-of";
import { saveDocument } from "../../../_actions/save-document";
import { InputFields } from "./input-fields";
import type { NamedBid } from "./target-fields";
import { filledUncertainty, type UncertaintyValues } from "./uncertainty-values";

const shared = {
  parts: ["uncertainty"],
  filled: (body: unknown) => filledUncertainty(body as CostingText),
} as const;

/** What the owner says is not known for certain; the rest of the costing travels with it untouched. */
export function UncertaintyForm({
  where,
  version,
  values,
  draft,
  bids,
}: {
  where: DocumentAddress;
  version: number;
  values: UncertaintyValues;
  draft: Draft<UncertaintyValues> | null;
  bids: readonly NamedBid[];
}) {
  return (
    <AutosaveForm
      schema={costingSchema}
      where={where}
      version={version}
      values={values}
      draft={draft}
      save={saveDocument}
      label="Uncertainty"
      shared={shared}
    >
      <section aria-labelledby="uncertain">
        <h2 id="uncertain">What is not known for certain</h2>
        <p>
          Prices are told as shares of the figure as entered: “90 % / 100 % / 125 %” says that a price may end a tenth
          lower or a quarter higher. The figures are yours to set; nobody publishes them for your field.
        </p>
        <InputFields bids={bids} />
      </section>
    </AutosaveForm>
  );
}
