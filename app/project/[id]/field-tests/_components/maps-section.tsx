import type { FieldOutline } from "#lib/field";
import type { FieldMap } from "#lib/fieldtest";
import { formatValue, type In, type UnitSystem } from "#lib/quantity";
import { ChartFrame } from "../../../../_components/chart/chart-frame";
import { MapTable } from "./map-table";
import { ValueMap } from "./value-map";

const depthShown = {
  us: { unit: "in", decimals: 2 },
  metric: { unit: "mm", decimals: 0 },
} as const;
const levelShown = { unit: "g", decimals: 0 } as const;

/** Levels over the field, cells at or above the limit hatched. */
export function LevelMap({
  map,
  outline,
  limit,
  units,
}: {
  map: FieldMap<"impactLevel">;
  outline: FieldOutline;
  limit: In<"g">;
  units: UnitSystem;
}) {
  const title = "Levels over the field";
  const count = map.points.length === 1 ? "1 measured location" : `${map.points.length} measured locations`;
  return (
    <>
      <ChartFrame
        title={title}
        summary={`${count}, each with its level in g. ${map.warning}`}
        draw={(width) => (
          <ValueMap
            id={`levels-${width}`}
            map={map}
            outline={outline}
            shown={levelShown}
            bound={{
              value: limit,
              hatched: "at-or-above",
              words: `at or above ${formatValue("impactLevel", limit, units)}`,
            }}
            width={width}
            units={units}
            label={`${title}: ${count}`}
          />
        )}
        table={<MapTable caption={title} column="Level" map={map} units={units} />}
      />
      <p className="soft small">{map.because}</p>
    </>
  );
}

/** Depths over the field, cells below the depth wanted hatched. */
export function DepthMap({
  map,
  outline,
  wanted,
  units,
}: {
  map: FieldMap<"length">;
  outline: FieldOutline;
  wanted: In<"m"> | null;
  units: UnitSystem;
}) {
  const title = "Infill depth over the field";
  const count = map.points.length === 1 ? "1 measured depth" : `${map.points.length} measured depths`;
  return (
    <>
      <ChartFrame
        title={title}
        summary={`${count}, in ${units === "us" ? "inches" : "millimetres"}. ${map.warning}`}
        draw={(width) => (
          <ValueMap
            id={`depths-${width}`}
            map={map}
            outline={outline}
            shown={depthShown[units]}
            bound={
              wanted === null
                ? null
                : { value: wanted, hatched: "below", words: `below ${formatValue("length", wanted, units)}` }
            }
            width={width}
            units={units}
            label={`${title}: ${count}`}
          />
        )}
        table={<MapTable caption={title} column="Depth" map={map} units={units} />}
      />
      <p className="soft small">{map.because}</p>
    </>
  );
}
