import type { Figure } from "#lib/figure";
import { formatValue, measured, type Shown, type UnitSystem } from "#lib/quantity";
import { impactTimeShown, type SpeedAgreement, type TraceResults } from "#lib/trace";
import { ChartFrame } from "../../../../../_components/chart/chart-frame";
import { statusMarks } from "../../../../../_components/status";
import { ShownFigure } from "../../_components/shown-figure";
import { TraceChart } from "./trace-chart";

const milliseconds = (seconds: number) => formatValue("time", measured("time", seconds), impactTimeShown);

/** The curve and every figure that it tells. */
export function TraceFigures({
  project,
  results,
  units,
}: {
  project: string;
  results: TraceResults;
  units: UnitSystem;
}) {
  const { criterionInterval: interval, agreement, notes } = results;
  const title = "Level against time";
  const rows: readonly Readonly<{ name: string; figure: Figure; shown: Shown; more?: string }>[] = [
    { name: "G-max", figure: results.peakLevel, shown: { unit: "g", decimals: 1 } },
    {
      name: "Head injury criterion",
      figure: results.headInjuryCriterion,
      shown: { unit: "", decimals: 0 },
      more: `from ${milliseconds(interval.from)} to ${milliseconds(interval.to)}`,
    },
    { name: "Duration of the pulse", figure: results.pulseDuration, shown: impactTimeShown },
    { name: "Change of speed", figure: results.velocityChange, shown: units },
    { name: "Speed at impact", figure: results.impactVelocity, shown: units },
    { name: "Speed of the rebound", figure: results.reboundVelocity, shown: units },
    { name: "Penetration", figure: results.penetration, shown: units },
    { name: "Energy returned", figure: results.energyReturned, shown: { unit: "%", decimals: 0 } },
  ];
  return (
    <section aria-labelledby="figures">
      <h2 id="figures">What the trace tells</h2>
      <ChartFrame
        title={title}
        summary={`The curve around the impact, with its highest sample and the interval of the criterion marked, ${milliseconds(interval.from)} to ${milliseconds(interval.to)}.`}
        draw={(width) => (
          <TraceChart results={results} width={width} label={`${title}, ${results.trace.levels.length} samples`} />
        )}
        table={<SamplesTable results={results} />}
      />
      <table>
        <caption>Figures of this drop</caption>
        <tbody>
          {rows.map(({ name, figure, shown, more }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td>
                {more === undefined || figure.kind === "unknown" ? null : <span className="soft">{more}: </span>}
                <ShownFigure project={project} of={name} figure={figure} shown={shown} />
              </td>
            </tr>
          ))}
          <tr>
            <th scope="row">Trace and drop height</th>
            <td>
              <Agreement of={agreement} />
            </td>
          </tr>
        </tbody>
      </table>
      <h3>How it was worked out</h3>
      <ul>
        {notes.map((note) => (
          <li key={note}>{note}</li>
        ))}
      </ul>
    </section>
  );
}

const agreementWords: Readonly<Record<SpeedAgreement["kind"], string>> = {
  agrees: "agree",
  "trace-too-weak": "trace too weak",
  "trace-too-strong": "trace too strong",
  "not-to-be-told": "not to be told",
};
const agreementMarks: Readonly<Record<SpeedAgreement["kind"], React.ReactNode>> = {
  agrees: statusMarks.meets,
  "trace-too-weak": statusMarks["falls short"],
  "trace-too-strong": statusMarks["over-claimed"],
  "not-to-be-told": statusMarks["not shown"],
};

function Agreement({ of: { kind, why } }: { of: SpeedAgreement }) {
  return (
    <>
      <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
        {agreementMarks[kind]}
      </svg>{" "}
      <strong>{agreementWords[kind]}</strong>. {why}
    </>
  );
}

const mostRows = 60;

/** Samples of the pulse, evenly thinned out where there are many; the highest one always among them. */
function SamplesTable({ results: { trace, pulse } }: { results: TraceResults }) {
  const [first, last] = pulse === null ? [0, trace.levels.length - 1] : [Math.floor(pulse.onset), Math.ceil(pulse.end)];
  const step = Math.max(1, Math.ceil((last - first + 1) / mostRows));
  const indices = trace.levels.flatMap((_, index) =>
    index >= first && index <= last && ((index - first) % step === 0 || index === pulse?.peak) ? [index] : [],
  );
  return (
    <table>
      <caption>Samples of the pulse{step === 1 ? "" : `, one in ${step}`}</caption>
      <thead>
        <tr>
          <th scope="col" className="number">
            Time
          </th>
          <th scope="col" className="number">
            Level
          </th>
        </tr>
      </thead>
      <tbody>
        {indices.map((index) => (
          <tr key={index}>
            <th scope="row" className="number">
              {milliseconds(index * trace.interval)}
            </th>
            <td className="number">
              {formatValue("impactLevel", trace.levels[index] ?? measured("impactLevel", 0), {
                unit: "g",
                decimals: 1,
              })}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
