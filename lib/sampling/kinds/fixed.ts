import type { DistributionRule } from "../model";
import { countProblem } from "./figure-order";

export const fixed: DistributionRule<"fixed"> = {
  label: "Known",
  written: "one figure",
  example: "4.85",
  mean: ({ value }) => value,
  variance: () => 0,
  quantile:
    ({ value }) =>
    () =>
      value,
  stated: ({ value }) => value,
  inWords: ({ value }, show) => show(value),
  fromFigures: (figures) => {
    const [only] = figures;
    return only === undefined || figures.length !== 1 ? countProblem(figures, 1, fixed) : { value: only.value };
  },
};
