import { type BidEvaluation, bidsInWords } from "#lib/evaluation";
import { explainChanceYear, type ImpactRequirement, wantedChance } from "#lib/impact";
import { BidLetter } from "../../../../_components/bid-letter";
import { ChartFrame } from "../../../../_components/chart/chart-frame";
import { Scroller } from "../../../../_components/scroller";
import { ChanceChart } from "./chance-chart";
import { boundText, type ChanceLine, chanceLines, chanceText, overAllSpots } from "./chance-line";
import styles from "./chances-section.module.css";
import { fullChart, narrowChart } from "./outlook-chart";
import { SharesChart, SharesKey } from "./shares-chart";
import { WhatMovesTable } from "./what-moves-table";
import { YearByYear } from "./year-by-year";
import { YearTable } from "./year-table";

type ShownBid = Readonly<{ bid: BidEvaluation; index: number }>;

/** The year in which the first bid falls below the owner's level says most; the middle of the years where none does. */
function startingYear(lines: readonly ChanceLine[], horizon: number): number {
  const found = lines.flatMap(({ outlook: { firstYearBelowLevel: first } }) =>
    first.kind === "known" ? [first.year] : [],
  );
  return found.length === 0 ? Math.round(horizon / 2) : Math.min(...found);
}

const perSpot = [
  { caption: "Chance that the mean of the test locations stays below the limit", of: "meanMeets" },
  { caption: "Chance that one location lies in the target window", of: "locationInWindow" },
] as const;

/** How sure a field like each bid's is to keep the limit, year by year, what that rests on and what moves it most. */
export function ChancesSection({ bids, requirement }: { bids: readonly ShownBid[]; requirement: ImpactRequirement }) {
  const { horizonYears: horizon, testLocations } = requirement;
  const wanted = wantedChance(requirement);
  const lines = chanceLines(bids);
  const summary = bids.flatMap(({ bid }) =>
    bid.hardness.chanceSentences.slice(0, 1).map((sentence) => `Bid ${bid.letter}: ${sentence}`),
  );
  const spread = overAllSpots(lines);
  const [bounds, exact] = [
    lines.filter(({ stated }) => stated !== null),
    lines.filter(({ stated }) => stated === null),
  ];
  const ofBounds = bidsInWords(bounds.map(({ letter }) => letter));
  const spreadOfExact = overAllSpots(exact);
  return (
    <>
      <h2>How sure it is</h2>
      <p>
        Levels differ from field to field and from spot to spot. The chance below is that all {testLocations} test
        locations of a field like the bid’s stay below the limit. The owner asks for {wanted.asEntered} or more in every
        year. It is a statement about levels and not about injury.
      </p>
      {spread.length === 0 ? (
        <ul>
          {summary.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      ) : (
        <>
          <ChartFrame
            title="Chance that the limit is kept, by year"
            summary={summary.join(" ")}
            draw={(width) => (
              <ChanceChart
                label="Chance of each bid by year, as summed up above and listed in the table below"
                lines={spread}
                level={wanted.value}
                horizon={horizon}
                size={width === "wide" ? fullChart : narrowChart}
              />
            )}
            table={
              <YearTable
                caption="Chance that all test locations stay below the limit, by year"
                lines={spread}
                horizon={horizon}
                cell={({ outlook, stated }, year) => boundText(outlook.years[year]?.decisive ?? 0, stated)}
              />
            }
          />
          {bounds.length === 0 ? null : (
            <p className="small soft">
              A line with a pale band is a bound: all levels of {ofBounds} are stated with one side only, so the chance
              lies on the line or in the band.
            </p>
          )}
          <h3>In one year</h3>
          <YearByYear
            start={startingYear(lines, horizon)}
            years={Array.from({ length: horizon + 1 }, (_, year) =>
              lines.flatMap(({ letter, outlook, stated }) => explainChanceYear(outlook, year, letter, stated)),
            )}
          />
        </>
      )}
      {spreadOfExact.length === 0 ? null : (
        <>
          <h3>Over the field</h3>
          <p>
            Which part of the spots of a field like the bid’s lies where, year by year.
            {bounds.length === 0
              ? ""
              : ` Left out, here and below, is what levels stated with one side only do not say: ${ofBounds}.`}
          </p>
          <SharesKey />
          <section className={styles.multiples} aria-label="Spread over the field, each bid by itself">
            {spreadOfExact.map((line) => (
              <figure key={line.letter}>
                <figcaption>
                  <BidLetter letter={line.letter} index={line.index} /> {line.bidder}
                </figcaption>
                <SharesChart
                  label={`Where the spots of a field like bid ${line.letter} lie by year`}
                  line={line}
                  horizon={horizon}
                />
              </figure>
            ))}
          </section>
          <details className="printed-open">
            <summary>Chances by year that the mean keeps the limit, and that one spot lies in the window</summary>
            {perSpot.map(({ caption, of }) => (
              <Scroller key={caption} label={caption}>
                <YearTable
                  caption={caption}
                  lines={spreadOfExact}
                  horizon={horizon}
                  cell={({ outlook }, year) => chanceText(outlook.years[year]?.locations?.[of] ?? 0)}
                />
              </Scroller>
            ))}
          </details>
        </>
      )}
      {lines.length === 0 ? null : (
        <>
          {exact.length === 0 ? null : (
            <>
              <h3>What moves it most</h3>
              <WhatMovesTable lines={exact} />
            </>
          )}
          <details className="printed-open">
            <summary>What the chances rest on</summary>
            <ul>
              {lines.map(({ letter, index, assumptions }) => (
                <li key={letter}>
                  <BidLetter letter={letter} index={index} />
                  <ul>
                    {assumptions.map((assumption) => (
                      <li key={assumption}>{assumption}</li>
                    ))}
                  </ul>
                </li>
              ))}
            </ul>
          </details>
        </>
      )}
    </>
  );
}
