import type { BidEvaluation } from "#lib/evaluation";
import { formatFigure, intervalOfFigure } from "#lib/figure";
import { explainSensitivity, halfInchRule } from "#lib/impact";
import { formatInterval, formatValue, type In, type UnitSystem } from "#lib/quantity";
import { BidLetter } from "../../../../_components/bid-letter";
import { Scroller } from "../../../../_components/scroller";
import { depthLosses, levelAfterLoss, standingToLimit } from "./depth-loss";
import styles from "./depth-loss-table.module.css";

type ShownBid = Readonly<{ bid: BidEvaluation; index: number }>;

const standingWords = {
  below: "",
  "may reach": "may reach the limit",
  reached: "at or above the limit",
} as const;

type Applying = Extract<BidEvaluation["hardness"]["sensitivity"], { kind: "applies" }>;

const largestLossOf = ({ largestLoss }: Applying): In<"m"> => largestLoss ?? halfInchRule.validFor.largestLoss;

const isOwn = ({ hardness: { sensitivity } }: BidEvaluation): boolean =>
  sensitivity.kind === "applies" && sensitivity.basis === "own-levels";

function LevelAfter({
  bid,
  loss,
  limit,
  units,
}: {
  bid: BidEvaluation;
  loss: In<"m">;
  limit: In<"g">;
  units: UnitSystem;
}) {
  const { asNew, sensitivity } = bid.hardness;
  const level = intervalOfFigure(asNew);
  if (level === null || sensitivity.kind === "does-not-apply") return "–";
  if (loss > largestLossOf(sensitivity)) return "not shown by the bid";
  const after = levelAfterLoss(level, loss, sensitivity);
  const words = standingWords[standingToLimit(after, limit)];
  return (
    <>
      {formatInterval("impactLevel", after, units)}
      {words === "" ? null : <div className="small">{words}</div>}
    </>
  );
}

/** What a spot comes to that loses some infill, for the bids to which a sensitivity applies; why not, for the others. */
export function DepthLossTable({
  bids,
  limit,
  units,
}: {
  bids: readonly ShownBid[];
  limit: In<"g">;
  units: UnitSystem;
}) {
  const applies = ({ bid: { hardness } }: ShownBid) =>
    hardness.sensitivity.kind === "applies" && hardness.asNew.kind !== "unknown";
  const shown = bids.filter(applies);
  const others = bids.filter((bid) => !applies(bid));
  return (
    <>
      {shown.length === 0 ? (
        <p>No sensitivity to depth loss applies to any of these bids.</p>
      ) : (
        <Scroller label="Level after a local loss of infill">
          <table className={styles.levels}>
            <caption>
              Level of a new surface where a spot has lost some infill depth, by the sensitivity of each bid
            </caption>
            <thead>
              <tr>
                <th scope="col">Bid</th>
                <th scope="col">as new, nothing lost</th>
                {depthLosses.map((loss) => (
                  <th key={loss} scope="col">
                    {formatValue("length", loss, units)} lost
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {shown.map(({ bid, index }) => (
                <tr key={bid.letter}>
                  <th scope="row">
                    <BidLetter letter={bid.letter} index={index} />
                    {isOwn(bid) ? <div className="small soft">by its own levels</div> : null}
                  </th>
                  <td>{formatFigure(bid.hardness.asNew, units)}</td>
                  {depthLosses.map((loss) => (
                    <td key={loss}>
                      <LevelAfter bid={bid} loss={loss} limit={limit} units={units} />
                    </td>
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </Scroller>
      )}
      {others.length === 0 ? null : (
        <>
          <p>Left out, because no sensitivity to depth loss applies to them:</p>
          <ul>
            {others.map(({ bid, index }) => (
              <li key={bid.letter}>
                <BidLetter letter={bid.letter} index={index} />{" "}
                {bid.hardness.sensitivity.kind === "applies"
                  ? "The bid gives no level as new by the required method to start from."
                  : explainSensitivity(bid.hardness.sensitivity)}
              </li>
            ))}
          </ul>
        </>
      )}
    </>
  );
}
