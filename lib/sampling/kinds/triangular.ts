import type { DistributionRule } from "../model";
import { threeFigures, threeWritten } from "./three-figures";

/** @source closed forms of the triangular distribution, derived */
export const triangular: DistributionRule<"triangular"> = {
  label: "Lowest, most likely, highest (triangle)",
  ...threeWritten,
  mean: ({ low, likely, high }) => (low + likely + high) / 3,
  variance: ({ low, likely, high }) => {
    // over what lies above the lowest, as squares of large figures would eat up the difference
    const [rise, width] = [likely - low, high - low];
    return (rise * rise + width * width - rise * width) / 18;
  },
  quantile: ({ low, likely, high }) => {
    const width = high - low;
    if (!(width > 0)) return () => low;
    const turn = (likely - low) / width;
    const [rising, falling] = [width * (likely - low), width * (high - likely)];
    return (chance) => (chance < turn ? low + Math.sqrt(chance * rising) : high - Math.sqrt((1 - chance) * falling));
  },
  stated: ({ likely }) => likely,
  inWords: ({ low, likely, high }, show) => `most likely ${show(likely)}, from ${show(low)} to ${show(high)}`,
  fromFigures: threeFigures,
};
