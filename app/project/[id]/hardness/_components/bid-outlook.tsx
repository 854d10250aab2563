import Link from "next/link";
import { evidenceLevels, inSentence, type MethodId, methodOf } from "#lib/claim";
import { agedResults, type Bid, type BidEvaluation, claimInWords } from "#lib/evaluation";
import { explainDepthMargin, explainSensitivity, type ImpactRequirement } from "#lib/impact";
import type { UnitSystem } from "#lib/quantity";
import { BidLetter } from "../../../../_components/bid-letter";
import { FigureText } from "../../../../_components/figure-text";
import { capitalised } from "../../../../_components/in-words";
import { Status } from "../../../../_components/status";
import styles from "./bid-outlook.module.css";
import { LinesTable } from "./lines-table";
import { premiseWords, type ReadBid, unlikeLevels } from "./premises";
import { hardnessQuestions } from "./questions";
import { standingBehind } from "./standing-behind";

const evidenceWords = (level: BidEvaluation["hardness"]["asNewEvidence"]) =>
  inSentence(evidenceLevels.find(({ id }) => id === level)?.label ?? level);

type Placed = Readonly<{ project: string; read: ReadBid; method: MethodId }>;

const ClaimLink = ({ project, bid, claim }: { project: string; bid: Bid; claim: Bid["claims"][number] }) => (
  <Link href={`/project/${project}/bids/${bid.id}#${claim.id}`} prefetch={false}>
    {claimInWords(claim)}
  </Link>
);

/** The levels that the outlook uses, each as it stands in the bid with what shows it. */
function Evidence({ project, read: { entered, bid } }: Placed) {
  const claims = bid.hardness.stated.flatMap(({ from }) =>
    from.kind === "claim" ? entered.claims.filter(({ id }) => id === from.claim) : [],
  );
  if (claims.length === 0) return null;
  return (
    <>
      <p className={styles.lead}>The levels behind it, as the bid states them:</p>
      <ul>
        {claims.map((claim) => (
          <li key={claim.id}>
            <ClaimLink project={project} bid={entered} claim={claim} />
          </li>
        ))}
      </ul>
    </>
  );
}

/** Levels by other methods; reason and question only where “level as new” and the list of questions lack them. */
function UnlikeLevels({ project, read: { entered, bid }, method }: Placed) {
  return unlikeLevels(entered, method).map(({ claim, verdict }) => (
    <div key={claim.id} className={styles.unlike}>
      <p>
        <Status word="not comparable" /> <ClaimLink project={project} bid={entered} claim={claim} />
      </p>
      {bid.hardness.asNew.kind === "unknown" ? null : (
        <>
          <p>{verdict.reason}</p>
          <p>Ask: “{verdict.ask}”</p>
        </>
      )}
    </div>
  ));
}

/** Whose sensitivity a depth margin rests on. */
function restsOn(sensitivity: BidEvaluation["hardness"]["sensitivity"]): string {
  const basis = sensitivity.kind === "applies" ? sensitivity.basis : undefined;
  if (basis === "own-levels") return "the bid’s own levels at lesser depths";
  return basis === "owners-value" ? "the owner’s sensitivity" : "rule of thumb: common practice, no source";
}

function Figures({ project, bid, units }: { project: string; bid: BidEvaluation; units: UnitSystem }) {
  const { hardness, letter } = bid;
  const { depthMargin, softMargin, sensitivity, ownSensitivity } = hardness;
  return (
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
        <dt>Level in the last year looked at</dt>
        <dd>
          <FigureText
            project={project}
            of={`the level of bid ${letter} in the last year`}
            figure={hardness.atHorizon}
            units={units}
          />
          {hardness.atHorizon.kind === "unknown" ? null : (
            <p className="small soft">Weakest proof among its levels: {evidenceWords(hardness.atHorizonEvidence)}</p>
          )}
        </dd>
      </div>
      <div>
        <dt>
          Depth margin <small className="soft">{restsOn(sensitivity)}</small>
        </dt>
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
      {ownSensitivity === null ? null : (
        <div>
          <dt>
            Answer to lost depth <small className="soft">from the bid’s own levels at lesser depths</small>
          </dt>
          <dd>
            <FigureText
              project={project}
              of={`the answer of bid ${letter} to lost depth`}
              figure={ownSensitivity}
              units={units}
            />
            <p className="small soft">
              It stands in place of the rule of thumb and of the owner’s value. Where it stops holding is said in its
              working.
            </p>
          </dd>
        </div>
      )}
      {softMargin.kind === "unknown" ? null : (
        <div>
          <dt>
            Depth margin to the soft side <small className="soft">{restsOn(sensitivity)}</small>
          </dt>
          <dd>
            <FigureText
              project={project}
              of={`the depth margin of bid ${letter} to the soft side`}
              figure={softMargin.figure}
              units={units}
            />
            <p className="small soft">{explainDepthMargin(softMargin, "too-soft")}</p>
          </dd>
        </div>
      )}
    </dl>
  );
}

/** One bid's outlook: what it rests on, when it could leave the limits, how much depth it can lose, what to ask. */
export function BidOutlook({
  requirement,
  hoursPerYear,
  units,
  ...placed
}: Placed & { requirement: ImpactRequirement; hoursPerYear: number; units: UnitSystem }) {
  const { project, read, method } = placed;
  const { entered, bid, index } = read;
  const horizon = requirement.horizonYears;
  const { outlook } = bid.hardness;
  const questions = hardnessQuestions(bid.hardness, methodOf(method).designation, horizon);
  return (
    <section className={styles.bid} aria-label={`Bid ${bid.letter}`}>
      <h3>
        <BidLetter letter={bid.letter} index={index} /> {bid.system}
      </h3>
      {outlook.kind === "unknown" ? null : (
        <p className={styles.premise}>{capitalised(premiseWords[outlook.premise])}</p>
      )}
      <ul>
        {[...bid.hardness.sentences, ...standingBehind(outlook)].map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      <Figures project={project} bid={bid} units={units} />
      <Evidence {...placed} />
      {outlook.kind === "unknown" ? null : (
        <LinesTable
          letter={bid.letter}
          results={agedResults(entered, "g-max", method, hoursPerYear)}
          drift={outlook.drift}
          horizon={horizon}
          chance={requirement.chanceLevel}
          units={units}
        />
      )}
      <UnlikeLevels {...placed} />
      {questions.length === 0 ? null : (
        <>
          <p className={styles.lead}>To ask the bidder:</p>
          <ul>
            {questions.map((question) => (
              <li key={question}>{question}</li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}
