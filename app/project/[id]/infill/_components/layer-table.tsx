import { formatInterval, type In, type UnitSystem } from "#lib/quantity";
import type { DrawnBid } from "./drawn-bids";

const open = Number.POSITIVE_INFINITY as In<"m">;

/** The thickness of every layer that is drawn, from the bottom to the top. */
export function LayerTable({ bids, units }: { bids: readonly DrawnBid[]; units: UnitSystem }) {
  return (
    <table>
      <caption>Layers from the bottom to the top</caption>
      <thead>
        <tr>
          <th scope="col">Bid</th>
          <th scope="col">Layer</th>
          <th scope="col">Thickness</th>
        </tr>
      </thead>
      {bids.map(({ letter, section: { layout, depth, freePile }, evaluation: { infill } }) => {
        const pile = infill.crossSection.pileHeight;
        const inWords = (low: In<"m">, high: In<"m"> | null) =>
          formatInterval("length", { low, high: high ?? open }, units);
        const rows = [
          ...layout.bands.map(({ label, thickness }) => [label, inWords(thickness.low, thickness.high)]),
          ["Infill depth", depth ?? "not known"],
          ["Pile height", pile === null ? "not stated" : inWords(pile.low, pile.high)],
          ["Free pile", freePile ?? "not known"],
        ];
        return (
          <tbody key={letter}>
            {rows.map(([label, thickness], row) => (
              <tr key={label}>
                {row === 0 ? (
                  <th scope="rowgroup" rowSpan={rows.length}>
                    {letter}
                  </th>
                ) : null}
                <th scope="row">{label}</th>
                <td className="number">{thickness}</td>
              </tr>
            ))}
          </tbody>
        );
      })}
    </table>
  );
}
