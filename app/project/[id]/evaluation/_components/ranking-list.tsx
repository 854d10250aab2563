import { formatPointSpan, formatPoints, formatShare, totalWorking } from "#lib/evaluation";
import { BidLetter } from "../../../../_components/bid-letter";
import { ShowWorking } from "../../../../_components/working";
import type { JudgedBid } from "../../_components/judged-bids";
import styles from "./ranking-list.module.css";

const standingWords = {
  "passes all gates": "Passes all gates",
  "gate open": "Leaves a gate open",
  "fails a gate": "Fails a gate",
} as const;

/** The criteria at whose gates a bid falls short or stays open, by name. */
const atGates = ({ criteria }: JudgedBid): readonly string[] =>
  criteria
    .filter(({ score: { gate } }) => gate.kind !== "no-gate" && gate.kind !== "not-asked" && gate.kind !== "meets")
    .map(({ score }) => score.criterion.label);

function Total({ project, bid }: { project: string; bid: JudgedBid }) {
  const { letter, score } = bid.evaluated;
  if (score.total === null) return <p>No criterion carries weight, so there is no total.</p>;
  const { likely } = score.total;
  return (
    <>
      <p>
        <strong>{formatPointSpan(score.total)} of 100 points</strong>
        {likely === null
          ? "; no likely total while a weighing figure is missing, so the bid is placed by what it shows, the missing figures at their worst."
          : `; likely ${formatPoints(likely)}.`}{" "}
        {formatShare(score.coverage)} of the weight rests on figures with the evidence asked for.
      </p>
      <ShowWorking project={project} of={`the total of bid ${letter}`} working={totalWorking(score)} />
    </>
  );
}

/** The bids in order, those that fail a gate after them without a place. */
export function RankingList({
  project,
  bids,
  places,
}: {
  project: string;
  bids: readonly JudgedBid[];
  places: ReadonlyMap<string, number>;
}) {
  return (
    <ol className={styles.list}>
      {bids.map((bid) => {
        const { id, letter, bidder, system, score } = bid.evaluated;
        const place = places.get(id);
        const gates = atGates(bid);
        return (
          <li key={id}>
            <p className={styles.place}>
              <span>{place === undefined ? "no place" : place}</span>
              <span className="visually-hidden">: bid </span>
              <BidLetter letter={letter} index={bid.index} />
            </p>
            <div>
              <p className={styles.name}>
                {bidder} <span className="soft">– {system}</span>
              </p>
              <p>
                {standingWords[score.standing]}
                {gates.length === 0 ? "." : `: ${gates.join("; ")}.`}
                {score.standing === "fails a gate" ? " No points make up for that." : ""}
              </p>
              <Total project={project} bid={bid} />
            </div>
          </li>
        );
      })}
    </ol>
  );
}
