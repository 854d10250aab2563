import { inSentence, methodOf, shownIn } from "#lib/claim";
import type { BidEvaluation, PropertyYears } from "#lib/evaluation";
import { explainPropertyChances } from "#lib/impact";
import { formatInterval, formatValue, type UnitSystem } from "#lib/quantity";
import { BidLetter } from "../../../../_components/bid-letter";
import { Scroller } from "../../../../_components/scroller";
import { statedValues } from "./stated-values";

type ShownBid = Readonly<{ bid: BidEvaluation; index: number }>;
type Outlook = PropertyYears["bids"][number]["outlook"];

/** Other properties that change with use, as far as the bids’ own figures carry a line. */
export function OtherProperties({
  followed,
  bids,
  horizon,
  units,
}: {
  followed: readonly PropertyYears[];
  bids: readonly ShownBid[];
  horizon: number;
  units: UnitSystem;
}) {
  if (followed.length === 0) return null;
  return (
    <>
      <h2>Other properties over the years</h2>
      <p>
        The same lines through what the bids state of other properties. Where figures carry no line, nothing is assumed
        of the years to come: the table says what is stated and what to ask.
      </p>
      {followed.map((years) => (
        <PropertyTable key={years.property.id} years={years} bids={bids} horizon={horizon} units={units} />
      ))}
    </>
  );
}

function PropertyTable({
  years: { property, method, limits, bids: followed },
  bids,
  horizon,
  units,
}: {
  years: PropertyYears;
  bids: readonly ShownBid[];
  horizon: number;
  units: UnitSystem;
}) {
  const isLimited = limits.low !== null || limits.high !== null;
  return (
    <Scroller label={`${property.label} over the years`}>
      <table>
        <caption>
          {property.label}, by {methodOf(method).designation} and methods that compare
          {isLimited ? "" : "; no criterion sets a limit, so there is no chance of keeping one"}
        </caption>
        <thead>
          <tr>
            <th scope="col">Bid</th>
            <th scope="col">As new</th>
            <th scope="col">Year {horizon}</th>
            <th scope="col">What it rests on</th>
            {isLimited ? <th scope="col">Chance of keeping the limit</th> : null}
          </tr>
        </thead>
        <tbody>
          {bids.map(({ bid, index }) => {
            const found = followed.find((one) => one.bid === bid.id);
            return found === undefined ? null : (
              <tr key={bid.letter}>
                <th scope="row">
                  <BidLetter letter={bid.letter} index={index} />
                </th>
                <Cells outlook={found.outlook} property={property} horizon={horizon} units={units} />
                {isLimited ? (
                  <td>
                    <Chances found={found} letter={bid.letter} />
                  </td>
                ) : null}
              </tr>
            );
          })}
        </tbody>
      </table>
    </Scroller>
  );
}

/** Sentences on the chance, or why there is none. */
function Chances({ found: { outlook, chances }, letter }: { found: PropertyYears["bids"][number]; letter: string }) {
  if (chances === null || outlook.kind === "unknown") return "No line, so no chance is given.";
  return explainPropertyChances(chances, { letter, dimension: outlook.dimension, belowWindow: "below" }).map(
    (sentence) => <p key={sentence}>{sentence}</p>,
  );
}

function Cells({
  outlook,
  property,
  horizon,
  units,
}: {
  outlook: Outlook;
  property: PropertyYears["property"];
  horizon: number;
  units: UnitSystem;
}) {
  const shown = shownIn(property, units);
  if (outlook.kind === "unknown")
    return (
      <>
        <td>–</td>
        <td>–</td>
        <td>The bid states no {inSentence(property.label)} that compares.</td>
      </>
    );
  const level = (year: number) => {
    const found = outlook.years[year];
    if (found === undefined) return "–";
    const range = formatInterval(outlook.dimension, found, shown);
    return Number.isFinite(found.likely) && found.low !== found.high
      ? `${formatValue(outlook.dimension, found.likely, shown)} (${range})`
      : range;
  };
  if (outlook.premise === "fitted-to-aged-data")
    return (
      <>
        <td>{level(0)}</td>
        <td>{level(horizon)}</td>
        <td>
          A line through its own figures of years {outlook.ages.youngest} to {outlook.ages.oldest}.
        </td>
      </>
    );
  const { asNew, later } = statedValues(outlook, property, units);
  return (
    <>
      <td>{asNew === "" ? "not stated" : asNew}</td>
      <td>not known</td>
      <td>
        {later === "" ? "" : `Stated: ${later}. `}Too few ages for a line. Ask for figures from fields in use, at three
        ages or more.
      </td>
    </>
  );
}
