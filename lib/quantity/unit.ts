declare const unit: unique symbol;

/** A plain number in the unit U. The compiler keeps it apart from numbers in other units. */
export type In<U extends string> = number & { readonly [unit]: U };

/** A closed interval in one unit. A side that nobody bounded is ±Infinity. */
export type Interval<U extends string = string> = Readonly<{ low: In<U>; high: In<U> }>;
