import type { CostOutcome } from "#lib/cost";
import { drawnBeside, type Following } from "../../../../../_components/drawing/drawn-beside";
import { answerOrder, type CostDrawingOrder } from "./drawing-order";

const costWorker = (): Worker => new Worker(new URL("./cost-worker.ts", import.meta.url), { type: "module" });

/**
 * Draws costs beside the page where there are workers, and in turns with everything else where there are none, as on
 * the server. Both give the same bytes for the same order.
 * @throws the reason of the signal once it is aborted; an Error with the message of the worker where that fails
 */
export function drawnCosts(
  order: CostDrawingOrder,
  { tell, signal }: Following,
  start: (() => Worker) | null = typeof Worker === "undefined" ? null : costWorker,
): Promise<CostOutcome> {
  if (start === null) return answerOrder(order, tell, signal);
  return drawnBeside(order, { tell, signal }, start);
}
