import type { CostingText } from "#lib/evaluation";

/** The text of a costing with what it says of uncertainty filled in. */
export type UncertaintyValues = CostingText & {
  uncertainty: NonNullable<CostingText["uncertainty"]> & {
    seed: string;
    samples: string;
    inputs: NonNullable<NonNullable<CostingText["uncertainty"]>["inputs"]>;
  };
};
