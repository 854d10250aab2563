import type { BidEvaluation } from "#lib/evaluation";
import { intervalOfFigure } from "#lib/figure";
import { depthLaws, levelAfterDepthLoss } from "#lib/impact";
import { formatInterval, formatValue, type Interval, measured, type UnitSystem } from "#lib/quantity";
import { BidLetter } from "../../../../_components/bid-letter";
import { Scroller } from "../../../../_components/scroller";

const losses = [0.25, 0.5, 0.75].map((inches) => measured("length", inches, "in"));

type ShownBid = Readonly<{ bid: BidEvaluation; index: number }>;

/** From the softest end by the milder reading to the hardest end by the stronger one. */
function levelAfter({ hardness }: BidEvaluation, loss: (typeof losses)[number]): Interval<"g"> | null {
  const level = intervalOfFigure(hardness.asNew);
  if (level === null || hardness.sensitivity.kind !== "applies") return null;
  const { perDepth } = hardness.sensitivity;
  const at = (end: Interval<"g">["low"]) => depthLaws.map((law) => levelAfterDepthLoss(end, loss, law, perDepth));
  return {
    low: measured("impactLevel", Math.min(...at(level.low))),
    high: measured("impactLevel", Math.max(...at(level.high))),
  };
}

/** What a spot comes to that loses some infill, for the bids to which the rule of thumb applies. */
export function DepthLossTable({ bids, units }: { bids: readonly ShownBid[]; units: UnitSystem }) {
  const shown = bids.filter(({ bid }) => levelAfter(bid, measured("length", 0)) !== null);
  if (shown.length === 0) return <p>The rule of thumb applies to none of these bids.</p>;
  return (
    <Scroller label="Level after a local loss of infill">
      <table>
        <caption>Level where a spot has lost some infill depth, as new, by the rule of thumb</caption>
        <thead>
          <tr>
            <th scope="col">Depth lost</th>
            {shown.map(({ bid, index }) => (
              <th key={bid.letter} scope="col">
                <BidLetter letter={bid.letter} index={index} />
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {losses.map((loss) => (
            <tr key={loss}>
              <th scope="row">{formatValue("length", loss, units)}</th>
              {shown.map(({ bid }) => {
                const level = levelAfter(bid, loss);
                return <td key={bid.letter}>{level === null ? "–" : formatInterval("impactLevel", level, units)}</td>;
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </Scroller>
  );
}
