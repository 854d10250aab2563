import type { OutlookYear } from "#lib/impact";
import { formatInterval, type UnitSystem } from "#lib/quantity";
import { BidLetter } from "../../../../_components/bid-letter";
import type { OutlookLine } from "./outlook-chart";

const levelText = (found: OutlookYear | undefined, units: UnitSystem) =>
  found === undefined ? "–" : `${formatInterval("impactLevel", found, units)}${found.extrapolated ? " *" : ""}`;

/** The range of every bid in every year; a star marks years outside the ages the bid gives levels for. */
export function OutlookTable({
  lines,
  horizon,
  units,
}: {
  lines: readonly OutlookLine[];
  horizon: number;
  units: UnitSystem;
}) {
  return (
    <table>
      <caption>Impact level from low to high; * outside the ages for which the bid gives levels</caption>
      <thead>
        <tr>
          <th scope="col">Year</th>
          {lines.map(({ letter, index }) => (
            <th key={letter} scope="col">
              <BidLetter letter={letter} index={index} />
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {Array.from({ length: horizon + 1 }, (_, year) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the index is the year
          <tr key={year}>
            <th scope="row">{year === 0 ? "new" : year}</th>
            {lines.map(({ letter, outlook }) => (
              <td key={letter}>{levelText(outlook.years[year], units)}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
