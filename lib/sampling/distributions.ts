import { discrete } from "./kinds/discrete";
import { fixed } from "./kinds/fixed";
import { lognormal } from "./kinds/lognormal";
import { normal } from "./kinds/normal";
import { pert } from "./kinds/pert";
import { triangular } from "./kinds/triangular";
import { uniform } from "./kinds/uniform";
import type { Distribution, DistributionKind, DistributionRule, Show } from "./model";

/** The one list of distributions: schema, form, sampling and documents read it. */
export const distributions: { readonly [K in DistributionKind]: DistributionRule<K> } = {
  fixed,
  triangular,
  pert,
  uniform,
  normal,
  lognormal,
  discrete,
};

export const meanOf = <K extends DistributionKind>(distribution: Distribution<K>): number =>
  distributions[distribution.kind].mean(distribution);

/** Square of the standard deviation, exact. */
export const varianceOf = <K extends DistributionKind>(distribution: Distribution<K>): number =>
  distributions[distribution.kind].variance(distribution);

/** The figure that counts where one has to: the most likely one where it is stated, else the mean. */
export const statedOf = <K extends DistributionKind>(distribution: Distribution<K>): number =>
  distributions[distribution.kind].stated(distribution);

/**
 * A function from a chance strictly between 0 and 1 to the value that is stayed below with it. It never falls by more
 * than rounding.
 */
export const quantileOf = <K extends DistributionKind>(distribution: Distribution<K>): ((chance: number) => number) =>
  distributions[distribution.kind].quantile(distribution);

/** Half a sentence, for example "most likely $4.85/ft², from $4.20/ft² to $6.00/ft²". */
export const distributionInWords = <K extends DistributionKind>(distribution: Distribution<K>, show: Show): string =>
  distributions[distribution.kind].inWords(distribution, show);
