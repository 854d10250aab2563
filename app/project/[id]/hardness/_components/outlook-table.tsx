import type { OutlookYear } from "#lib/impact";
import { formatInterval, formatValue, type UnitSystem } from "#lib/quantity";
import { BidLetter } from "../../../../_components/bid-letter";
import type { OutlookLine } from "./outlook-line";
import styles from "./outlook-table.module.css";

/** "117 g", with the range below; a star marks years outside the ages for which the bid gives levels. */
function Level({ of, units }: { of: OutlookYear | undefined; units: UnitSystem }) {
  if (of === undefined) return "–";
  return (
    <>
      {Number.isFinite(of.likely) ? formatValue("impactLevel", of.likely, units) : "–"}
      {of.extrapolated ? " *" : ""}
      <div className={styles.range}>{formatInterval("impactLevel", of, units)}</div>
    </>
  );
}

/** The level of every bid in every year: the likely one, and from low to high. */
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
      <caption>
        Likely impact level and its range by year; * outside the ages for which the bid gives levels, so extrapolated
      </caption>
      <thead>
        <tr>
          <th scope="col">Year</th>
          {lines.map(({ letter, index }) => (
            <th key={letter} scope="col" className="number">
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
              <td key={letter} className="number">
                <Level of={outlook.years[year]} units={units} />
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
