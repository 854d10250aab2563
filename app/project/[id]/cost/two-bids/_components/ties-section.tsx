import Link from "next/link";
import { type CostSetting, costsAlong, type ExploredTie, exploredTies, tieWithin } from "#lib/cost";
import { listed } from "#lib/figure";
import { BidLetter } from "../../../../../_components/bid-letter";
import { ChartFrame } from "../../../../../_components/chart/chart-frame";
import { Scroller } from "../../../../../_components/scroller";
import choices from "../../../_components/choices.module.css";
import type { PricedBid } from "../../_components/priced-bid";
import tables from "../../_components/tables.module.css";
import { AlongChart, AlongTable } from "./along-chart";
import { askedBracket } from "./asked-bracket";
import { shownAt, shownIn, type TieSetting, tieInWords, tiesAt } from "./tie-words";

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
  /** The input that the reader wants drawn, the first of the table where it is none of them, and where to look. */
  chosen: Chosen;
}) {
  const [one, other] = [first, second].map(({ bid, prices }) => ({ bid: bid.id, lines: prices })) as [Lines, Lines];
  const ties = exploredTies(one, other, setting);
  const letterOf = (id: string) => (id === first.bid.id ? first.bid.letter : second.bid.letter);
  const indexOf = (id: string) => (id === first.bid.id ? first.index : second.index);
  const meeting = ties.filter(({ distance }) => distance !== null);
  const never = ties.filter(({ distance }) => distance === null);
  const { currency } = setting.conventions;
  const told: TieSetting = { currency, open: { first: first.isLeast, second: second.isLeast } };
  const open = [first, second].filter(({ isLeast }) => isLeast).map(({ bid }) => `bid ${bid.letter}`);
  const named = ties.find(({ input }) => input === chosen.input) ?? meeting[0] ?? ties[0];
  const bracket = named === undefined ? null : askedBracket(named.toldIn, chosen);
  const drawn =
    named !== undefined && bracket?.ok && bracket.value !== null
      ? tieWithin(one, other, { input: named.input, ...bracket.value }, setting)
      : named;
  return (
    <>
      <h2 id="ties">What would have to change</h2>
      <p>
        One thing at a time, everything else as entered, and both bids costed anew. Prices are looked at from nothing to
        three times the entered one, lives up to 40 years, real rates from 0&nbsp;% to 15&nbsp;% and growth from
        −5&nbsp;% to 10&nbsp;% a year. A tie close to what is entered means that the order of these two is not firm.
      </p>
      {open.length === 0 ? null : (
        <p>
          {listed(open).replace(/^b/, "B")} {open.length === 1 ? "costs" : "cost"} at least what counts here, as some of
          the scope has no figure yet. So a tie is told as “at least” or “at most” where the missing figures can move it
          one way only.
        </p>
      )}
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
                  <td>{shownAt(tie, tie.entered, currency)}</td>
                  <td>{tiesAt(tie, told)}</td>
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
              <li key={tie.input}>{tieInWords(tie, letterOf, told)}</li>
            ))}
          </ul>
        </details>
      )}
      {drawn === undefined ? null : (
        <div id="drawn">
          <ChartFrame
            title={drawn.bid === null ? drawn.label : `${drawn.label}, bid ${letterOf(drawn.bid)}`}
            summary={tieInWords(drawn, letterOf, told)}
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
          <BracketForm tie={drawn} address={address} problem={bracket?.ok === false ? bracket.problem : null} />
        </div>
      )}
    </>
  );
}

/** What a reader asks to see drawn, as it stands in the address; texts are empty where nothing is asked. */
export type Chosen = Readonly<{ input: string; from: string; to: string }>;

/** Between which values the drawing looks for ties; a plain form, so that the address names them. */
function BracketForm({ tie, address, problem }: { tie: ExploredTie; address: string; problem: string | null }) {
  const asked = new URL(address, "http://here").searchParams;
  const { from, to } = tie.tied;
  return (
    <form key={`${tie.input} ${from} ${to}`} className={`${choices.choices} screen-only`} action="#drawn">
      {[...asked].map(([name, value]) => (
        <input key={name} type="hidden" name={name} value={value} />
      ))}
      <input type="hidden" name="input" value={tie.input} />
      <label>
        Look from
        <input name="from" defaultValue={shownIn(tie.toldIn, from)} aria-invalid={problem !== null} />
      </label>
      <label>
        to
        <input name="to" defaultValue={shownIn(tie.toldIn, to)} aria-invalid={problem !== null} />
      </label>
      <button type="submit">Look there</button>
      {problem === null ? null : <p role="alert">{problem} The usual values are shown.</p>}
    </form>
  );
}

type Lines = Parameters<typeof exploredTies>[0];
