import Link from "next/link";
import { type CostSetting, costsAlong, exploredTies } from "#lib/cost";
import { BidLetter } from "../../../../../_components/bid-letter";
import { ChartFrame } from "../../../../../_components/chart/chart-frame";
import { Scroller } from "../../../../../_components/scroller";
import type { PricedBid } from "../../_components/priced-bid";
import tables from "../../_components/tables.module.css";
import { AlongChart, AlongTable } from "./along-chart";
import { shownIn, tieInWords, tiesAt } from "./tie-words";

/** What would have to change for two bids to cost the same: every input alone, and one of them drawn. */
export function TiesSection({
  first,
  second,
  setting,
  address,
  chosen,
}: {
  first: PricedBid;
  second: PricedBid;
  setting: CostSetting;
  /** Address of this page with the two bids in it. */
  address: string;
  /** The input that the reader wants drawn; the first of the table where it is none of them. */
  chosen: string | undefined;
}) {
  const [one, other] = [first, second].map(({ bid, prices }) => ({ bid: bid.id, lines: prices })) as [Lines, Lines];
  const ties = exploredTies(one, other, setting);
  const letterOf = (id: string) => (id === first.bid.id ? first.bid.letter : second.bid.letter);
  const indexOf = (id: string) => (id === first.bid.id ? first.index : second.index);
  const meeting = ties.filter(({ distance }) => distance !== null);
  const never = ties.filter(({ distance }) => distance === null);
  const drawn = ties.find(({ input }) => input === chosen) ?? meeting[0] ?? ties[0];
  return (
    <>
      <h2 id="ties">What would have to change</h2>
      <p>
        One thing at a time, everything else as entered, and both bids costed anew. Prices are looked at from nothing to
        three times the entered one, lives up to 40 years and real rates from 0&nbsp;% to 15&nbsp;%. A tie close to what
        is entered means that the order of these two is not firm.
      </p>
      {meeting.length === 0 ? (
        <p>Nothing alone makes the two cost the same within what was looked at.</p>
      ) : (
        <Scroller label="Where the two cost the same, table">
          <table className={tables.wide}>
            <caption className="visually-hidden">Where the two bids cost the same, the nearest first</caption>
            <thead>
              <tr>
                <th scope="col">Bid</th>
                <th scope="col">What changes</th>
                <th scope="col">As entered</th>
                <th scope="col">The two cost the same at</th>
              </tr>
            </thead>
            <tbody>
              {meeting.map((tie) => (
                <tr key={tie.input}>
                  <td>
                    {tie.bid === null ? "both" : <BidLetter letter={letterOf(tie.bid)} index={indexOf(tie.bid)} />}
                  </td>
                  <th scope="row">
                    <Link href={`${address}&input=${encodeURIComponent(tie.input)}#drawn`} prefetch={false}>
                      {tie.label}
                    </Link>
                  </th>
                  <td>{shownIn(tie.toldIn, tie.entered)}</td>
                  <td>{tiesAt(tie)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </Scroller>
      )}
      {never.length === 0 ? null : (
        <details>
          <summary>What never makes them equal within what was looked at</summary>
          <ul>
            {never.map((tie) => (
              <li key={tie.input}>{tieInWords(tie, letterOf)}</li>
            ))}
          </ul>
        </details>
      )}
      {drawn === undefined ? null : (
        <div id="drawn">
          <ChartFrame
            title={drawn.bid === null ? drawn.label : `${drawn.label}, bid ${letterOf(drawn.bid)}`}
            summary={tieInWords(drawn, letterOf)}
            draw={(size) => (
              <AlongChart
                along={costsAlong(one, other, drawn, setting)}
                tie={drawn}
                bids={[first, second]}
                currency={setting.conventions.currency}
                size={size}
              />
            )}
            table={
              <AlongTable
                along={costsAlong(one, other, drawn, setting)}
                tie={drawn}
                bids={[first, second]}
                currency={setting.conventions.currency}
              />
            }
          />
        </div>
      )}
    </>
  );
}

type Lines = Parameters<typeof exploredTies>[0];
