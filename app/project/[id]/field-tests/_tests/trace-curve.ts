import type { TraceResults } from "#lib/trace";

/** A point of a curve: time in ms from the first sample, level in g. */
export type CurvePoint = Readonly<{ time: number; level: number }>;

/** The part of a trace around its impact that is drawn. */
export type TraceCurve = Readonly<{
  from: number;
  to: number;
  lowest: number;
  highest: number;
  points: readonly CurvePoint[];
}>;

const perThousand = 1000; // s to ms

/** Samples from one pulse length before the onset to one after the end; the whole trace where there is no pulse. */
function drawnPart({ trace: { levels }, pulse }: Pick<TraceResults, "trace" | "pulse">): readonly [number, number] {
  if (pulse === null) return [0, levels.length - 1];
  const around = Math.max(5, pulse.end - pulse.onset);
  return [
    Math.max(0, Math.floor(pulse.onset - around / 2)),
    Math.min(levels.length - 1, Math.ceil(pulse.end + around / 2)),
  ];
}

/** The curve with at most about `most` points: of each stretch its lowest and its highest sample stay, so no peak is lost. */
export function traceCurve(results: Pick<TraceResults, "trace" | "pulse">, most: number): TraceCurve {
  const { levels, interval } = results.trace;
  const [first, last] = drawnPart(results);
  const stretch = Math.max(1, Math.ceil((2 * (last - first + 1)) / most));
  const points: CurvePoint[] = [];
  for (let start = first; start <= last; start += stretch) {
    let [low, high] = [start, start];
    for (let index = start; index <= Math.min(last, start + stretch - 1); index += 1) {
      if ((levels[index] ?? 0) < (levels[low] ?? 0)) low = index;
      if ((levels[index] ?? 0) > (levels[high] ?? 0)) high = index;
    }
    for (const index of [...new Set([Math.min(low, high), Math.max(low, high)])])
      points.push({ time: index * interval * perThousand, level: levels[index] ?? 0 });
  }
  const shown = points.map(({ level }) => level);
  return {
    from: first * interval * perThousand,
    to: last * interval * perThousand,
    lowest: Math.min(0, ...shown),
    highest: Math.max(1, ...shown),
    points,
  };
}
