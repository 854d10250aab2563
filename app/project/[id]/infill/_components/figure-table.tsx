import type { InfillFigures } from "#lib/evaluation";
import { type Figure, intervalOfFigure } from "#lib/figure";
import { usualInfillMass, type WeightClass } from "#lib/infill";
import { formatValue, type UnitSystem } from "#lib/quantity";
import { BidColumns, RowHead } from "../../../../_components/bid-columns";
import { FigureText } from "../../../../_components/figure-text";
import { Scroller } from "../../../../_components/scroller";
import type { DrawnBid } from "./drawn-bids";
import { formatTradeMass } from "./trade-mass";

type Row = Readonly<{ title: string; figure: (infill: InfillFigures) => Figure }>;

const rows = {
  mass: { title: "Mass per area", figure: ({ totalArealDensity }) => totalArealDensity },
  total: { title: "Total infill mass", figure: ({ stabilisingMass }) => stabilisingMass },
  others: [
    { title: "Mineral share", figure: ({ mineralShare }) => mineralShare },
    { title: "Infill depth, as poured", figure: ({ depth }) => depth },
    { title: "Free pile", figure: ({ freePile }) => freePile },
    { title: "Fill ratio", figure: ({ fillRatio }) => fillRatio },
    { title: "Submerged mass per area", figure: ({ submergedMass }) => submergedMass },
    { title: "Float-prone share", figure: ({ floatProneShare }) => floatProneShare },
    { title: "Truck loads", figure: ({ truckLoads }) => truckLoads },
  ],
} as const satisfies Record<string, Row | readonly Row[]>;

/** What the trade says of a mass per area; a description, not a judgement. */
function weightInWords(weight: WeightClass, units: UnitSystem): string {
  const heavy = formatValue("arealDensity", usualInfillMass.heavyAbove, units);
  switch (weight) {
    case "heavy":
      return `what the trade calls heavy: above ${heavy}`;
    case "may-be-heavy":
      return `may be what the trade calls heavy: its range reaches above ${heavy}`;
    case "not-heavy":
      return `not above ${heavy}, from where the trade calls it heavy`;
    case "unknown":
      return "not known";
  }
}

function FigureRow({ project, bids, units, row: { title, figure } }: Props & { row: Row }) {
  return (
    <tr>
      <RowHead>{title}</RowHead>
      {bids.map(({ letter, evaluation: { infill } }) => (
        <td key={letter}>
          <FigureText project={project} of={`${title}, bid ${letter}`} figure={figure(infill)} units={units} />
        </td>
      ))}
    </tr>
  );
}

type Props = Readonly<{ project: string; bids: readonly DrawnBid[]; units: UnitSystem }>;

/** Everything that the infill of each bid amounts to: a row per figure, a column per bid. */
export function FigureTable({ project, bids, units }: Props) {
  return (
    <Scroller label="Figures of the infill, all bids">
      <table>
        <caption className="visually-hidden">Figures of the infill by bid</caption>
        <BidColumns corner="Figure" bids={bids.map(({ evaluation, index }) => ({ ...evaluation, index }))} />
        <tbody>
          <FigureRow project={project} bids={bids} units={units} row={rows.mass} />
          <tr>
            <RowHead>
              In the trade’s words <small className="soft">common practice, no source</small>
            </RowHead>
            {bids.map(({ letter, evaluation: { infill } }) => (
              <td key={letter}>{weightInWords(infill.weightClass, units)}</td>
            ))}
          </tr>
          <tr>
            <RowHead>{rows.total.title}</RowHead>
            {bids.map(({ letter, evaluation: { infill } }) => {
              const mass = intervalOfFigure(infill.stabilisingMass);
              return (
                <td key={letter}>
                  {mass === null ? null : formatTradeMass(mass, units)}
                  <FigureText
                    project={project}
                    of={`${rows.total.title}, bid ${letter}`}
                    figure={infill.stabilisingMass}
                    units={units}
                  />
                </td>
              );
            })}
          </tr>
          {rows.others.map((row) => (
            <FigureRow key={row.title} project={project} bids={bids} units={units} row={row} />
          ))}
        </tbody>
      </table>
    </Scroller>
  );
}
