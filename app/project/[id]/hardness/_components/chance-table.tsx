import { BidLetter } from "../../../../_components/bid-letter";
import { type ChanceLine, chanceText } from "./chance-line";

/** The decisive chance of every bid in every year. */
export function ChanceTable({ lines, horizon }: { lines: readonly ChanceLine[]; horizon: number }) {
  return (
    <table>
      <caption>Chance that all test locations stay below the limit, by year</caption>
      <thead>
        <tr>
          <th scope="col">Year</th>
          {lines.map(({ letter, index }) => (
            <th key={letter} scope="col" className="number">
              <BidLetter letter={letter} index={index} />
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {Array.from({ length: horizon + 1 }, (_, year) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the index is the year
          <tr key={year}>
            <th scope="row">{year === 0 ? "new" : year}</th>
            {lines.map(({ letter, outlook }) => (
              <td key={letter} className="number">
                {chanceText(outlook.years[year]?.decisive ?? Number.NaN)}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
