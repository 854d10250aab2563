import { type Comparison, type RankAcceptability, type RankQuestion, rankAcceptability } from "#lib/robustness";
import type { DrawingProgress } from "#lib/sampling";

/** What a page asks to be drawn: one comparison under several questions. Plain data, to be sent to a worker as it is. */
export type RankDrawingOrder = Readonly<{ comparison: Comparison; questions: readonly RankQuestion[] }>;

export type RankDrawingOutcome = readonly RankAcceptability[];

/** How many reports a drawing makes from its start to its end, about. */
const reports = 100;

/**
 * Runs an order and tells how far it is, over all questions together.
 * @param othersTurn lets others have their turn after each report; null in a worker, which is stopped from outside
 * @throws the reason of the signal once it is aborted
 */
export async function answerRankOrder(
  { comparison, questions }: RankDrawingOrder,
  tell: (progress: DrawingProgress) => void,
  signal: AbortSignal | null = null,
  othersTurn: (() => Promise<void>) | null = null,
): Promise<RankDrawingOutcome> {
  const of = questions.reduce((sum, { draws }) => sum + draws, 0);
  const outcomes: RankAcceptability[] = [];
  let before = 0;
  let told = 0;
  for (const question of questions) {
    const drawing = rankAcceptability(comparison, question);
    for (let next = drawing.next(); ; next = drawing.next()) {
      signal?.throwIfAborted();
      if (next.done) {
        outcomes.push(next.value);
        break;
      }
      const done = before + next.value.done;
      if (done - told < of / reports && done < of) continue;
      told = done;
      tell({ done, of });
      await othersTurn?.();
    }
    before += question.draws;
  }
  return outcomes;
}
