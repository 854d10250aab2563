import type { CostSwings } from "#lib/cost";
import { formatMoney } from "#lib/quantity";
import { ChartFrame } from "../../../../../_components/chart/chart-frame";
import { swingBars, swingEnds, swingWords } from "./swing-bars";
import { SwingChart } from "./swing-chart";

type NamedBid = Readonly<{ id: string; letter: string }>;

/** Which uncertain figure moves a bid’s cost most: each alone at its 10th and 90th percentile, all else as entered. */
export function Swings({
  swings,
  bids,
  currency,
}: {
  swings: readonly CostSwings[];
  bids: readonly NamedBid[];
  currency: string;
}) {
  const ends = swingEnds(swings);
  const money = (cents: number) => formatMoney(cents, currency);
  return swings.map((one) => {
    const letter = bids.find(({ id }) => id === one.bid)?.letter;
    if (letter === undefined) return null;
    const bars = swingBars(one);
    if (bars.length === 0) return <p key={one.bid}>{swingWords(one, letter, money)}</p>;
    return (
      <ChartFrame
        key={one.bid}
        title={`Bid ${letter}`}
        summary={swingWords(one, letter, money)}
        draw={(size) => <SwingChart bars={bars} ends={ends} letter={letter} currency={currency} size={size} />}
        table={<SwingTable swings={one} letter={letter} money={money} />}
      />
    );
  });
}

function SwingTable({
  swings: { swings, cents },
  letter,
  money,
}: {
  swings: CostSwings;
  letter: string;
  money: (cents: number) => string;
}) {
  return (
    <table>
      <caption>
        Cost of bid {letter}, {money(cents)} as entered, with each figure at its two ends
      </caption>
      <thead>
        <tr>
          <th scope="col">Uncertain figure</th>
          <th scope="col" className="number">
            At its low end
          </th>
          <th scope="col" className="number">
            At its high end
          </th>
          <th scope="col" className="number">
            Between the two
          </th>
        </tr>
      </thead>
      <tbody>
        {swings.map(({ input, label, low, high, swing }) => (
          <tr key={input}>
            <th scope="row">{label}</th>
            <td className="number">{money(low.cents)}</td>
            <td className="number">{money(high.cents)}</td>
            <td className="number">{money(swing)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
