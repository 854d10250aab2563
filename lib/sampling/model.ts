/** What a figure that is not known for certain may be. Values are in whatever unit the caller counts in. */
export type DistributionTerms = Readonly<{
  /** Known for certain. */
  fixed: { value: number };
  /** Anywhere between two ends alike. */
  uniform: { low: number; high: number };
  /** A triangle over lowest, most likely and highest. */
  triangular: { low: number; likely: number; high: number };
  /** The same three figures with a smooth hump, which keeps nearer to the most likely one. */
  pert: { low: number; likely: number; high: number };
  /** A mean and a standard deviation, to both sides alike. */
  normal: { mean: number; deviation: number };
  /** Above 0 with a long upper side: a mean, and the standard deviation as a share of it. */
  lognormal: { mean: number; variation: number };
  /** One of several values, each with its chance; chances add up to 1. */
  discrete: { values: readonly Readonly<{ value: number; chance: number }>[] };
}>;

export type DistributionKind = keyof DistributionTerms;

export type Distribution<K extends DistributionKind = DistributionKind> = {
  [P in K]: Readonly<{ kind: P }> & Readonly<DistributionTerms[P]>;
}[K];

/** A figure for people, for example "$4.85/ft²". */
export type Show = (value: number) => string;

/** One kind of distribution. */
export type DistributionRule<K extends DistributionKind> = Readonly<{
  label: string;
  /** How it is written, for example "lowest / most likely / highest". */
  written: string;
  /** The same with figures. */
  example: string;
  mean: (terms: Distribution<K>) => number;
  /** Square of the standard deviation, exact. */
  variance: (terms: Distribution<K>) => number;
  /**
   * The value that is stayed below with a chance strictly between 0 and 1; made once, asked often. It never falls by more
   * than rounding.
   */
  quantile: (terms: Distribution<K>) => (chance: number) => number;
  /** The figure that counts where one has to: the most likely one where it is stated, else the mean. */
  stated: (terms: Distribution<K>) => number;
  /** Half a sentence, for example "most likely 4.85, from 4.20 to 6.00". */
  inWords: (terms: Distribution<K>, show: Show) => string;
  /** The distribution from the figures as written, or the sentence that helps. */
  fromFigures: (figures: readonly WrittenFigure[]) => DistributionTerms[K] | string;
}>;

/** One figure as written and as read; `chance` is the share that belongs to it where one was written. */
export type WrittenFigure = Readonly<{ text: string; value: number; chance: number | null }>;
