import type { FieldOutline } from "#lib/field";
import type { FieldMap } from "#lib/fieldtest";
import {
  type DimensionName,
  formatValue,
  type In,
  inUnit,
  type SiUnit,
  type UnitOf,
  type UnitSystem,
} from "#lib/quantity";
import { DrawingKey, keyHeight } from "../../../../_components/chart/drawing-key";
import { type DrawingWidth, roomForWords } from "../../../../_components/chart/drawing-width";
import { fieldDrawing } from "../_tests/field-drawing";
import { cellsPath, classWords, mapCells, valueClasses } from "../_tests/map-layout";
import { placedLabels } from "../_tests/placed-labels";
import { FieldSvg } from "./field-frame";
import styles from "./value-map.module.css";

const rooms = { wide: { width: 760, tallest: 500 }, narrow: { width: 340, tallest: 500 } } as const;
const fills = [styles.class1, styles.class2, styles.class3, styles.class4, styles.class5];
const radius = 4;
const wordSize = 13;
const seam = 0.25;

/** What a map is held against: cells on the far side of it are hatched. */
export type MapBound<D extends DimensionName> = Readonly<{
  value: In<SiUnit<D>>;
  hatched: "at-or-above" | "below";
  words: string;
}>;

/** Values over the field: cells worked out, marks measured, each mark with its value. */
export function ValueMap<D extends DimensionName>({
  id,
  map,
  outline,
  shown,
  bound,
  width,
  units,
  label,
}: {
  /** Of the hatching, one for each drawing. */
  id: string;
  map: FieldMap<D>;
  outline: FieldOutline;
  shown: Readonly<{ unit: UnitOf<D>; decimals: number }>;
  bound: MapBound<D> | null;
  width: DrawingWidth;
  units: UnitSystem;
  label: string;
}) {
  const number = (value: In<SiUnit<D>>) => inUnit(map.dimension, value, shown.unit);
  const classes = valueClasses([...map.nodes, ...map.points].map(({ value }) => number(value)));
  const drawing = fieldDrawing(outline, rooms[width], units);
  const cells = mapCells(map, shown.unit, classes, drawing);
  const line = bound === null ? null : number(bound.value);
  const isHatched = (value: number) =>
    bound !== null && line !== null && (bound.hatched === "below" ? value < line : value >= line);
  const hatched = cells.filter(({ value }) => isHatched(value));
  const ofClass = (index: number) => cells.filter(({ valueClass }) => valueClass === index);
  const texts = map.points.map(({ value }) =>
    formatValue(map.dimension, value, { unit: shown.unit, decimals: shown.decimals }).replace(/\s.*$/, ""),
  );
  const marks = map.points.map(({ place }, index) => ({
    at: drawing.at(place),
    width: roomForWords(texts[index] ?? "", wordSize) + 4,
  }));
  const labels = placedLabels(marks, {
    radius,
    height: wordSize + 1,
    room: { width: drawing.width, height: drawing.height - 40 },
  });
  const columns = width === "wide" ? 6 : 2;
  const entries = [
    ...classWords(classes, shown.unit).map((words, index) => ({
      label: words,
      swatch: (box: React.SVGAttributes<SVGRectElement>) => (
        <rect {...box} className={`${styles.swatch} ${fills[index]}`} />
      ),
    })),
    ...(bound === null || hatched.length === 0
      ? []
      : [
          {
            label: bound.words,
            swatch: (box: React.SVGAttributes<SVGRectElement>) => (
              <rect {...box} fill={`url(#${id}-hatch)`} className={styles.swatch} />
            ),
          },
        ]),
  ];
  return (
    <FieldSvg
      drawing={drawing}
      label={label}
      drawnKey={{
        height: keyHeight(entries.length, columns) + 6,
        drawn: <DrawingKey entries={entries} columns={columns} width={drawing.width} />,
      }}
    >
      <defs>
        <clipPath id={`${id}-field`}>
          <path d={drawing.outline} />
        </clipPath>
        <pattern id={`${id}-hatch`} width="9" height="9" patternUnits="userSpaceOnUse">
          <path d="M-1 1L1 -1M0 9L9 0M8 10L10 8" className={styles.hatch} />
        </pattern>
      </defs>
      <g clipPath={`url(#${id}-field)`}>
        {classes.map(({ low }, index) => (
          <path key={low} d={cellsPath(ofClass(index), seam)} className={fills[index]} />
        ))}
        <path d={cellsPath(hatched, 0)} fill={`url(#${id}-hatch)`} />
      </g>
      {marks.map(({ at }, index) => {
        const middle = labels[index];
        return (
          <g key={`${at.x} ${at.y}`}>
            <circle cx={at.x} cy={at.y} r={radius} className={styles.point} />
            {middle ? (
              <text x={middle.x} y={middle.y} dy="0.35em" textAnchor="middle" className={styles.value}>
                {texts[index]}
              </text>
            ) : null}
          </g>
        );
      })}
    </FieldSvg>
  );
}
