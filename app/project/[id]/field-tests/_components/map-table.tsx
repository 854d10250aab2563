import type { FieldMap } from "#lib/fieldtest";
import { type DimensionName, formatValue, type UnitSystem } from "#lib/quantity";

/** The measured points of a map. */
export function MapTable<D extends DimensionName>({
  caption,
  column,
  map: { dimension, points },
  units,
}: {
  caption: string;
  column: string;
  map: FieldMap<D>;
  units: UnitSystem;
}) {
  return (
    <table>
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">Point</th>
          <th scope="col" className="number">
            x
          </th>
          <th scope="col" className="number">
            y
          </th>
          <th scope="col" className="number">
            {column}
          </th>
        </tr>
      </thead>
      <tbody>
        {points.map(({ place, value }, index) => (
          <tr key={`${place.x} ${place.y}`}>
            <th scope="row">{index + 1}</th>
            <td className="number">{formatValue("coordinate", place.x, units)}</td>
            <td className="number">{formatValue("coordinate", place.y, units)}</td>
            <td className="number">{formatValue(dimension, value, units)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
