import Link from "next/link";
import type { PricedReset, ResetPrice } from "#lib/evaluation";
import { formatMoney } from "#lib/quantity";
import { BidColumns, RowHead } from "../../../../_components/bid-columns";
import { Caution } from "../../../../_components/caution";
import { Scroller } from "../../../../_components/scroller";
import { GivenByMark } from "../../cost/_components/given-by";
import { resetName, resetWarnings, whyNotPaid } from "./reset-words";

type Column = Readonly<{ id: string; letter: string; bidder: string; index: number }>;

/** What is planned against hardening, and what each bid asks for it in that year. */
export function ResetsSection({
  project,
  resets,
  bids,
  currency,
}: {
  project: string;
  resets: readonly PricedReset[];
  bids: readonly Column[];
  currency: string;
}) {
  if (resets.length === 0) return null;
  const letterOf = (bid: string) => bids.find(({ id }) => id === bid)?.letter ?? "";
  return (
    <>
      <h2>What is done against it, and what that costs</h2>
      <p>
        Every outlook on this page takes these top-ups and groomings for done. Cost is all that the price line asks in
        that year, in money of the base date; years of use and of the study begin together.{" "}
        <Link href={`/project/${project}/requirements#impact.outlook`} className="screen-only">
          Change them in the requirements
        </Link>
      </p>
      {resetWarnings(resets, letterOf).map((warning) => (
        <Caution key={warning}>{warning}</Caution>
      ))}
      <Scroller label="Planned top-ups and groomings with their cost">
        <table>
          <caption className="visually-hidden">Cost of each planned top-up or grooming, bid by bid</caption>
          <BidColumns corner="Top-up or grooming" bids={bids} />
          <tbody>
            {resets.map((priced) => (
              <tr key={priced.reset.year}>
                <RowHead>
                  {resetName(priced)}
                  <div className="small soft">
                    {priced.reset.priceLine === "" ? "none, not priced" : `Price line: ${priced.reset.priceLine}`}
                  </div>
                </RowHead>
                {bids.map(({ id }) => (
                  <td key={id}>
                    <Cost
                      price={priced.bids.find(({ bid }) => bid === id)}
                      year={priced.reset.year}
                      currency={currency}
                    />
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </Scroller>
    </>
  );
}

function Cost({ price, year, currency }: { price: ResetPrice | undefined; year: number; currency: string }) {
  if (price === undefined) return "–";
  if (price.kind !== "paid") return <span className="small">{whyNotPaid(price, year)}</span>;
  return (
    <>
      {formatMoney(Math.round(price.cents), currency)}
      <div className="small soft">
        <GivenByMark by={price.givenBy} />
      </div>
    </>
  );
}
