import { z } from "zod";
import type { FigureField } from "./gate";
import { boundsOf, type EndAnchors, partOfTheWay, type ValueFunction } from "./value-function";

export const lessIsBetter: ValueFunction<EndAnchors> = {
  label: "less is better",
  explanation: "Scores in full up to the best figure, nothing from the worst figure, and evenly in between.",
  value: (figure, { worst, best }) => partOfTheWay(figure, worst.value, best.value),
  bounds: ({ low, high }, anchors) => boundsOf([lessIsBetter.value(low, anchors), lessIsBetter.value(high, anchors)]),
  curve: ({ worst, best }) => [
    { figure: best.value, value: 1 },
    { figure: worst.value, value: 0 },
  ],
  orderProblem: ({ worst, best }) =>
    best.value < worst.value
      ? null
      : {
          field: "best",
          message: `The best figure reads “${best.asEntered}”, the worst “${worst.asEntered}”. Where less is better, expected a best figure below the worst one.`,
        },
};

export const lessIsBetterSchema = <F extends z.ZodType>(figure: FigureField<F>) =>
  z.strictObject({
    kind: z.literal("less-is-better"),
    worst: figure("the worst figure"),
    best: figure("the best figure"),
  });
