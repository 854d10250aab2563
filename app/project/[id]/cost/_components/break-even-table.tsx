import type { CostConventions } from "#lib/cost";
import { boundedGap } from "#lib/document";
import { type Figure, listed } from "#lib/figure";
import { formatMoney, formatValue, measured, type UnitSystem } from "#lib/quantity";
import { BidLetter } from "../../../../_components/bid-letter";
import { FigureText } from "../../../../_components/figure-text";
import { Scroller } from "../../../../_components/scroller";
import { soughtRates, type Tie, tieWith } from "./cost-figures";
import type { PricedBid } from "./priced-bid";
import styles from "./tables.module.css";

/** "11.7993 %". */
const inFull = (rate: Figure<"fraction">): string =>
  rate.kind === "known" ? `${Number((rate.value * 100).toFixed(4))} %` : "not known";

const percent = (share: number) => formatValue("fraction", measured("fraction", share), "us");
const soughtText = `${percent(soughtRates.lowest)} and ${percent(soughtRates.highest)}`;

type Shown = Readonly<{ project: string; units: UnitSystem; currency: string }>;

/** For each bid against the cheapest: the fall in price and the real rate at which the two cost the same. */
export function BreakEvenTable({
  cheapest,
  others,
  conventions,
  shown,
}: {
  cheapest: PricedBid;
  others: readonly PricedBid[];
  conventions: CostConventions;
  shown: Shown;
}) {
  const { letter } = cheapest.bid;
  return (
    <Scroller label={`What would make the other bids cost as much as bid ${letter}`}>
      <table className={styles.wide}>
        <caption>What would make each bid cost as much as bid {letter}</caption>
        <thead>
          <tr>
            <th scope="col">Bid</th>
            <th scope="col">Costs more by</th>
            <th scope="col">Its price at the base date would have to fall by</th>
            <th scope="col">Real rate at which the two cost the same</th>
          </tr>
        </thead>
        <tbody>
          {others.map((other) => (
            <TieRow key={other.bid.id} tie={tieWith(cheapest, other, conventions)} cheapest={cheapest} shown={shown} />
          ))}
        </tbody>
      </table>
    </Scroller>
  );
}

function TieRow({ tie, cheapest, shown }: { tie: Tie; cheapest: PricedBid; shown: Shown }) {
  const { bid, index } = tie.other;
  const { project, units, currency } = shown;
  return (
    <tr>
      <th scope="row">
        <BidLetter letter={bid.letter} index={index} /> {bid.bidder}
      </th>
      <td>
        {Number.isFinite(tie.share)
          ? boundedGap(percent(tie.share), { isLowerLeast: cheapest.isLeast, isHigherLeast: tie.other.isLeast })
          : "not a share: the lower cost is not above nothing"}
      </td>
      <td>
        <FigureText
          project={project}
          of={`Fall in price, bid ${bid.letter} against bid ${cheapest.bid.letter}`}
          figure={tie.fall}
          units={units}
        />
        <p className={styles.note}>{leavesText(tie, cheapest, currency)}</p>
      </td>
      <td>
        <TyingRate tie={tie} cheapest={cheapest} shown={shown} />
      </td>
    </tr>
  );
}

/** What price would be left; none is named where a cost is only a bound. */
function leavesText({ leaves, other }: Tie, cheapest: PricedBid, currency: string): string {
  if (leaves < 0 && !cheapest.isLeast) return "More than the whole price: price alone cannot close the gap.";
  if (cheapest.isLeast || other.isLeast) return "As far as figures stand.";
  return `From ${formatMoney(other.priceAtBaseDate, currency)} to ${formatMoney(leaves, currency)}.`;
}

function TyingRate({ tie, cheapest, shown }: { tie: Tie; cheapest: PricedBid; shown: Shown }) {
  const isOpen = cheapest.isLeast || tie.other.isLeast;
  switch (tie.rates.kind) {
    case "everywhere":
      return <p className={styles.note}>They cost the same at every rate.</p>;
    case "nowhere":
      return (
        <p className={styles.note}>
          None between {soughtText}: the rate does not change the order of these two
          {isOpen ? ", as far as figures stand" : null}.
        </p>
      );
    case "at":
      return (
        <>
          {tie.rates.rates.map((figure, position) => (
            <FigureText
              // biome-ignore lint/suspicious/noArrayIndexKey: rates stand in their order and have no other name
              key={position}
              project={shown.project}
              of={`Real rate at which bids ${cheapest.bid.letter} and ${tie.other.bid.letter} cost the same`}
              figure={figure}
              units={shown.units}
            />
          ))}
          <p className={styles.note}>
            {listed(tie.rates.rates.map(inFull))} with all digits that count. {tie.rates.beyond}
            {isOpen ? " As far as figures stand." : null}
          </p>
        </>
      );
  }
}
