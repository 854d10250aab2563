import { explainLocationNote, type ReducedCampaign } from "#lib/fieldtest";
import { formatValue, type In, type UnitSystem } from "#lib/quantity";
import { FigureText } from "../../../../_components/figure-text";
import { Scroller } from "../../../../_components/scroller";
import { Verdict } from "./verdict";

const grams = (level: In<"g">) => formatValue("impactLevel", level, { unit: "g", decimals: 1 });

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
      <table>
        <caption>Each location against {grams(against.limit)}</caption>
        <thead>
          <tr>
            <th scope="col">No.</th>
            <th scope="col">Location</th>
            <th scope="col">Drops</th>
            <th scope="col">Level</th>
            <th scope="col">Verdict</th>
            <th scope="col">To look at</th>
          </tr>
        </thead>
        <tbody>
          {locations.map(({ location, level, verdict, notes }, index) => (
            <tr key={location.id}>
              <th scope="row">{index + 1}</th>
              <td>{location.label === "" ? `Location ${index + 1}` : location.label}</td>
              <td>{location.drops.map((drop) => drop?.asEntered ?? "not made").join(", ")}</td>
              <td>
                <FigureText project={project} of={`level of location ${index + 1}`} figure={level} units={units} />
              </td>
              <td>
                <Verdict of={verdicts === "not-comparable" && verdict !== "no-level" ? "not-comparable" : verdict} />
              </td>
              <td>{[...notes.map(explainLocationNote), location.note].filter((note) => note !== "").join(" ")}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Scroller>
  );
}
