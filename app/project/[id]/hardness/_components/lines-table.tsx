import {
  type AgedLines,
  type AgedResult,
  agedLines,
  type Drift,
  type FittedDrift,
  meanOnLine,
  newResultOnLine,
  predictedLevel,
  pulledBySingleResults,
  slopeInterval,
} from "#lib/impact";
import { formatInterval, formatValue, measured, type UnitSystem } from "#lib/quantity";
import { Scroller } from "../../../../_components/scroller";

type Row = Readonly<{ name: string; change: string; later: string }>;

const grams = (level: number, units: UnitSystem) => formatValue("impactLevel", measured("impactLevel", level), units);
const span = (low: number, high: number, units: UnitSystem) =>
  formatInterval("impactLevel", { low: measured("impactLevel", low), high: measured("impactLevel", high) }, units);
const perYear = (change: number, units: UnitSystem) =>
  formatValue("rateOfChange", measured("rateOfChange", change), units);
const share = (growth: number) => `${((Math.exp(growth) - 1) * 100).toFixed(1).replace("-", "−")} %`;

/** The lines that can be laid through the levels of a bid, so that nobody has to trust the choice of one of them. */
export function LinesTable({
  letter,
  results,
  drift,
  horizon,
  chance,
  units,
}: {
  letter: string;
  results: readonly AgedResult[];
  /** The line that the outlook uses. */
  drift: Drift;
  horizon: number;
  /** As the owner wrote it, and as a share. */
  chance: Readonly<{ asEntered: string; value: number }>;
  units: UnitSystem;
}) {
  // the ages are in years already, so the hours of a year turn nothing
  const { amount, share: shares } = agedLines(results, 1, chance.value);
  if (amount.kind !== "fitted") return null;
  const byFields = drift.kind === "fitted" && drift.fieldsApart.kind === "several-fields" ? drift : null;
  const rows: readonly Row[] = [
    ...(byFields === null ? [] : [fieldsRow(byFields, horizon, chance.value, units)]),
    ordinaryRow(amount.ordinary, horizon, chance.value, units),
    {
      name: "Robust (median of all slopes), even amount a year",
      change: `${perYear(amount.robust.slope, units)}${
        amount.robust.slopeRange === null
          ? "; too few levels for a range"
          : `, from ${perYear(amount.robust.slopeRange.low, units)} to ${perYear(amount.robust.slopeRange.high, units)}`
      }`,
      later: grams(amount.robust.intercept + amount.robust.slope * horizon, units),
    },
    ...(shares.kind === "fitted"
      ? [ordinaryShareRow(shares.ordinary, horizon, chance.value, units), robustShareRow(shares.robust, horizon, units)]
      : []),
  ];
  const isPulled = pulledBySingleResults(amount.ordinary, amount.robust);
  return (
    <details className="printed-open">
      <summary>Other lines through the levels of bid {letter}</summary>
      <Scroller label={`Lines through the levels of bid ${letter}`}>
        <table>
          <caption>Ranges hold with a chance of {chance.asEntered}; the outlook above uses the first line</caption>
          <thead>
            <tr>
              <th scope="col">Line</th>
              <th scope="col">Change a year</th>
              <th scope="col">Level in year {horizon}</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ name, change, later }) => (
              <tr key={name}>
                <th scope="row">{name}</th>
                <td>{change}</td>
                <td>{later}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </Scroller>
      <p className="small soft">
        {isPulled === true
          ? "The ordinary line lies outside the range of the robust one, so single levels pull it: ask which they are."
          : "Where the lines part, the levels do not say how the surface ages, and the wider reading is the careful one."}{" "}
        {fieldsWords(drift)}
      </p>
    </details>
  );
}

function fieldsRow(drift: FittedDrift, horizon: number, chance: number, units: UnitSystem): Row {
  const later = predictedLevel(drift, horizon, chance);
  return {
    name: "Several fields, each with an offset of its own",
    change: perYear(drift.slope, units),
    later: `${grams(later.likely, units)}; one new field ${span(Math.max(0, later.low), later.high, units)}`,
  };
}

function fieldsWords(drift: Drift): string {
  if (drift.kind === "not-enough-points" || drift.fieldsApart.kind === "pooled") return "";
  const { fieldsApart, residualDeviation } = drift;
  const [between, within] = [fieldsApart.betweenFields, residualDeviation].map((deviation) => deviation.toFixed(1));
  return `Fields of this system differ by a standard deviation of ${between} g, results on one field by ${within} g; ${fieldsApart.named} fields are named.`;
}

type Ordinary = Parameters<typeof slopeInterval>[0];

function ordinaryRow(line: Ordinary, horizon: number, chance: number, units: UnitSystem): Row {
  const slope = slopeInterval(line, chance);
  const [mean, later] = [meanOnLine(line, horizon, chance), newResultOnLine(line, horizon, chance)];
  return {
    name: "Ordinary (least squares), even amount a year",
    change: `${perYear(slope.likely, units)}, from ${perYear(slope.low, units)} to ${perYear(slope.high, units)}`,
    later: laterWords(later.likely, mean, later, units),
  };
}

/** A line through logarithms: its ranges are worked out there and told as shares and levels. */
function ordinaryShareRow(line: Ordinary, horizon: number, chance: number, units: UnitSystem): Row {
  const slope = slopeInterval(line, chance);
  const [mean, later] = [meanOnLine(line, horizon, chance), newResultOnLine(line, horizon, chance)];
  return {
    name: "Ordinary, even share a year",
    change: `${share(slope.likely)}, from ${share(slope.low)} to ${share(slope.high)}`,
    later: laterWords(
      Math.exp(later.likely),
      { low: Math.exp(mean.low), high: Math.exp(mean.high) },
      { low: Math.exp(later.low), high: Math.exp(later.high) },
      units,
    ),
  };
}

function robustShareRow(
  { slope, intercept, slopeRange }: Extract<AgedLines["share"], { kind: "fitted" }>["robust"],
  horizon: number,
  units: UnitSystem,
): Row {
  const range =
    slopeRange === null ? "too few levels for a range" : `from ${share(slopeRange.low)} to ${share(slopeRange.high)}`;
  return {
    name: "Robust, even share a year",
    change: `${share(slope)}${slopeRange === null ? "; " : ", "}${range}`,
    later: grams(Math.exp(intercept + slope * horizon), units),
  };
}

type Ends = Readonly<{ low: number; high: number }>;

const laterWords = (likely: number, mean: Ends, result: Ends, units: UnitSystem): string =>
  `${grams(likely, units)}; the mean of such results ${span(Math.max(0, mean.low), mean.high, units)}, one new result ${span(Math.max(0, result.low), result.high, units)}`;
