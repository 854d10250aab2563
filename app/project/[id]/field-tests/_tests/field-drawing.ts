import type { FieldOutline, Place } from "#lib/field";
import type { UnitSystem } from "#lib/quantity";
import { inUnit, measured } from "#lib/quantity";

export type Spot = Readonly<{ x: number; y: number }>;

/** A field laid out to scale: x to the right and y upwards, as on a plan. Lengths are units of the drawing. */
export type FieldDrawing = Readonly<{
  width: number;
  height: number;
  /** Units of the drawing for one metre. */
  scale: number;
  at: (place: Place) => Spot;
  /** The edge of the turf as a path. */
  outline: string;
  bar: ScaleBar;
}>;

/** A length that a reader can lay along the drawing. */
export type ScaleBar = Readonly<{ length: number; words: string; y: number }>;

const margin = { top: 12, side: 12, bottom: 44 };

/** The field as large as it goes into a width, at most so tall. */
export function fieldDrawing(
  { corners }: FieldOutline,
  room: Readonly<{ width: number; tallest: number }>,
  units: UnitSystem,
): FieldDrawing {
  const [xs, ys] = [corners.map(({ x }) => x), corners.map(({ y }) => y)];
  const [left, bottom] = [Math.min(...xs), Math.min(...ys)];
  const [length, breadth] = [Math.max(...xs) - left, Math.max(...ys) - bottom];
  const scale = Math.min((room.width - 2 * margin.side) / length, room.tallest / breadth);
  const height = margin.top + breadth * scale + margin.bottom;
  const start = (room.width - length * scale) / 2;
  const at = ({ x, y }: Place): Spot => ({
    x: start + (x - left) * scale,
    y: margin.top + (bottom + breadth - y) * scale,
  });
  const path = corners.map(at).map(({ x, y }) => `${x.toFixed(2)} ${y.toFixed(2)}`);
  return {
    width: room.width,
    height,
    scale,
    at,
    outline: `M${path.join("L")}Z`,
    bar: scaleBar(scale, room.width / 3, height - 18, units),
  };
}

const barUnits = { us: "ft", metric: "m" } as const;
const barLengths = [500, 300, 200, 100, 50, 30, 20, 10, 5, 2, 1] as const;

/** The longest round length that stays below `most` units of the drawing. */
function scaleBar(scale: number, most: number, y: number, units: UnitSystem): ScaleBar {
  const unit = barUnits[units];
  const perUnit = scale / inUnit("distance", measured("distance", 1), unit);
  const number = barLengths.find((length) => length * perUnit <= most) ?? 1;
  return { length: number * perUnit, words: `${number} ${unit}`, y };
}
