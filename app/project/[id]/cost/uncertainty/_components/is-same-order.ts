import type { CostDrawingOrder } from "../_drawing/drawing-order";

/** Whether two orders draw the same: the page makes a new one with each save, whatever was saved. */
export const isSameOrder = (one: CostDrawingOrder, other: CostDrawingOrder): boolean =>
  one === other || JSON.stringify(one) === JSON.stringify(other);
