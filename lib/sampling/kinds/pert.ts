import { betaQuantile } from "../beta-quantile";
import type { DistributionRule } from "../model";
import { threeFigures, threeWritten } from "./three-figures";

/**
 * A beta distribution over lowest to highest whose mean gives the most likely figure four times the weight of an end.
 * Its variance is the exact one; (highest − lowest)² ÷ 36 is an approximation only.
 * @source shapes 1 + 4(m − a)/(b − a) and 1 + 4(b − m)/(b − a); variance (mean − a)(b − mean)/7, derived
 */
export const pert: DistributionRule<"pert"> = {
  label: "Lowest, most likely, highest (smooth)",
  ...threeWritten,
  mean: ({ low, likely, high }) => (low + 4 * likely + high) / 6,
  variance: ({ low, likely, high }) => {
    const mean = (low + 4 * likely + high) / 6;
    return ((mean - low) * (high - mean)) / 7;
  },
  quantile: ({ low, likely, high }) => {
    const width = high - low;
    if (!(width > 0)) return () => low;
    const unit = betaQuantile({ first: 1 + (4 * (likely - low)) / width, second: 1 + (4 * (high - likely)) / width });
    return (chance) => low + width * unit(chance);
  },
  stated: ({ likely }) => likely,
  inWords: ({ low, likely, high }, show) => `most likely about ${show(likely)}, from ${show(low)} to ${show(high)}`,
  fromFigures: threeFigures,
};
