import type { DistributionRule } from "../model";
import { countProblem, orderProblem } from "./figure-order";

export const uniform: DistributionRule<"uniform"> = {
  label: "Anywhere between two ends",
  written: "lowest / highest",
  example: "4.20 / 6.00",
  mean: ({ low, high }) => (low + high) / 2,
  variance: ({ low, high }) => (high - low) ** 2 / 12,
  quantile:
    ({ low, high }) =>
    (chance) =>
      low + chance * (high - low),
  stated: ({ low, high }) => (low + high) / 2,
  inWords: ({ low, high }, show) => `anywhere from ${show(low)} to ${show(high)}`,
  fromFigures: (figures) => {
    const [low, high] = figures;
    if (low === undefined || high === undefined || figures.length !== 2) return countProblem(figures, 2, uniform);
    return orderProblem(figures, ["lowest", "highest"]) ?? { low: low.value, high: high.value };
  },
};
