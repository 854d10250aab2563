"use client";
import { useEffect, useRef, useState } from "react";
import type { DrawingProgress } from "#lib/sampling";
import type { Following } from "./drawn-beside";

/** How far a drawing is. The order is kept with its outcome, so that a page can tell when something has changed since. */
export type DrawingState<Order, Outcome> = Readonly<
  | { kind: "ready" }
  | { kind: "drawing"; progress: DrawingProgress }
  | { kind: "cancelled" }
  | { kind: "failed"; message: string }
  | Drawn<Order, Outcome>
>;

export type Drawn<Order, Outcome> = Readonly<{ kind: "done"; outcome: Outcome; order: Order }>;

/** Starts, follows and cancels one drawing at a time; it ends when its page does. `last` stays while it is drawn anew. */
export function useDrawing<Order, Outcome>(draw: (order: Order, following: Following) => Promise<Outcome>) {
  const [state, setState] = useState<DrawingState<Order, Outcome>>({ kind: "ready" });
  const [last, setLast] = useState<Drawn<Order, Outcome> | null>(null);
  const stop = useRef<AbortController | null>(null);
  useEffect(() => () => stop.current?.abort(), []);
  const start = async (order: Order) => {
    const control = new AbortController();
    stop.current = control;
    setState({ kind: "drawing", progress: { done: 0, of: 1 } });
    try {
      const tell = (progress: DrawingProgress) => {
        if (!control.signal.aborted) setState({ kind: "drawing", progress });
      };
      const drawn = { kind: "done", outcome: await draw(order, { tell, signal: control.signal }), order } as const;
      setState(drawn);
      setLast(drawn);
    } catch (problem) {
      if (control.signal.aborted) setState({ kind: "cancelled" });
      else setState({ kind: "failed", message: problem instanceof Error ? problem.message : String(problem) });
    }
  };
  return { state, last, start: (order: Order) => void start(order), cancel: () => stop.current?.abort() };
}
