import type { FieldMap, MapNode } from "#lib/fieldtest";
import { type DimensionName, inUnit, measured, type UnitOf } from "#lib/quantity";
import type { FieldDrawing } from "./field-drawing";

/** One class of values on a map: from `low` up to, but without, `high`. In the unit of the map. */
export type ValueClass = Readonly<{ low: number; high: number }>;

const mostClasses = 5;
const roundSteps = [1, 2, 2.5, 5, 10] as const;

/** At most five classes of equal, round width that hold all values. */
export function valueClasses(values: readonly number[]): readonly ValueClass[] {
  if (values.length === 0) return [];
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const wanted = Math.max((most - least) / mostClasses, Math.abs(most) * 1e-3, 1e-9);
  const tens = 10 ** Math.floor(Math.log10(wanted));
  for (const factor of [...roundSteps, ...roundSteps.map((step) => step * 10)]) {
    const step = factor * tens;
    const first = Math.floor(least / step + 1e-9);
    const count = Math.floor(most / step + 1e-9) - first + 1;
    if (step >= wanted * (1 - 1e-9) && count <= mostClasses)
      return Array.from({ length: count }, (_, index) => ({
        low: rounded((first + index) * step),
        high: rounded((first + index + 1) * step),
      }));
  }
  return [{ low: least, high: most }];
}

/** “1.8–2.0 in”, “2.0–2.2 in”: as many decimals as any end needs. */
export function classWords(classes: readonly ValueClass[], unit: string): readonly string[] {
  const decimals = Math.max(0, ...classes.flatMap(({ low, high }) => [low, high].map(decimalsOf)));
  const digits = { minimumFractionDigits: decimals, maximumFractionDigits: decimals };
  return classes.map(
    ({ low, high }) => `${[low, high].map((end) => end.toLocaleString("en-US", digits)).join("–")} ${unit}`,
  );
}

const decimalsOf = (value: number): number => `${value}`.split(".")[1]?.length ?? 0;

const rounded = (value: number): number => Number(value.toPrecision(10));

/** The class of a value; the last for one on its upper end. */
export const classOf = (classes: readonly ValueClass[], value: number): number =>
  Math.max(
    0,
    classes.findLastIndex(({ low }) => value >= low - 1e-9),
  );

export type Cell = Readonly<{ x: number; y: number; width: number; height: number; valueClass: number; value: number }>;

/** The least distance between two values that differ; the whole reach where all are one. */
function stepOf(values: readonly number[]): number | null {
  const sorted = [...new Set(values.map((value) => Math.round(value * 1e6) / 1e6))].toSorted(
    (one, other) => one - other,
  );
  const steps = sorted.slice(1).map((value, index) => value - (sorted[index] ?? value));
  return steps.length === 0 ? null : Math.min(...steps);
}

/** The cells of a map as rectangles of a drawing. */
export function mapCells<D extends DimensionName>(
  { nodes, dimension }: Pick<FieldMap<D>, "dimension"> & Readonly<{ nodes: readonly MapNode<D>[] }>,
  unit: UnitOf<D>,
  classes: readonly ValueClass[],
  { at, scale }: FieldDrawing,
): readonly Cell[] {
  const across = stepOf(nodes.map(({ place }) => place.x));
  const up = stepOf(nodes.map(({ place }) => place.y));
  const [width, height] = [(across ?? up ?? 1) * scale, (up ?? across ?? 1) * scale];
  return nodes.map(({ place, value }) => {
    const middle = at(place);
    const shown = inUnit(dimension, measured(dimension, value), unit);
    return {
      x: middle.x - width / 2,
      y: middle.y - height / 2,
      width,
      height,
      value: shown,
      valueClass: classOf(classes, shown),
    };
  });
}

/** Cells as one path, each a little larger than it is so that no seam shows between neighbours. */
export const cellsPath = (cells: readonly Cell[], overlap: number): string =>
  cells
    .map(({ x, y, width, height }) => {
      const [across, up] = [(width + 2 * overlap).toFixed(2), (height + 2 * overlap).toFixed(2)];
      return `M${(x - overlap).toFixed(2)} ${(y - overlap).toFixed(2)}h${across}v${up}h-${across}z`;
    })
    .join("");
