import type { DrawingProgress } from "#lib/sampling";

/** What a worker that draws sends back. After `done` or `failed` nothing follows. */
export type DrawingAnswer<Outcome> = Readonly<
  | { kind: "progress"; progress: DrawingProgress }
  | { kind: "done"; outcome: Outcome }
  | { kind: "failed"; message: string }
>;

/** How a drawing is followed and stopped. */
export type Following = Readonly<{ tell: (progress: DrawingProgress) => void; signal: AbortSignal | null }>;

/**
 * Sends an order to a worker of its own and waits for the outcome. To cancel ends the worker.
 * @throws the reason of the signal once it is aborted; an Error with the message of the worker where that fails
 */
export function drawnBeside<Order, Outcome>(
  order: Order,
  { tell, signal }: Following,
  start: () => Worker,
): Promise<Outcome> {
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
    worker.addEventListener("message", ({ data }: MessageEvent<DrawingAnswer<Outcome>>) => {
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
