import { z } from "zod";
import type { FigureField } from "./gate";
import { boundsOf, type EndAnchors, partOfTheWay, type ValueFunction } from "./value-function";

export const moreIsBetter: ValueFunction<EndAnchors> = {
  label: "more is better",
  explanation: "Scores nothing up to the worst figure, in full from the best figure, and evenly in between.",
  value: (figure, { worst, best }) => partOfTheWay(figure, worst.value, best.value),
  bounds: ({ low, high }, anchors) => boundsOf([moreIsBetter.value(low, anchors), moreIsBetter.value(high, anchors)]),
  curve: ({ worst, best }) => [
    { figure: worst.value, value: 0 },
    { figure: best.value, value: 1 },
  ],
  orderProblem: ({ worst, best }) =>
    worst.value < best.value
      ? null
      : {
          field: "best",
          message: `The best figure reads “${best.asEntered}”, the worst “${worst.asEntered}”. Where more is better, expected a best figure above the worst one.`,
        },
};

export const moreIsBetterSchema = <F extends z.ZodType>(figure: FigureField<F>) =>
  z.strictObject({
    kind: z.literal("more-is-better"),
    worst: figure("the worst figure"),
    best: figure("the best figure"),
  });
