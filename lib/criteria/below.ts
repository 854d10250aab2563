import { z } from "zod";
import { atMost } from "./at-most";
import type { FigureField, Gate, OneLimit } from "./gate";

export const below: Gate<OneLimit> = {
  label: "below",
  explanation: "The figure has to stay under the limit; a figure exactly at the limit does not pass.",
  margins: atMost.margins,
  atTheLimit: "falls-short",
  orderProblem: () => null,
};

export const belowSchema = <F extends z.ZodType>(figure: FigureField<F>) =>
  z.strictObject({ kind: z.literal("below"), limit: figure("the limit") });
