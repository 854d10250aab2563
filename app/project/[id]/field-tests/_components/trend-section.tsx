import { type CampaignTrend, campaignTrend, type PromisedLevels, type TrendPoint } from "#lib/fieldtest";
import type { FieldSensitivity } from "#lib/impact";
import { formatValue, type In, type UnitSystem } from "#lib/quantity";
import { ChartFrame } from "../../../../_components/chart/chart-frame";
import type { ReadCampaign } from "../_tests/read-campaigns";
import { TrendChart } from "./trend-chart";
import { Verdict } from "./verdict";

/** The campaigns of one installed system against what its bid promised. */
export type InstalledSystem = Readonly<{
  bid: Readonly<{ letter: string; index: number }> | null;
  campaigns: readonly ReadCampaign[];
  promised: PromisedLevels;
  /** Of the installed bid to lost depth; null where no bid is named. */
  sensitivity: FieldSensitivity | null;
}>;

export function TrendSection({
  systems,
  limit,
  units,
}: {
  systems: readonly InstalledSystem[];
  limit: In<"g">;
  units: UnitSystem;
}) {
  const drawn = systems
    .map((system) => ({
      ...system,
      trend: campaignTrend(
        system.campaigns.filter(({ notComparable }) => notComparable === null).map(({ reduced }) => reduced),
        system.promised,
      ),
    }))
    .filter(({ trend }) => trend.points.length > 0);
  if (drawn.length === 0) return null;
  return (
    <section aria-labelledby="trend">
      <h2 id="trend">Promised against measured</h2>
      {drawn.map(({ bid, promised, trend }) => (
        <Trend key={bid?.letter ?? ""} bid={bid} promised={promised} trend={trend} limit={limit} units={units} />
      ))}
    </section>
  );
}

function Trend({
  bid,
  promised,
  trend: { points, sentences },
  limit,
  units,
}: {
  bid: InstalledSystem["bid"];
  promised: PromisedLevels;
  trend: CampaignTrend;
  limit: In<"g">;
  units: UnitSystem;
}) {
  const title = bid === null ? "Level over the years, no bid named" : `Level over the years, bid ${bid.letter}`;
  return (
    <>
      <ChartFrame
        title={title}
        summary={sentences.join(" ")}
        draw={(width) => (
          <TrendChart
            points={points}
            promised={promised}
            limit={limit}
            index={bid?.index ?? 0}
            width={width}
            units={units}
            label={`${title}: ${points.length === 1 ? "one campaign" : `${points.length} campaigns`}`}
          />
        )}
        table={<TrendTable caption={title} points={points} units={units} />}
      />
      <p>{promiseInWords(promised, units)}</p>
    </>
  );
}

function promiseInWords({ claimed, guaranteed }: PromisedLevels, units: UnitSystem): string {
  const grams = (level: In<"g">) => formatValue("impactLevel", level, units);
  return [
    claimed === null
      ? "The bid claims no upper level as new that compares."
      : `The bid claims no more than ${grams(claimed)} as new.`,
    guaranteed === null
      ? "It guarantees no level; the limit is the owner’s own."
      : `It guarantees less than ${grams(guaranteed.level)}${guaranteed.years === null ? "" : ` for ${guaranteed.years} years`}.`,
  ].join(" ");
}

const guaranteeWords = {
  "not-guaranteed": "not guaranteed",
  "guarantee-has-ended": "guarantee has ended",
  "another-method": "by another method",
} as const;

function Guarantee({ of }: { of: TrendPoint["guarantee"] }) {
  switch (of) {
    case "not-guaranteed":
    case "guarantee-has-ended":
    case "another-method":
      return guaranteeWords[of];
    case "meets":
    case "meets-within-uncertainty":
    case "does-not-meet-within-uncertainty":
    case "does-not-meet":
      return <Verdict of={of} />;
  }
}

function TrendTable({ caption, points, units }: { caption: string; points: readonly TrendPoint[]; units: UnitSystem }) {
  const grams = (level: In<"g">) => formatValue("impactLevel", level, units);
  return (
    <table>
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">Day</th>
          <th scope="col" className="number">
            Age, years
          </th>
          <th scope="col" className="number">
            Mean
          </th>
          <th scope="col" className="number">
            Worst
          </th>
          <th scope="col" className="number">
            Mean less claim
          </th>
          <th scope="col">Guarantee</th>
        </tr>
      </thead>
      <tbody>
        {points.map(({ campaign, date, years, mean, worst, aboveClaim, guarantee }) => (
          <tr key={campaign}>
            <th scope="row">{date}</th>
            <td className="number">
              {years.toLocaleString("en-US", { minimumFractionDigits: 1, maximumFractionDigits: 1 })}
            </td>
            <td className="number">{grams(mean)}</td>
            <td className="number">{grams(worst)}</td>
            <td className="number">{aboveClaim === null ? "–" : signed(aboveClaim, grams)}</td>
            <td>
              <Guarantee of={guarantee} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

const signed = (level: In<"g">, grams: (level: In<"g">) => string): string =>
  level > 0 ? `+${grams(level)}` : grams(level);
