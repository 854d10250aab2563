import type { CostOutcome } from "#lib/cost";
import type { DrawingProgress } from "#lib/sampling";
import { answerOrder, type CostDrawingAnswer, type CostDrawingOrder } from "./drawing-order";

/** How a drawing is followed and stopped. */
export type Following = Readonly<{ tell: (progress: DrawingProgress) => void; signal: AbortSignal | null }>;

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
  return new Promise((done, failed) => {
    if (signal?.aborted) {
      failed(signal.reason);
      return;
    }
    const worker = start();
    const stop = () => {
      worker.terminate();
      failed(signal?.reason);
    };
    const end = () => {
      signal?.removeEventListener("abort", stop);
      worker.terminate();
    };
    signal?.addEventListener("abort", stop, { once: true });
    worker.addEventListener("message", ({ data }: MessageEvent<CostDrawingAnswer>) => {
      if (data.kind === "progress") {
        tell(data.progress);
        return;
      }
      end();
      if (data.kind === "done") done(data.outcome);
      else failed(new Error(data.message));
    });
    worker.addEventListener("error", ({ message }) => {
      end();
      failed(new Error(message || "The drawing stopped before it was done."));
    });
    worker.postMessage(order);
  });
}
