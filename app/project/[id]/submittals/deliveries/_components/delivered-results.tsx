import type { DeliveredWork } from "#lib/evaluation";
import { formatFigure } from "#lib/figure";
import { formatInterval, formatReading, formatValue, type In, type UnitSystem } from "#lib/quantity";
import { type Delivery, type DepthReadings, type PlacedKind, placedFindings, placedKinds } from "#lib/submittal";
import { counted } from "../../../../../_components/in-words";
import { Scroller } from "../../../../../_components/scroller";
import styles from "./delivered-results.module.css";

const verdicts = {
  "as wanted": "as wanted",
  short: "less than wanted",
  over: "more than wanted",
  "not decided": "not decided: the range crosses the tolerance",
} as const;

/** What tickets, depths and readings amount to. */
export function DeliveredResults({
  work,
  delivery,
  units,
}: {
  work: DeliveredWork;
  delivery: Delivery;
  units: UnitSystem;
}) {
  const { components, figures, sentences, depths } = work;
  return (
    <section aria-labelledby="results">
      <h2 id="results">What it comes to</h2>
      {components.length === 0 ? null : (
        <Scroller label="Delivered infill">
          <table>
            <caption className="visually-hidden">Delivered infill</caption>
            <thead>
              <tr>
                <th scope="col">Infill</th>
                <th scope="col" className="number">
                  Tickets
                </th>
                <th scope="col">Bid, per area</th>
                <th scope="col">Delivered, dry, per area</th>
                <th scope="col">Missing</th>
                <th scope="col">Against the bid</th>
              </tr>
            </thead>
            <tbody>
              {components.map(({ label, wanted, found }) => (
                <tr key={found.component}>
                  <th scope="row">{label}</th>
                  <td className="number">{found.tickets}</td>
                  <td>{formatReading("arealDensity", wanted.reading, units)}</td>
                  <td>{found.tickets === 0 ? "–" : formatInterval("arealDensity", found.arealDensity, units)}</td>
                  <td>{found.tickets === 0 ? "–" : missing(found.missing, units)}</td>
                  <td className={found.tickets > 0 && found.verdict === "short" ? styles.trouble : undefined}>
                    {found.tickets === 0 ? "no ticket yet" : verdicts[found.verdict]}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </Scroller>
      )}
      {figures === null ? (
        <p>Total and depth follow once every infill of the bid has a ticket.</p>
      ) : (
        <p>
          In all {formatFigure(figures.totalArealDensity, units)}, from which a depth of{" "}
          {formatFigure(figures.depth, units)} follows, loose as placed.
        </p>
      )}
      {sentences.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      <p>{depthSentence(depths, delivery, units)}</p>
      {(Object.keys(placedKinds) as PlacedKind[]).map((kind) => (
        <Placed key={kind} kind={kind} delivery={delivery} units={units} />
      ))}
    </section>
  );
}

function missing({ low, high }: Readonly<{ low: In<"kg">; high: In<"kg"> }>, units: UnitSystem): string {
  return low === high ? formatValue("mass", low, units) : formatInterval("mass", { low, high }, units);
}

/** The average of the field with the confidence that the number of readings gives. */
function depthSentence(depths: DepthReadings, { depthWanted, averageTolerance }: Delivery, units: UnitSystem): string {
  if (depths.kind === "too-few")
    return depths.readings === 0
      ? "No depth is read yet."
      : "One depth says nothing of the average of the field; read at least two, better ten or more.";
  const length = (value: In<"m">) => formatValue("length", value, units);
  const { readings, mean, low, high, verdict, beyond, readingsNeeded } = depths;
  const average = `The average of ${readings} readings is ${length(mean)}; with a confidence of 95 % that of the field lies between ${length(low)} and ${length(high)}.`;
  if (depthWanted === null) return `${average} Say which depth is wanted to have it judged.`;
  const more =
    verdict === "not decided" && readingsNeeded > readings
      ? ` With ${readingsNeeded.toLocaleString("en-US")} readings as unlike as these, the average would be known to ${averageTolerance.asEntered}.`
      : "";
  const spots = beyond === 0 ? "No reading is" : `${beyond === 1 ? "1 reading is" : `${beyond} readings are`}`;
  return `${average} Against the ${depthWanted.asEntered} wanted that is ${verdicts[verdict]}.${more} ${spots} beyond the tolerance of a single place.`;
}

function Placed({ kind, delivery, units }: { kind: PlacedKind; delivery: Delivery; units: UnitSystem }) {
  const { readings, ...wanted } = delivery.placed[kind];
  if (readings.length === 0) return null;
  const found = placedFindings(readings, wanted);
  const beyond = found.filter(({ verdict }) => verdict !== "within");
  const { label, reading: what } = placedKinds[kind];
  return (
    <>
      <h3>{label}</h3>
      <p>
        {counted(readings.length, "place", "places")} looked at, {beyond.length === 0 ? "none" : beyond.length} beyond
        the tolerance{kind === "planarity" ? ` under a straightedge of ${delivery.straightedge}` : ""}.
      </p>
      {beyond.length === 0 ? null : (
        <ul>
          {beyond.map(({ reading, verdict }) => (
            <li key={reading.id}>
              {reading.where === "" ? "Place not noted" : reading.where}: {what.toLowerCase()}{" "}
              {formatValue("length", reading.reading.value, units)}, {verdict}
              {reading.note === "" ? "" : `; ${reading.note}`}.
            </li>
          ))}
        </ul>
      )}
    </>
  );
}
