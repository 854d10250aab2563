import styles from "./drawing.module.css";
import type { DrawingState, Drawn } from "./use-drawing";

/** One polite line on how a drawing goes. */
export function HowItGoes<Order, Outcome>({
  state,
  words,
}: {
  state: DrawingState<Order, Outcome>;
  words: Readonly<{
    /** What is counted: "Draws made". */
    counted: string;
    /** What can fail: "The costs". */
    what: string;
    /** What is left where it was cancelled. */
    left: string;
    done: (drawn: Drawn<Order, Outcome>) => string;
  }>;
}) {
  switch (state.kind) {
    case "ready":
      return <p className={styles.note}>Nothing is drawn yet.</p>;
    case "drawing": {
      const { done, of } = state.progress;
      return (
        <p>
          <progress aria-label={words.counted} value={done} max={of} className={styles.progress} />{" "}
          {Math.floor((100 * done) / of)} %
        </p>
      );
    }
    case "cancelled":
      return <p role="status">Cancelled. {words.left}</p>;
    case "failed":
      return (
        <p role="alert">
          {words.what} could not be drawn: {state.message}
        </p>
      );
    case "done":
      return (
        <p role="status" className={styles.note}>
          {words.done(state)} The same seed and figures give the same results.
        </p>
      );
  }
}
