import {
  type BidLines,
  type CostOutcome,
  type CostSetting,
  costOutcome,
  drawCosts,
  type LineInput,
  linesModel,
} from "#lib/cost";
import type { DrawingProgress } from "#lib/sampling";

/** What a page asks to be drawn. It is plain data, so that it can be sent to a worker as it is. */
export type CostDrawingOrder = Readonly<{
  bids: readonly BidLines[];
  inputs: readonly LineInput[];
  setting: CostSetting;
  seed: number;
  samples: number;
}>;

/** Runs an order and tells how far it is. Between two reports others get their turn, so that it can be stopped there. */
export async function answerOrder(
  { bids, inputs, setting, seed, samples }: CostDrawingOrder,
  tell: (progress: DrawingProgress) => void,
  signal: AbortSignal | null = null,
): Promise<CostOutcome> {
  const drawing = drawCosts(linesModel(bids, inputs, setting), { seed, samples });
  for (;;) {
    signal?.throwIfAborted();
    const next = drawing.next();
    if (next.done) return costOutcome(next.value);
    tell(next.value);
    await othersTurn();
  }
}

/** Lets messages, clicks and other requests through. */
const othersTurn = (): Promise<void> => new Promise((done) => setTimeout(done, 0));
