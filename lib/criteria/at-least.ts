import { z } from "zod";
import type { FigureField, Gate, OneLimit } from "./gate";
import { gapBetween } from "./rounding";

export const atLeast: Gate<OneLimit> = {
  label: "at least",
  explanation: "The figure has to reach the limit.",
  margins: ({ low, high }, { limit }) => ({ worst: gapBetween(low, limit.value), best: gapBetween(high, limit.value) }),
  atTheLimit: "passes",
  orderProblem: () => null,
};

export const atLeastSchema = <F extends z.ZodType>(figure: FigureField<F>) =>
  z.strictObject({ kind: z.literal("at-least"), limit: figure("the limit") });
