import { claimsFor, comparability, type MethodId } from "#lib/claim";
import type { Bid, BidEvaluation } from "#lib/evaluation";
import { explainShortfall } from "#lib/figure";
import { BidLetter } from "../../../../_components/bid-letter";
import { Status } from "../../../../_components/status";
import { BidMark } from "./outlook-chart";
import styles from "./premises.module.css";

/** A bid as it is entered and as it is evaluated. */
export type ReadBid = Readonly<{ entered: Bid; bid: BidEvaluation; index: number }>;

export const premiseWords = {
  "fitted-to-aged-data": "fitted to its own aged data",
  "owner-scenario": "owner’s assumption of the yearly change",
} as const;

/** Impact levels in the bid that can't be held against the limit, with the reason and the question to the bidder. */
export const unlikeLevels = (bid: Bid, method: MethodId) =>
  claimsFor(bid.claims, "g-max").flatMap((claim) => {
    const verdict = comparability("g-max", method, claim.method);
    return verdict.kind === "comparable" ? [] : [{ claim, verdict }];
  });

function WhyNotDrawn({ entered, bid, method }: { entered: Bid; bid: BidEvaluation; method: MethodId }) {
  const [unlike] = unlikeLevels(entered, method);
  const { outlook } = bid.hardness;
  if (outlook.kind === "outlook") return null;
  return unlike === undefined ? (
    <>
      <Status word="not shown" /> and not drawn. {explainShortfall(outlook.because)}
    </>
  ) : (
    <>
      <Status word="not comparable" /> and not drawn. {unlike.verdict.reason}
    </>
  );
}

const beyondHorizon = ({ hardness: { stated } }: BidEvaluation, horizon: number): string => {
  const ages = stated.filter(({ years }) => years > horizon).map(({ years }) => `year ${years}`);
  return ages.length === 0 ? "" : ` Its level at ${ages.join(", ")} lies beyond the drawing; it counts all the same.`;
};

/** What each line of the drawing rests on, and why a bid has none. */
export function Premises({ bids, method, horizon }: { bids: readonly ReadBid[]; method: MethodId; horizon: number }) {
  return (
    <ul className={styles.premises}>
      {bids.map(({ entered, bid, index }) => (
        <li key={bid.id}>
          <BidLetter letter={bid.letter} index={index} />
          {bid.hardness.outlook.kind === "outlook" ? (
            <span>
              <BidMark index={index} /> <strong>{premiseWords[bid.hardness.outlook.premise]}</strong>.
              {beyondHorizon(bid, horizon)}
            </span>
          ) : (
            <span>
              <WhyNotDrawn entered={entered} bid={bid} method={method} />
            </span>
          )}
        </li>
      ))}
    </ul>
  );
}
