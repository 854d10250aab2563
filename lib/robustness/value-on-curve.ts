import type { CurveCorner } from "./model";

/** A function from figures to values along a line with corners; made once, asked often. */
export function valueOnCurve(curve: readonly CurveCorner[]): (figure: number) => number {
  const figures = Float64Array.from(curve, ({ figure }) => figure);
  const values = Float64Array.from(curve, ({ value }) => value);
  const last = curve.length - 1;
  return (figure) => {
    if (last < 0 || figure < (figures[0] as number)) return values[0] ?? 0;
    let before = last;
    while ((figures[before] as number) > figure) before -= 1; // a line has few corners
    if (before === last) return values[last] as number;
    const [from, to] = [figures[before] as number, figures[before + 1] as number];
    const part = (figure - from) / (to - from);
    return (1 - part) * (values[before] as number) + part * (values[before + 1] as number);
  };
}
