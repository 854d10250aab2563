import { z } from "zod";
import type { ExactQuantity } from "#lib/quantity";
import type { FigureField, Gate } from "./gate";
import { gapBetween } from "./rounding";

export type TwoLimits = Readonly<{ low: ExactQuantity; high: ExactQuantity }>;

/** Distance to the nearer limit, negative outside. */
const marginAt = (figure: number, { low, high }: TwoLimits): number =>
  Math.min(gapBetween(figure, low.value), gapBetween(high.value, figure));

export const within: Gate<TwoLimits> = {
  label: "within",
  explanation: "The figure has to lie between the two limits; either limit may be reached.",
  margins: (interval, limits) => {
    // the margin rises to the middle of the window and falls after it, so its largest value is as near the middle as the figure gets
    const middle = (limits.low.value + limits.high.value) / 2;
    const nearestToMiddle = Math.min(Math.max(middle, interval.low), interval.high);
    return {
      worst: Math.min(marginAt(interval.low, limits), marginAt(interval.high, limits)),
      best: marginAt(nearestToMiddle, limits),
    };
  },
  atTheLimit: "passes",
  orderProblem: ({ low, high }) =>
    low.value <= high.value
      ? null
      : {
          field: "high",
          message: `The upper limit reads “${high.asEntered}”, which is below the lower limit “${low.asEntered}”. Expected an upper limit that is not below the lower one.`,
        },
};

export const withinSchema = <F extends z.ZodType>(figure: FigureField<F>) =>
  z.strictObject({ kind: z.literal("within"), low: figure("the lower limit"), high: figure("the upper limit") });
