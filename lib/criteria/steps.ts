import { z } from "zod";
import type { FigureField } from "./gate";
import { isUpTo } from "./rounding";
import { boundsOf, notRising, type ScoredFigure, type ValueFunction } from "./value-function";

/**
 * Steps in rising order of figure. Counted `from`, a step holds at its figure and above, up to the next; counted
 * `up-to`, it holds at its figure and below, down to the one before. `otherwise` holds where no step does.
 */
export type StepAnchors = Readonly<{ counted: "from" | "up-to"; otherwise: number; steps: readonly ScoredFigure[] }>;

function valueOfStep(figure: number, { counted, otherwise, steps }: StepAnchors): number {
  const step =
    counted === "from"
      ? steps.findLast(({ at }) => isUpTo(at.value, figure))
      : steps.find(({ at }) => isUpTo(figure, at.value));
  return step?.value ?? otherwise;
}

export const steps: ValueFunction<StepAnchors> = {
  label: "steps",
  explanation: "Scores the value of the step that the figure reaches, with nothing in between.",
  value: valueOfStep,
  // besides the ends, each step whose figure lies inside is entered
  bounds: ({ low, high }, anchors) => {
    const inside = anchors.steps.filter(({ at }) => low < at.value && at.value < high);
    return boundsOf([valueOfStep(low, anchors), valueOfStep(high, anchors), ...inside.map(({ value }) => value)]);
  },
  curve: (anchors) => {
    const { counted, otherwise } = anchors;
    return anchors.steps.flatMap(({ at, value }, index) => {
      const before = counted === "from" ? (anchors.steps[index - 1]?.value ?? otherwise) : value;
      const after = counted === "from" ? value : (anchors.steps[index + 1]?.value ?? otherwise);
      return [
        { figure: at.value, value: before },
        { figure: at.value, value: after },
      ];
    });
  },
  orderProblem: (anchors) => notRising("steps", anchors.steps),
};

export const stepsSchema = <F extends z.ZodType, V extends z.ZodType>(figure: FigureField<F>, value: V) =>
  z.strictObject({
    kind: z.literal("steps"),
    counted: z.enum(["from", "up-to"]),
    otherwise: value,
    steps: z.array(z.strictObject({ at: figure("the figure of the step"), value })).min(1, "Add a step."),
  });
