import type { CostingText } from "#lib/evaluation";

/** The text of a costing with what it says of uncertainty filled in. */
export type UncertaintyValues = CostingText & {
  uncertainty: NonNullable<CostingText["uncertainty"]> & {
    seed: string;
    samples: string;
    inputs: NonNullable<NonNullable<CostingText["uncertainty"]>["inputs"]>;
  };
};

/** Fills in what a costing does not say of uncertainty yet. */
export const filledUncertainty = (costing: CostingText): UncertaintyValues => ({
  ...costing,
  uncertainty: {
    seed: costing.uncertainty?.seed ?? "1",
    samples: costing.uncertainty?.samples ?? "20,000",
    inputs: costing.uncertainty?.inputs ?? [],
  },
});
