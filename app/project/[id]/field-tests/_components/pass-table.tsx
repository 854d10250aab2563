import { explainLocationNote, type ReducedCampaign, type TestLocation } from "#lib/fieldtest";
import { formatValue, type In, type UnitSystem } from "#lib/quantity";
import { FigureText } from "../../../../_components/figure-text";
import { Scroller } from "../../../../_components/scroller";
import { tableRoles } from "../../../../_components/table-roles";
import styles from "./pass-table.module.css";
import { Verdict } from "./verdict";

const grams = (level: In<"g">) => formatValue("impactLevel", level, { unit: "g", decimals: 1 });

/** Drops as they were entered, no figure parted from its unit. */
const dropsInWords = (drops: TestLocation["drops"]): string =>
  drops.map((drop) => drop?.asEntered.replaceAll(" ", "\u00a0") ?? "not made").join(", ");

/** Level, verdict and remarks of each location. */
export function PassTable({
  project,
  reduced: { locations, against },
  verdicts,
  units,
}: {
  project: string;
  reduced: ReducedCampaign;
  /** Whether the limit speaks of the method of the campaign. */
  verdicts: "apply" | "not-comparable";
  units: UnitSystem;
}) {
  return (
    <Scroller label="Level of each location">
      <table {...tableRoles.table} className={styles.table}>
        <caption>Each location against {grams(against.limit)}</caption>
        <thead {...tableRoles.rows}>
          <tr {...tableRoles.row}>
            <th scope="col" {...tableRoles.columnHead}>
              No.
            </th>
            <th scope="col" {...tableRoles.columnHead}>
              Location
            </th>
            <th scope="col" {...tableRoles.columnHead}>
              Drops
            </th>
            <th scope="col" {...tableRoles.columnHead}>
              Level
            </th>
            <th scope="col" {...tableRoles.columnHead}>
              Verdict
            </th>
            <th scope="col" {...tableRoles.columnHead}>
              To look at
            </th>
          </tr>
        </thead>
        <tbody {...tableRoles.rows}>
          {locations.map(({ location, level, verdict, notes }, index) => (
            <tr key={location.id} {...tableRoles.row}>
              <th scope="row" {...tableRoles.rowHead}>
                {index + 1}
              </th>
              <td {...tableRoles.cell} className={styles.name}>
                {location.label === "" ? `Location ${index + 1}` : location.label}
              </td>
              <td {...tableRoles.cell} data-label="Drops: ">
                {dropsInWords(location.drops)}
              </td>
              <td {...tableRoles.cell}>
                <FigureText project={project} of={`level of location ${index + 1}`} figure={level} units={units} />
              </td>
              <td {...tableRoles.cell} className={styles.verdict}>
                <Verdict of={verdicts === "not-comparable" && verdict !== "no-level" ? "not-comparable" : verdict} />
              </td>
              <td {...tableRoles.cell} className={styles.notes}>
                {[...notes.map(explainLocationNote), location.note].filter((note) => note !== "").join(" ")}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </Scroller>
  );
}
