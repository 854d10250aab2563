import type { CurrencyCode, DimensionName, In, SiUnit } from "#lib/quantity";
import type { Shortfall } from "./shortfall";
import type { Working } from "./working";

/**
 * A derived figure in the SI unit of its dimension: known, a range, bounded on one side, or unknown with the reason.
 * No null stands for "don't know", and no number is more precise than what went in. A figure of money names its currency
 * where that is not the US dollar.
 */
export type Figure<D extends DimensionName = DimensionName> = Readonly<
  | { kind: "known"; dimension: D; value: In<SiUnit<D>>; working: Working; currency?: CurrencyCode }
  | { kind: "range"; dimension: D; low: In<SiUnit<D>>; high: In<SiUnit<D>>; working: Working; currency?: CurrencyCode }
  | { kind: "at-least"; dimension: D; low: In<SiUnit<D>>; working: Working; currency?: CurrencyCode }
  | { kind: "at-most"; dimension: D; high: In<SiUnit<D>>; working: Working; currency?: CurrencyCode }
  | { kind: "unknown"; dimension: D; because: Shortfall }
>;
