import type { DistributionRule } from "../model";
import { normalQuantile } from "../normal-share";
import { portableExp, portableLog } from "../portable";
import { countProblem } from "./figure-order";

/** Mean and spread of the logarithm. @source σ² = ln(1 + v²), μ = ln(mean) − σ²/2, derived from the moments */
const ofLogarithm = (mean: number, variation: number) => {
  const square = portableLog(1 + variation * variation);
  return { centre: portableLog(mean) - square / 2, spread: Math.sqrt(square) };
};

export const lognormal: DistributionRule<"lognormal"> = {
  label: "Mean and spread in percent, long upper side",
  written: "mean ± percent",
  example: "100 ± 25 %",
  mean: ({ mean }) => mean,
  variance: ({ mean, variation }) => (mean * variation) ** 2,
  quantile: ({ mean, variation }) => {
    const { centre, spread } = ofLogarithm(mean, variation);
    return (chance) => portableExp(centre + spread * normalQuantile(chance));
  },
  stated: ({ mean }) => mean,
  inWords: ({ mean, variation }, show) =>
    `on average ${show(mean)}, spread by ${Number((100 * variation).toPrecision(3))} %, more to the upper side`,
  fromFigures: (figures) => {
    const [mean, variation] = figures;
    if (mean === undefined || variation === undefined || figures.length !== 2)
      return countProblem(figures, 2, lognormal);
    if (!(mean.value > 0))
      return `The mean reads “${mean.text}”; expected a figure above 0, as this one has no lower side below 0.`;
    if (variation.chance === null || !(variation.chance >= 0 && variation.chance <= 5))
      return `The spread reads “${variation.text}”; expected percent of the mean, from 0 % to 500 %, for example “25 %”.`;
    return { mean: mean.value, variation: variation.chance };
  },
};
