import Link from "next/link";
import { type BidCost, type LevelledLine, type LineOrigin, technicalLinks } from "#lib/cost";
import { inSentence } from "#lib/figure";
import { formatMoney } from "#lib/quantity";
import { BidLetter } from "../../../../_components/bid-letter";
import { Scroller } from "../../../../_components/scroller";
import { ShowWorking } from "../../../../_components/working";
import type { CostedBid } from "./costed-bid";
import styles from "./levelling.module.css";

/** Where a line of the owner’s comes from, in words. */
function originWords(origin: LineOrigin, links: BidCost["links"]): string {
  switch (origin.kind) {
    case "bid":
      return "entered with the bid as the owner’s estimate";
    case "plug":
      return origin.by === "median" ? "plug: median of the other bids" : "plug: the owner’s figure";
    case "link": {
      const isStated = links.some(({ link, kind }) => link === origin.link && kind === "stated");
      const label = inSentence(technicalLinks[origin.link].label);
      return isStated ? `stated by the owner in place of what can be worked out: ${label}` : `worked out: ${label}`;
    }
  }
}

/** Everything that counts in a levelled cost and is not the bidder’s own price. */
export function StandIns({
  project,
  bids,
  currency,
}: {
  project: string;
  bids: readonly CostedBid[];
  currency: string;
}) {
  const rows = bids.flatMap((bid) =>
    bid.cost.lines
      .filter(({ line, origin }) => origin.kind !== "bid" || line.givenBy === "owner-estimate")
      .map((levelled) => ({ bid, levelled })),
  );
  if (rows.length === 0) return <p>Nothing but the bidders’ own prices counts so far.</p>;
  return (
    <Scroller label="What the owner adds, table">
      <table className={styles.standIns}>
        <caption className="visually-hidden">What counts and is not the bidder’s own price</caption>
        <thead>
          <tr>
            <th scope="col">Bid</th>
            <th scope="col">What, and where it comes from</th>
            <th scope="col" className="number">
              Present value
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ bid, levelled }) => (
            <tr key={`${bid.id} ${levelled.line.id}`}>
              <td>
                <BidLetter letter={bid.letter} index={bid.index} />
              </td>
              <th scope="row">
                <LineName project={project} bid={bid} levelled={levelled} />
                <p className={styles.origin}>{originWords(levelled.origin, bid.cost.links)}</p>
                <OriginWorking project={project} bid={bid} levelled={levelled} />
              </th>
              <td className="number">{formatMoney(worthOf(bid.cost, levelled.line.id), currency)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Scroller>
  );
}

const worthOf = ({ entries }: BidCost, id: string) =>
  entries.filter(({ line }) => line === id).reduce((sum, { presentValue }) => sum + presentValue, 0);

function LineName({
  project,
  bid,
  levelled: { line, origin },
}: {
  project: string;
  bid: CostedBid;
  levelled: LevelledLine;
}) {
  if (origin.kind !== "bid") return line.label;
  return (
    <Link href={`/project/${project}/bids/${bid.id}#${line.id}`} prefetch={false}>
      {line.label}
    </Link>
  );
}

/** How a median or a link came about. */
function OriginWorking({
  project,
  bid: { cost, letter },
  levelled: { line, origin },
}: {
  project: string;
  bid: CostedBid;
  levelled: LevelledLine;
}) {
  const of = `${line.label}, bid ${letter}`;
  if (origin.kind === "link") {
    const row = cost.links.find(({ link }) => link === origin.link);
    return row?.kind === "computed" ? (
      <>
        {row.note === "" ? null : <p className={styles.origin}>{row.note}</p>}
        <ShowWorking project={project} of={of} working={row.working} />
      </>
    ) : null;
  }
  if (origin.kind !== "plug") return null;
  const outcome = cost.scope.find(({ item }) => item === origin.item)?.outcome;
  const figure = outcome?.kind === "plugged" ? outcome.figure : null;
  return figure === null || figure.kind === "unknown" ? null : (
    <ShowWorking project={project} of={of} working={figure.working} />
  );
}
