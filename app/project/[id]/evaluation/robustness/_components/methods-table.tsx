import { formatPoints } from "#lib/evaluation";
import { listed } from "#lib/figure";
import { type CurrencyCode, formatMoney } from "#lib/quantity";
import type { MethodCheck, MethodName } from "#lib/robustness";
import { Scroller } from "../../../../../_components/scroller";

const names: Readonly<Record<MethodName, string>> = {
  "owners-score": "The owner’s score (points of 100)",
  "lowest-cost": "Lowest levelled cost",
  "cost-per-point": "Lowest levelled cost for each point",
  "points-alone": "Most points, whatever the cost",
  "weighted-with-price": "Points and price, half and half (points of 100)",
};

const isMoney = (method: MethodName): boolean => method === "lowest-cost" || method === "cost-per-point";

/** Each way to decide with what every bid comes to by it. */
export function MethodsTable({
  check: { outcomes },
  letterOf,
  currency,
}: {
  check: MethodCheck;
  letterOf: (bid: string) => string;
  currency: CurrencyCode;
}) {
  const columns = outcomes[0]?.figures.map(({ bid }) => bid) ?? [];
  return (
    <Scroller label="Other ways to decide, table">
      <table>
        <caption className="visually-hidden">What each bid comes to by each way to decide</caption>
        <thead>
          <tr>
            <th scope="col">Way to decide</th>
            {columns.map((bid) => (
              <th key={bid} scope="col" className="number">
                Bid {letterOf(bid)}
              </th>
            ))}
            <th scope="col">Comes first</th>
          </tr>
        </thead>
        <tbody>
          {outcomes.map(({ method, figures, leaders }) => (
            <tr key={method}>
              <th scope="row">{names[method]}</th>
              {figures.map(({ bid, figure }) => (
                <td key={bid} className="number">
                  {figure === null ? "–" : isMoney(method) ? formatMoney(figure, currency) : formatPoints(figure)}
                </td>
              ))}
              <td>{leaders.length === 0 ? "none" : listed(leaders.map((bid) => `bid ${letterOf(bid)}`))}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Scroller>
  );
}
