"use client";
import { useEffect, useRef, useState } from "react";
import type { CostOutcome } from "#lib/cost";
import type { DrawingProgress } from "#lib/sampling";
import { ChartFrame } from "../../../../../_components/chart/chart-frame";
import type { CostDrawingOrder } from "../_drawing/drawing-order";
import { drawnCosts } from "../_drawing/drawn-costs";
import { ChanceChart } from "./chance-chart";
import type { DrawnBid } from "./drawn-bid";
import { isSameOrder } from "./is-same-order";
import { ChanceTable, OutcomeTable } from "./outcome-table";
import { outcomeWords } from "./outcome-words";
import { RangeChart } from "./range-chart";
import styles from "./uncertainty.module.css";

type State = Readonly<
  | { kind: "ready" }
  | { kind: "drawing"; progress: DrawingProgress }
  | { kind: "cancelled" }
  | { kind: "failed"; message: string }
  | { kind: "done" }
>;

type Drawn = Readonly<{ outcome: CostOutcome; order: CostDrawingOrder }>;

/** Draws the costs in a worker of the browser, tells how far it is, and shows what came out. */
export function DrawnResults({
  order,
  bids,
  currency,
}: {
  order: CostDrawingOrder;
  bids: readonly DrawnBid[];
  currency: string;
}) {
  const [state, setState] = useState<State>({ kind: "ready" });
  const [last, setLast] = useState<Drawn | null>(null); // stays in view while it is drawn anew
  const stop = useRef<AbortController | null>(null);
  useEffect(() => () => stop.current?.abort(), []);
  const draw = async () => {
    const control = new AbortController();
    stop.current = control;
    setState({ kind: "drawing", progress: { done: 0, of: order.samples } });
    try {
      const tell = (progress: DrawingProgress) => setState({ kind: "drawing", progress });
      const outcome = await drawnCosts(order, { tell, signal: control.signal });
      setLast({ outcome, order });
      setState({ kind: "done" });
    } catch (problem) {
      if (control.signal.aborted) setState({ kind: "cancelled" });
      else setState({ kind: "failed", message: problem instanceof Error ? problem.message : String(problem) });
    }
  };
  return (
    <>
      <p className="row screen-only">
        {state.kind === "drawing" ? (
          <button type="button" onClick={() => stop.current?.abort()}>
            Cancel
          </button>
        ) : (
          <button type="button" className="primary" onClick={() => void draw()}>
            Draw {order.samples.toLocaleString("en-US")} times
          </button>
        )}
      </p>
      <Told state={state} last={last} />
      {last === null ? null : (
        <>
          {isSameOrder(last.order, order) ? null : (
            <p role="status">
              <strong>Out of date.</strong> Something has changed since these were drawn. Draw again to see what it
              moves.
            </p>
          )}
          {outcomeWords(last.outcome, bids, currency).map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
          <ChartFrame
            title="How far each cost may lie from the entered one"
            summary="The broad bar holds 9 draws in 10, the dark bar every second one, and the thick rule is the middle. The dashed rule is the cost as entered."
            draw={(size) => <RangeChart outcome={last.outcome} bids={bids} currency={currency} size={size} />}
            table={<OutcomeTable outcome={last.outcome} bids={bids} currency={currency} />}
          />
          <ChartFrame
            title="How sure a sum of money is to be enough"
            summary="Each curve rises from the sums that hardly any draw stays under to those that nearly all do. Where it crosses 90, nine draws in ten cost no more."
            draw={(size) => <ChanceChart outcome={last.outcome} bids={bids} currency={currency} size={size} />}
            table={<ChanceTable outcome={last.outcome} bids={bids} currency={currency} />}
          />
        </>
      )}
    </>
  );
}

/** One polite line on how the drawing goes. */
function Told({ state, last }: { state: State; last: Drawn | null }) {
  switch (state.kind) {
    case "ready":
      return <p className={styles.note}>Nothing is drawn yet.</p>;
    case "drawing": {
      const { done, of } = state.progress;
      return (
        <p>
          <progress aria-label="Draws made" value={done} max={of} className={styles.progress} />{" "}
          {done.toLocaleString("en-US")} of {of.toLocaleString("en-US")}
        </p>
      );
    }
    case "cancelled":
      return (
        <p role="status">
          Cancelled. {last === null ? "Nothing was kept." : "What stands below is from the drawing before."}
        </p>
      );
    case "failed":
      return <p role="alert">The costs could not be drawn: {state.message}</p>;
    case "done":
      return last === null ? null : (
        <p role="status" className={styles.note}>
          Drawn {last.outcome.samples.toLocaleString("en-US")} times with seed {last.outcome.seed}. The same seed and
          figures give the same results.
        </p>
      );
  }
}
