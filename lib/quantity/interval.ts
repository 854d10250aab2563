import type { Reading } from "./quantity";
import type { In, Interval } from "./unit";

/** Every value the written figure allows; a side that it leaves open is ±Infinity. */
export function intervalOf<U extends string>(reading: Reading<U>): Interval<U> {
  switch (reading.kind) {
    case "exact":
      return { low: reading.value, high: reading.value };
    case "plus-or-minus":
      return {
        low: (reading.value - reading.tolerance) as In<U>,
        high: (reading.value + reading.tolerance) as In<U>,
      };
    case "range":
      return { low: reading.low, high: reading.high };
    case "at-least":
      return { low: reading.low, high: Number.POSITIVE_INFINITY as In<U> };
    case "at-most":
      return { low: Number.NEGATIVE_INFINITY as In<U>, high: reading.high };
  }
}

/** The one number to compute with where one is needed: the value, the middle of a range, the bound of a one-sided figure. */
export function likelyOf<U extends string>(reading: Reading<U>): In<U> {
  switch (reading.kind) {
    case "exact":
    case "plus-or-minus":
      return reading.value;
    case "range":
      return ((reading.low + reading.high) / 2) as In<U>;
    case "at-least":
      return reading.low;
    case "at-most":
      return reading.high;
  }
}
