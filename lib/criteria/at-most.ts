import { z } from "zod";
import type { FigureField, Gate, OneLimit } from "./gate";
import { gapBetween } from "./rounding";

export const atMost: Gate<OneLimit> = {
  label: "at most",
  explanation: "The figure may reach the limit but not pass it.",
  margins: ({ low, high }, { limit }) => ({ worst: gapBetween(limit.value, high), best: gapBetween(limit.value, low) }),
  atTheLimit: "passes",
  orderProblem: () => null,
};

export const atMostSchema = <F extends z.ZodType>(figure: FigureField<F>) =>
  z.strictObject({ kind: z.literal("at-most"), limit: figure("the limit") });
