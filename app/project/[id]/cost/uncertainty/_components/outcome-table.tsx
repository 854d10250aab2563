import type { CostOutcome } from "#lib/cost";
import { formatMoney } from "#lib/quantity";
import type { DrawnBid } from "./drawn-bid";
import { inHundred } from "./outcome-words";

const shown = [0.05, 0.25, 0.5, 0.75, 0.95] as const;

const enteredText = (bid: DrawnBid | undefined, currency: string): string =>
  bid === undefined ? "" : `${bid.isLeast ? "at least " : ""}${formatMoney(bid.entered, currency)}`;

/** The figures behind the ranges, and how often each bid is cheaper than each other. */
export function OutcomeTable({
  outcome: { bids: outcomes, pairs },
  bids,
  currency,
}: {
  outcome: CostOutcome;
  bids: readonly DrawnBid[];
  currency: string;
}) {
  const letter = (id: string) => bids.find((bid) => bid.id === id)?.letter ?? id;
  return (
    <>
      <table>
        <caption>Present value as drawn</caption>
        <thead>
          <tr>
            <th scope="col">Bid</th>
            <th scope="col" className="number">
              As entered
            </th>
            <th scope="col" className="number">
              Mean
            </th>
            {shown.map((chance) => (
              <th key={chance} scope="col" className="number">
                {Math.round(chance * 100)} in 100 below
              </th>
            ))}
            <th scope="col">Cheapest</th>
          </tr>
        </thead>
        <tbody>
          {outcomes.map(({ bid, mean, percentiles, cheapest }) => (
            <tr key={bid}>
              <th scope="row">Bid {letter(bid)}</th>
              <td className="number">
                {enteredText(
                  bids.find(({ id }) => id === bid),
                  currency,
                )}
              </td>
              <td className="number">{formatMoney(mean.value, currency)}</td>
              {shown.map((chance) => (
                <td key={chance} className="number">
                  {formatMoney(percentiles.find((one) => one.chance === chance)?.cents ?? 0, currency)}
                </td>
              ))}
              <td>{inHundred(cheapest.value)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <table>
        <caption>How often the bid of the row costs less than the bid of the column, on the same draws</caption>
        <thead>
          <tr>
            <th scope="col">Bid</th>
            {outcomes.map(({ bid }) => (
              <th key={bid} scope="col">
                than {letter(bid)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {outcomes.map(({ bid }) => (
            <tr key={bid}>
              <th scope="row">Bid {letter(bid)}</th>
              {outcomes.map(({ bid: than }) => {
                const pair = pairs.find((one) => one.bid === bid && one.than === than);
                return <td key={than}>{pair === undefined ? "" : inHundred(pair.chance.value)}</td>;
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}

/** Sums that are stayed under with each chance, with the ends between which 95 % confidence puts them. */
export function ChanceTable({
  outcome: { bids: outcomes },
  bids,
  currency,
}: {
  outcome: CostOutcome;
  bids: readonly DrawnBid[];
  currency: string;
}) {
  const chances = outcomes[0]?.percentiles.map(({ chance }) => chance) ?? [];
  return (
    <table>
      <caption>Sums that so many draws in 100 do not exceed; in brackets where the true one lies, 95 % sure</caption>
      <thead>
        <tr>
          <th scope="col">Draws in 100</th>
          {outcomes.map(({ bid }) => (
            <th key={bid} scope="col" className="number">
              Bid {bids.find(({ id }) => id === bid)?.letter ?? bid}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {chances.map((chance, row) => (
          <tr key={chance}>
            <th scope="row">{Math.round(chance * 100)}</th>
            {outcomes.map(({ bid, percentiles }) => {
              const found = percentiles[row];
              return (
                <td key={bid} className="number">
                  {found === undefined
                    ? ""
                    : `${formatMoney(found.cents, currency)} (${formatMoney(found.between.low, currency)}–${formatMoney(found.between.high, currency)})`}
                </td>
              );
            })}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
