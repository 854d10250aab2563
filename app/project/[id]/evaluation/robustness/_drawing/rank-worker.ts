import type { DrawingAnswer } from "../../../../../_components/drawing/drawn-beside";
import { answerRankOrder, type RankDrawingOrder, type RankDrawingOutcome } from "./rank-order";

// A worker of the browser: one order in, reports and one outcome out. Whoever ends the worker has cancelled it.
const tell = (answer: DrawingAnswer<RankDrawingOutcome>): void => self.postMessage(answer);

self.addEventListener("message", ({ data }: MessageEvent<RankDrawingOrder>) => {
  answerRankOrder(data, (progress) => tell({ kind: "progress", progress })).then(
    (outcome) => tell({ kind: "done", outcome }),
    (problem: unknown) =>
      tell({ kind: "failed", message: problem instanceof Error ? problem.message : String(problem) }),
  );
});
