import type { OutlookYear } from "#lib/impact";
import { formatInterval, formatValue, type UnitSystem } from "#lib/quantity";
import { isClosed, type OutlookLine } from "./outlook-line";
import styles from "./outlook-table.module.css";
import { YearTable } from "./year-table";

/** "117 g", with the range below; a star marks years outside the ages for which the bid gives levels. */
function Level({ of, units }: { of: OutlookYear | undefined; units: UnitSystem }) {
  if (of === undefined) return "–";
  return (
    <>
      {isClosed(of) ? formatValue("impactLevel", of.likely, units) : "–"}
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
    <YearTable
      caption="Likely impact level and its range by year; * outside the ages for which the bid gives levels, so extrapolated"
      lines={lines}
      horizon={horizon}
      cell={({ outlook }, year) => <Level of={outlook.years[year]} units={units} />}
    />
  );
}
