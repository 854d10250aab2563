import type { DimensionName, SiUnit } from "./dimensions";
import type { In } from "./unit";

/** What a written figure says. Everything is in the SI unit of its dimension. */
export type Reading<U extends string = string> = Readonly<
  | { kind: "exact"; value: In<U> }
  | { kind: "plus-or-minus"; value: In<U>; tolerance: In<U> }
  | { kind: "range"; low: In<U>; high: In<U> }
  | { kind: "at-least"; low: In<U> }
  | { kind: "at-most"; high: In<U> }
>;

/** A figure as somebody typed it, beside what it says in SI. `unit` is the symbol of the unit that was written. */
export type Quantity<D extends DimensionName = DimensionName> = Readonly<{
  asEntered: string;
  dimension: D;
  unit: string;
  reading: Reading<SiUnit<D>>;
}>;

/** A figure that has to be one number: the length of a field, the study period. */
export type ExactQuantity<D extends DimensionName = DimensionName> = Readonly<{
  asEntered: string;
  dimension: D;
  unit: string;
  value: In<SiUnit<D>>;
}>;
