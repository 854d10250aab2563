import { drawnBeside, type Following } from "../../../../../_components/drawing/drawn-beside";
import { answerRankOrder, type RankDrawingOrder, type RankDrawingOutcome } from "./rank-order";

const rankWorker = (): Worker => new Worker(new URL("./rank-worker.ts", import.meta.url), { type: "module" });

/** Lets messages, clicks and other requests through. */
const othersTurn = (): Promise<void> => new Promise((done) => setTimeout(done, 0));

/**
 * Draws ranks beside the page where there are workers, and in turns with everything else where there are none. Both give
 * the same bytes for the same order.
 * @throws the reason of the signal once it is aborted; an Error with the message of the worker where that fails
 */
export const drawnRanks = (
  order: RankDrawingOrder,
  following: Following,
  start: (() => Worker) | null = typeof Worker === "undefined" ? null : rankWorker,
): Promise<RankDrawingOutcome> =>
  start === null
    ? answerRankOrder(order, following.tell, following.signal, othersTurn)
    : drawnBeside(order, following, start);
