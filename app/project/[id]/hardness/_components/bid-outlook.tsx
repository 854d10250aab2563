import Link from "next/link";
import { claimsFor, comparability, evidenceLevels, inSentence, type MethodId } from "#lib/claim";
import { type Bid, type BidEvaluation, claimInWords } from "#lib/evaluation";
import { explainDepthMargin, explainSensitivity } from "#lib/impact";
import type { UnitSystem } from "#lib/quantity";
import { BidLetter } from "../../../../_components/bid-letter";
import { FigureText } from "../../../../_components/figure-text";
import { Status } from "../../../../_components/status";
import styles from "./bid-outlook.module.css";

const premiseWords = {
  "fitted-to-aged-data": "Fitted to the bid’s own aged data",
  "owner-scenario": "Rests on the owner’s assumption of the yearly change",
} as const;

const evidenceWords = (level: BidEvaluation["hardness"]["asNewEvidence"]) =>
  inSentence(evidenceLevels.find(({ id }) => id === level)?.label ?? level);

/** Impact levels in the bid that can't be held against the limit, with the reason and the question to the bidder. */
function UnlikeLevels({ project, bid, method }: { project: string; bid: Bid; method: MethodId }) {
  const unlike = claimsFor(bid.claims, "g-max").flatMap((claim) => {
    const verdict = comparability("g-max", method, claim.method);
    return verdict.kind === "comparable" ? [] : [{ claim, verdict }];
  });
  return unlike.map(({ claim, verdict }) => (
    <div key={claim.id} className={styles.unlike}>
      <p>
        <Status word="not comparable" />{" "}
        <Link href={`/project/${project}/bids/${bid.id}#${claim.id}`} prefetch={false}>
          {claimInWords(claim)}
        </Link>
      </p>
      <p>{verdict.reason}</p>
      <p>Ask: “{verdict.ask}”</p>
    </div>
  ));
}

/** One bid's outlook: what it rests on, when it could leave the limits, and how much depth it can lose. */
export function BidOutlook({
  project,
  bid,
  evaluated,
  index,
  method,
  units,
}: {
  project: string;
  bid: Bid;
  evaluated: BidEvaluation;
  index: number;
  method: MethodId;
  units: UnitSystem;
}) {
  const { hardness, letter } = evaluated;
  const { outlook, depthMargin, sensitivity } = hardness;
  return (
    <section className={styles.bid} aria-label={`Bid ${letter}`}>
      <h3>
        <BidLetter letter={letter} index={index} /> {evaluated.system}
      </h3>
      {outlook.kind === "unknown" ? null : <p className={styles.premise}>{premiseWords[outlook.premise]}</p>}
      <ul>
        {hardness.sentences.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      <dl className={styles.figures}>
        <div>
          <dt>Level as new</dt>
          <dd>
            <FigureText
              project={project}
              of={`the level of bid ${letter} as new`}
              figure={hardness.asNew}
              units={units}
            />
            {hardness.asNew.kind === "unknown" ? null : (
              <p className="small soft">Shown by: {evidenceWords(hardness.asNewEvidence)}</p>
            )}
          </dd>
        </div>
        <div>
          <dt>Level in the last year</dt>
          <dd>
            <FigureText
              project={project}
              of={`the level of bid ${letter} in the last year`}
              figure={hardness.atHorizon}
              units={units}
            />
          </dd>
        </div>
        <div>
          <dt>Depth margin</dt>
          <dd>
            <FigureText
              project={project}
              of={`the depth margin of bid ${letter}`}
              figure={depthMargin.figure}
              units={units}
            />
            {depthMargin.kind === "unknown" ? null : <p className="small soft">{explainDepthMargin(depthMargin)}</p>}
            {sensitivity.kind === "applies" ? <p className="small soft">{explainSensitivity(sensitivity)}</p> : null}
          </dd>
        </div>
      </dl>
      <UnlikeLevels project={project} bid={bid} method={method} />
    </section>
  );
}
