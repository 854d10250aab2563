import { infillVolumeShown, type MissingInfill } from "#lib/fieldtest";
import type { DisplayUnit, UnitSystem } from "#lib/quantity";
import { Along } from "../../_components/along";
import styles from "../../_components/ask-form.module.css";
import { ShownFigure } from "../../_components/shown-figure";
import type { ClauseChoice } from "../../_tests/clause-choice";
import type { InfillChoice, TopUp } from "../../_tests/infill-question";

/** How much infill is missing and what to buy, by the map of depths. */
export function MissingInfillSection({
  project,
  choice,
  clause,
  materials,
  problem,
  found,
  units,
}: {
  project: string;
  choice: InfillChoice;
  /** Goes along, so that the clause below stays as it is. */
  clause: ClauseChoice;
  materials: readonly TopUp[];
  problem: string | null;
  found: MissingInfill | null;
  units: UnitSystem;
}) {
  return (
    <section aria-labelledby="missing-infill">
      <h3 id="missing-infill">Missing infill</h3>
      <form action="#missing-infill" method="get" className={`${styles.form} screen-only`}>
        <Along values={clause} />
        <div className={styles.field}>
          <label htmlFor="wanted-depth">Depth wanted</label>
          <input
            id="wanted-depth"
            name="depth"
            defaultValue={choice.depth}
            autoComplete="off"
            aria-invalid={problem !== null}
            aria-describedby={problem === null ? undefined : "wanted-depth-problem"}
          />
        </div>
        <div className={styles.field}>
          <label htmlFor="added-material">Material to add</label>
          <select id="added-material" name="material" defaultValue={choice.material}>
            {materials.map(({ id, label }) => (
              <option key={id} value={id}>
                {label}
              </option>
            ))}
          </select>
        </div>
        <div>
          <button type="submit">Work it out</button>
        </div>
      </form>
      {problem === null ? null : (
        <p id="wanted-depth-problem" role="alert" className={styles.problem}>
          {problem}
        </p>
      )}
      {found === null ? null : <Figures project={project} found={found} units={units} />}
    </section>
  );
}

function Figures({ project, found, units }: { project: string; found: MissingInfill; units: UnitSystem }) {
  const volume = infillVolumeShown[units];
  const mass = massShown[units];
  const rows = [
    { name: "Mean depth", figure: found.meanDepth, shown: units },
    { name: "Volume missing", figure: found.missing, shown: volume },
    { name: "Volume above the depth wanted", figure: found.surplus, shown: volume },
    { name: "To buy, if nothing is moved", figure: found.massToBuy, shown: mass },
    { name: "To buy, if grooming moves all of the surplus", figure: found.massToBuyAfterGrooming, shown: mass },
  ] as const;
  return (
    <>
      <table>
        <caption>Infill to add</caption>
        <tbody>
          {rows.map(({ name, figure, shown }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td>
                <ShownFigure project={project} of={name} figure={figure} shown={shown} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="soft">{found.warning}</p>
    </>
  );
}

/** Infill is bought by the short ton or the tonne. */
const massShown = {
  us: { unit: "short ton", decimals: 1 },
  metric: { unit: "t", decimals: 1 },
} as const satisfies Record<UnitSystem, DisplayUnit>;
