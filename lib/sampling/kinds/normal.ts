import type { DistributionRule } from "../model";
import { normalQuantile } from "../normal-share";
import { countProblem } from "./figure-order";

export const normal: DistributionRule<"normal"> = {
  label: "Mean and standard deviation",
  written: "mean ± standard deviation",
  example: "110 ± 15",
  mean: ({ mean }) => mean,
  variance: ({ deviation }) => deviation * deviation,
  quantile:
    ({ mean, deviation }) =>
    (chance) =>
      mean + deviation * normalQuantile(chance),
  stated: ({ mean }) => mean,
  inWords: ({ mean, deviation }, show) =>
    `on average ${show(mean)}, two times in three within ${show(deviation)} of it`,
  fromFigures: (figures) => {
    const [mean, deviation] = figures;
    if (mean === undefined || deviation === undefined || figures.length !== 2) return countProblem(figures, 2, normal);
    if (deviation.value < 0) return `The standard deviation reads “${deviation.text}”; expected 0 or more.`;
    return { mean: mean.value, deviation: deviation.value };
  },
};
