import { z } from "zod";
import type { ExactQuantity } from "#lib/quantity";
import type { FigureField } from "./gate";
import { isUpTo } from "./rounding";
import { partOfTheWay, type ValueFunction } from "./value-function";

/** A window that scores in full and the ends of its two shoulders, in rising order. */
export type WindowAnchors = Readonly<{
  nothingBelow: ExactQuantity;
  fullFrom: ExactQuantity;
  fullTo: ExactQuantity;
  nothingAbove: ExactQuantity;
}>;

export const targetWindow: ValueFunction<WindowAnchors> = {
  label: "target window",
  explanation: "Scores in full inside the window, less along each shoulder, and nothing beyond the shoulders.",
  value: (figure, { nothingBelow, fullFrom, fullTo, nothingAbove }) => {
    // a shoulder of no width is a cliff, and the window owns its edge
    if (!isUpTo(fullFrom.value, figure)) {
      return fullFrom.value === nothingBelow.value ? 0 : partOfTheWay(figure, nothingBelow.value, fullFrom.value);
    }
    if (isUpTo(figure, fullTo.value)) return 1;
    return fullTo.value === nothingAbove.value ? 0 : partOfTheWay(figure, nothingAbove.value, fullTo.value);
  },
  // the value rises, stays, then falls: its least is at an end, its greatest where the figure gets nearest to the window
  bounds: ({ low, high }, anchors) => {
    const nearest = Math.min(Math.max(anchors.fullFrom.value, low), high);
    return {
      low: Math.min(targetWindow.value(low, anchors), targetWindow.value(high, anchors)),
      high: targetWindow.value(nearest, anchors),
    };
  },
  curve: ({ nothingBelow, fullFrom, fullTo, nothingAbove }) => [
    { figure: nothingBelow.value, value: 0 },
    { figure: fullFrom.value, value: 1 },
    { figure: fullTo.value, value: 1 },
    { figure: nothingAbove.value, value: 0 },
  ],
  orderProblem: ({ nothingBelow, fullFrom, fullTo, nothingAbove }) => {
    const inOrder =
      nothingBelow.value <= fullFrom.value && fullFrom.value <= fullTo.value && fullTo.value <= nothingAbove.value;
    if (inOrder) return null;
    const read = [nothingBelow, fullFrom, fullTo, nothingAbove].map(({ asEntered }) => `“${asEntered}”`).join(", ");
    return { field: "nothingBelow", message: `The window reads ${read}. Expected four figures that do not fall.` };
  },
};

export const targetWindowSchema = <F extends z.ZodType>(figure: FigureField<F>) =>
  z.strictObject({
    kind: z.literal("target-window"),
    nothingBelow: figure("the figure below which nothing is scored"),
    fullFrom: figure("the lower edge of the window"),
    fullTo: figure("the upper edge of the window"),
    nothingAbove: figure("the figure above which nothing is scored"),
  });
