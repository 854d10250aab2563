import { type PlanLocation, wearZones } from "#lib/fieldtest";
import { formatValue, type UnitSystem } from "#lib/quantity";

const kinds: Readonly<Record<PlanLocation["kind"], string>> = {
  "by-the-marks": "by the marks",
  "fills-a-gap": "fills a gap",
  extra: "the owner’s own",
};

/** The locations of a plan with their coordinates, for the person who paces them out. */
export function PlanTable({ locations, units }: { locations: readonly PlanLocation[]; units: UnitSystem }) {
  return (
    <table>
      <caption>Locations to test</caption>
      <thead>
        <tr>
          <th scope="col">No.</th>
          <th scope="col">Location</th>
          <th scope="col" className="number">
            x
          </th>
          <th scope="col" className="number">
            y
          </th>
          <th scope="col">Wear zone</th>
          <th scope="col">Why here</th>
        </tr>
      </thead>
      <tbody>
        {locations.map(({ id, label, place, zone, kind, why }, index) => (
          <tr key={id}>
            <th scope="row">{index + 1}</th>
            <td>{label}</td>
            <td className="number">{formatValue("coordinate", place.x, units)}</td>
            <td className="number">{formatValue("coordinate", place.y, units)}</td>
            <td>
              {wearZones[zone].label}, {kinds[kind]}
            </td>
            <td>{why}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
