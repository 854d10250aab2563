import { type BidSpread, type CriterionSpread, farApart, levelsOf } from "#lib/committee";
import { explainAgreement } from "#lib/criteria";
import { Scroller } from "../../../../../_components/scroller";
import { LevelStrip } from "./level-strip";
import styles from "./ratings-table.module.css";

type NamedBid = Readonly<{ id: string; letter: string; bidder: string }>;

/** What each evaluator chose for each bid, with the comments, how far apart they are, and how far the orders agree. */
export function RatingsTable({ spread, bids }: { spread: CriterionSpread; bids: readonly NamedBid[] }) {
  const { criterion, agreement, measuredOn } = spread;
  const levels = levelsOf(criterion);
  return (
    <>
      <p>
        {explainAgreement(agreement)}
        {agreement.kind === "measured"
          ? ` Measured on the ${measuredOn} sheets that rate every bid; ties share a rank.`
          : ""}
      </p>
      <Scroller label={`Ratings on ${criterion.label}`}>
        <table className={styles.ratings}>
          <caption className="visually-hidden">Ratings on {criterion.label}</caption>
          <thead>
            <tr>
              <th scope="col">Bid</th>
              <th scope="col">Spread</th>
              <th scope="col">Ratings</th>
            </tr>
          </thead>
          <tbody>
            {spread.bids.map((row) => {
              const bid = bids.find(({ id }) => id === row.bid);
              return (
                <tr key={row.bid}>
                  <th scope="row">
                    {bid?.letter}, {bid?.bidder}
                  </th>
                  <td>
                    <LevelStrip
                      levels={levels}
                      chosen={row.ratings.map(({ level }) => level.id)}
                      agreed={row.agreed?.value ?? null}
                      name={`Bid ${bid?.letter ?? ""}`}
                    />
                    <span className={styles.apart}>{apartInWords(row)}</span>
                  </td>
                  <td>
                    <ul className={styles.people}>
                      {row.ratings.map(({ sheet, level, rating }) => (
                        <li key={sheet.evaluator.id}>
                          {sheet.evaluator.name}: <strong>{level.label}</strong>
                          {rating.comment === "" ? null : <q>{rating.comment}</q>}
                        </li>
                      ))}
                      {row.excused.map((name) => (
                        <li key={name}>{name}: excused</li>
                      ))}
                    </ul>
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </Scroller>
    </>
  );
}

function apartInWords({ apart, ratings }: BidSpread): string {
  if (apart === null) return "nobody rated it";
  if (ratings.length === 1) return "one rating";
  if (apart === 0) return "all chose one level";
  const levels = `${apart} level${apart === 1 ? "" : "s"} apart`;
  return apart >= farApart ? `${levels}: hear the reasons first` : levels;
}
