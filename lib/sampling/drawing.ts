/** How far a drawing has come. */
export type DrawingProgress = Readonly<{ done: number; of: number }>;

/** A drawing that reports after each chunk. Whoever stops asking for the next report has cancelled it. */
export type Drawing<T> = Generator<DrawingProgress, T, void>;

/** The result of a drawing without its reports, for scripts and tests. */
export function drawnToEnd<T>(drawing: Drawing<T>): T {
  for (;;) {
    const next = drawing.next();
    if (next.done) return next.value;
  }
}
