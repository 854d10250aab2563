import { type PlanLocation, type TestPlan, wearZones } from "#lib/fieldtest";
import type { UnitSystem } from "#lib/quantity";
import { type DrawingWidth, roomForWords } from "../../../../_components/chart/drawing-width";
import { fieldDrawing } from "../_tests/field-drawing";
import { placedLabels } from "../_tests/placed-labels";
import { FieldSvg } from "./field-frame";
import styles from "./plan-map.module.css";

const rooms = { wide: { width: 760, tallest: 520 }, narrow: { width: 340, tallest: 520 } } as const;
const radius = 11;
const wordSize = 12;
/** Radius in m of the ring that stands for a wear zone. */
const zoneRadius = 5;

/** What stands beside a number: a gap needs no word. */
const wordsOf: Readonly<Record<PlanLocation["kind"], (zone: string, label: string) => string>> = {
  "by-the-marks": (zone) => zone,
  "fills-a-gap": () => "",
  extra: (_, label) => label,
};

/** Where to test, to scale: numbered locations on the field with the wear zone each one stands for. */
export function PlanMap({
  plan: { outline, locations },
  width,
  units,
  label,
}: {
  plan: TestPlan;
  width: DrawingWidth;
  units: UnitSystem;
  label: string;
}) {
  const drawing = fieldDrawing(outline, rooms[width], units);
  const texts = locations.map(({ kind, zone, label: name }) => wordsOf[kind](wearZones[zone].label, name));
  const spots = locations.map(({ place }, index) => ({
    at: drawing.at(place),
    width: roomForWords(texts[index] ?? "", wordSize),
  }));
  const words =
    width === "wide"
      ? placedLabels(spots, {
          radius,
          height: wordSize + 2,
          room: { width: drawing.width, height: drawing.height - 44 },
        })
      : [];
  return (
    <FieldSvg drawing={drawing} label={label}>
      {locations.map(({ id, place, zone, kind }) =>
        kind === "by-the-marks" ? (
          <circle
            key={id}
            cx={drawing.at(place).x}
            cy={drawing.at(place).y}
            r={Math.max(radius + 3, zoneRadius * drawing.scale)}
            className={zone === "wing" || zone === "end-zone" ? styles.quietZone : styles.zone}
          />
        ) : null,
      )}
      {locations.map(({ id, place, kind }, index) => {
        const { x, y } = drawing.at(place);
        const middle = words[index];
        return (
          <g key={id}>
            {kind === "extra" ? (
              <rect x={x - radius} y={y - radius} width={2 * radius} height={2 * radius} className={styles.mark} />
            ) : (
              <circle cx={x} cy={y} r={radius} className={kind === "fills-a-gap" ? styles.gap : styles.mark} />
            )}
            <text x={x} y={y} dy="0.35em" textAnchor="middle" className={styles.number}>
              {index + 1}
            </text>
            {middle ? (
              <text x={middle.x} y={middle.y} dy="0.35em" textAnchor="middle" className={styles.zoneWords}>
                {texts[index]}
              </text>
            ) : null}
          </g>
        );
      })}
    </FieldSvg>
  );
}
