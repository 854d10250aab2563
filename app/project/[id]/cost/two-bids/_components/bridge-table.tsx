import type { CostBridge } from "#lib/cost";
import { formatMoney } from "#lib/quantity";
import { signed } from "./bridge-chart";

/** The figures behind the bridge. */
export function BridgeTable({
  bridge: { start, steps, end },
  first,
  second,
  open,
  currency,
}: {
  bridge: CostBridge;
  first: string;
  second: string;
  /** The letters of bids whose cost is only a least so far. */
  open: readonly string[];
  currency: string;
}) {
  const least = (letter: string) => (open.includes(letter) ? ", at least" : null);
  return (
    <table>
      <caption>
        From bid {first} to bid {second} in present value; each figure is rounded for itself
      </caption>
      <thead>
        <tr>
          <th scope="col">Category</th>
          <th scope="col" className="number">
            Difference
          </th>
          <th scope="col" className="number">
            Cost so far
          </th>
        </tr>
      </thead>
      <tbody>
        <tr>
          <th scope="row">
            Bid {first}
            {least(first)}
          </th>
          <td />
          <td className="number">{formatMoney(start, currency)}</td>
        </tr>
        {steps.map(({ category, label, change, to }) => (
          <tr key={category}>
            <th scope="row">{label}</th>
            <td className="number">{signed(change, currency)}</td>
            <td className="number">{formatMoney(to, currency)}</td>
          </tr>
        ))}
      </tbody>
      <tfoot>
        <tr>
          <th scope="row">
            Bid {second}
            {least(second)}
          </th>
          <td className="number">{signed(end - start, currency)}</td>
          <td className="number">{formatMoney(end, currency)}</td>
        </tr>
      </tfoot>
    </table>
  );
}
