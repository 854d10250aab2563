import type { CostOutcome } from "#lib/cost";
import type { DrawingAnswer } from "../../../../../_components/drawing/drawn-beside";
import { answerOrder, type CostDrawingOrder } from "./drawing-order";

// A worker of the browser: one order in, reports and one outcome out. Whoever ends the worker has cancelled it.
const tell = (answer: DrawingAnswer<CostOutcome>): void => self.postMessage(answer);

self.addEventListener("message", ({ data }: MessageEvent<CostDrawingOrder>) => {
  answerOrder(data, (progress) => tell({ kind: "progress", progress })).then(
    (outcome) => tell({ kind: "done", outcome }),
    (problem: unknown) =>
      tell({ kind: "failed", message: problem instanceof Error ? problem.message : String(problem) }),
  );
});
