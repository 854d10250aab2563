import { BidLetter } from "../../../../_components/bid-letter";

/** A row for each year and a column for each bid. */
export function YearTable<Line extends Readonly<{ letter: string; index: number }>>({
  caption,
  lines,
  horizon,
  cell,
}: {
  caption: string;
  lines: readonly Line[];
  horizon: number;
  cell: (line: Line, year: number) => React.ReactNode;
}) {
  return (
    <table>
      <caption>{caption}</caption>
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
            {lines.map((line) => (
              <td key={line.letter} className="number">
                {cell(line, year)}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
