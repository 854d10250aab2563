import { formatValue, type UnitSystem } from "#lib/quantity";
import type { DrawnBid } from "./drawn-bids";
import { classOrder, classWords } from "./mass-by-class";
import { formatTradeMass } from "./trade-mass";

/** The parts of every bar. A range is drawn with its middle, which this table says as well. */
export function MassTable({ bids, units }: { bids: readonly DrawnBid[]; units: UnitSystem }) {
  return (
    <table>
      <caption>Mass by class of material; of a range the middle</caption>
      <thead>
        <tr>
          <th scope="col">Bid</th>
          {classOrder.map((name) => (
            <th key={name} scope="col" className="number">
              {classWords[name]}
            </th>
          ))}
          <th scope="col" className="number">
            total
          </th>
        </tr>
      </thead>
      <tbody>
        {bids.map(({ letter, bar: { parts, total } }) => (
          <tr key={letter}>
            <th scope="row">{letter}</th>
            {classOrder.map((name) => {
              const part = parts.find((candidate) => candidate.class === name);
              return (
                <td key={name} className="number">
                  {part === undefined ? "–" : formatValue("mass", part.mass, units)}
                </td>
              );
            })}
            <td className="number">{total === null ? "not known" : formatTradeMass(total, units)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
