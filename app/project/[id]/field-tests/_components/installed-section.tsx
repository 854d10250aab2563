import { type InstalledOutlook, installedOutlook } from "#lib/evaluation";
import { type ImpactRequirement, naturalFrequency } from "#lib/impact";
import { formatValue, type UnitSystem } from "#lib/quantity";
import { BidLetter } from "../../../../_components/bid-letter";
import { Scroller } from "../../../../_components/scroller";
import type { InstalledSystem } from "./trend-section";

/** What the tests on the finished field say of the years to come. */
export function InstalledSection({
  systems,
  requirement,
  units,
}: {
  systems: readonly InstalledSystem[];
  requirement: ImpactRequirement;
  units: UnitSystem;
}) {
  const tested = systems
    .map(({ bid, campaigns, sensitivity }) => ({
      bid,
      installed: installedOutlook(
        campaigns.filter(({ notComparable }) => notComparable === null).map(({ reduced }) => reduced),
        requirement,
        sensitivity,
      ),
    }))
    .filter(({ installed }) => installed.outlook.kind === "chances");
  if (tested.length === 0) return null;
  const limit = formatValue("impactLevel", requirement.limit.value, units);
  return (
    <section aria-labelledby="years-to-come">
      <h2 id="years-to-come">The years to come</h2>
      <p>
        The chance that a test of all {requirement.testLocations} locations finds every one of them below {limit}, by
        the age of the field. It speaks of levels and not of injury: test again.
      </p>
      {tested.map(({ bid, installed }) => (
        <Years key={bid?.letter ?? ""} bid={bid} installed={installed} />
      ))}
    </section>
  );
}

function Years({
  bid,
  installed: { outlook, latestAge, assumptions },
}: {
  bid: InstalledSystem["bid"];
  installed: InstalledOutlook;
}) {
  if (outlook.kind === "unknown") return null;
  const shown = outlook.years.filter(({ year }) => year >= latestAge);
  const what = bid === null ? "Installed field, no bid named" : `Installed field, bid ${bid.letter}`;
  return (
    <>
      {bid === null ? null : (
        <h3>
          <BidLetter letter={bid.letter} index={bid.index} /> as installed
        </h3>
      )}
      <Scroller label={what}>
        <table>
          <caption>Fields like this one, by age, from the latest test on</caption>
          <thead>
            <tr>
              <th scope="col">Age</th>
              <th scope="col">All locations below the limit</th>
              <th scope="col">One location in the target window</th>
            </tr>
          </thead>
          <tbody>
            {shown.map(({ year, locations }) => (
              <tr key={year}>
                <th scope="row">{year === 0 ? "new" : `${year} years`}</th>
                <td>{locations === null ? "not known" : naturalFrequency(locations.allMeet)}</td>
                <td>{locations === null ? "not known" : naturalFrequency(locations.locationInWindow)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </Scroller>
      <ul className="small soft">
        {assumptions.map((assumption) => (
          <li key={assumption}>{assumption}</li>
        ))}
      </ul>
    </>
  );
}
