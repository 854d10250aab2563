"use client";
import type { CostingText } from "#lib/evaluation";
import { CostingForm } from "../../../_components/price/costing-form";
import type { CostingStart } from "../../../_components/price/costing-start";
import { InputFields } from "./input-fields";
import type { NamedBid } from "./target-fields";
import { filledUncertainty, type UncertaintyValues } from "./uncertainty-values";

const shared = {
  parts: ["uncertainty"],
  filled: (body: unknown) => filledUncertainty(body as CostingText),
} as const;

/** What the owner says is not known for certain. */
export function UncertaintyForm({
  start,
  bids,
}: {
  start: CostingStart<UncertaintyValues>;
  bids: readonly NamedBid[];
}) {
  return (
    <CostingForm start={start} shared={shared} label="Uncertainty">
      <section aria-labelledby="uncertain">
        <h2 id="uncertain">What is not known for certain</h2>
        <p>
          Prices are told as shares of the figure as entered: “90 % / 100 % / 125 %” says that a price may end a tenth
          lower or a quarter higher. The figures are yours to set; nobody publishes them for your field.
        </p>
        <InputFields bids={bids} />
      </section>
    </CostingForm>
  );
}
