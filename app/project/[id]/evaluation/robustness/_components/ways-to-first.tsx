import { placingTotal } from "#lib/criteria";
import { type BidEvaluation, type Evaluation, formatPoints, type Project, singleChanges } from "#lib/evaluation";
import { listed } from "#lib/figure";
import { BidLetter } from "../../../../../_components/bid-letter";
import type { JudgedBid } from "../../../_components/judged-bids";
import styles from "../../_components/changes.module.css";
import { ChangeList } from "./change-list";
import type { Shown } from "./change-words";

/** For each bid that is not first: what would have to be true for it to be level with the first. */
export function WaysToFirst({
  project,
  evaluation,
  ordered,
  shown,
}: {
  project: Project;
  evaluation: Evaluation;
  ordered: readonly JudgedBid[];
  shown: Shown;
}) {
  const { places } = evaluation.ranking;
  const [first] = places;
  const leader = evaluation.bids.find(({ id }) => id === first?.bid);
  return ordered
    .filter(({ evaluated }) => !places.some(({ bid, place }) => bid === evaluated.id && place === 1))
    .map(({ evaluated, index }) => (
      <section key={evaluated.id} className={styles.bid} aria-labelledby={`way-${evaluated.id}`}>
        <h3 id={`way-${evaluated.id}`}>
          <span className="visually-hidden">Bid </span>
          <BidLetter letter={evaluated.letter} index={index} />
        </h3>
        <div>
          {evaluated.score.standing === "fails a gate" ? (
            <p>{outWords(evaluated, leader)}</p>
          ) : (
            <>
              <p>
                On the figures shown it is{" "}
                {formatPoints(leader === undefined ? 0 : placingTotal(leader.score) - placingTotal(evaluated.score))}{" "}
                points behind bid {leader?.letter}.
              </p>
              <ChangeList
                changes={singleChanges(
                  project,
                  evaluation,
                  evaluated.id,
                  places.map(({ bid }) => bid).filter((bid) => bid !== evaluated.id),
                )}
                shown={shown}
                level="the two level"
                of={`bid ${evaluated.letter}`}
              />
              {evaluated.score.standing === "gate open" ? (
                <p>It also leaves a gate open, and would have to meet that.</p>
              ) : null}
            </>
          )}
        </div>
      </section>
    ));
}

/** A bid that fails a gate: points don't bring it back, and what its points come to is said for what it is. */
function outWords(bid: BidEvaluation, leader: BidEvaluation | undefined): string {
  const failed = bid.score.criteria
    .filter(({ gate }) => gate.kind === "falls-short" || gate.kind === "falls-short-on-evidence")
    .map(({ criterion }) => `“${criterion.label}”`);
  const gates = `It would have to meet the ${failed.length === 1 ? "gate" : "gates"} ${listed(failed)}. No points make up for that.`;
  if (leader === undefined) return gates;
  const lead = placingTotal(bid.score) - placingTotal(leader.score);
  return `${gates} Its points as they stand are ${formatPoints(Math.abs(lead))} ${lead > 0 ? "above" : "below"} those of bid ${leader.letter}.`;
}
