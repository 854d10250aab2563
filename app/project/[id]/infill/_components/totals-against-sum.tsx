import Link from "next/link";
import { claimsFor } from "#lib/claim";
import type { Finding } from "#lib/crosscheck";
import { claimInWords } from "#lib/evaluation";
import { formatFigure, tell } from "#lib/figure";
import type { UnitSystem } from "#lib/quantity";
import { BidLetter } from "../../../../_components/bid-letter";
import { Scroller } from "../../../../_components/scroller";
import { Status } from "../../../../_components/status";
import type { DrawnBid } from "./drawn-bids";
import styles from "./tables.module.css";

/** Impact levels have their own page; everything else that does not go together is about mass and depth. */
const isAboutInfill = ({ rule }: Finding): boolean => rule !== "impact-by-another-method";

function StatedTotals({ project, bid }: { project: string; bid: DrawnBid }) {
  const stated = claimsFor(bid.bid.claims, "infill-total-areal-density");
  if (stated.length === 0) return <Status word="not shown" />;
  return stated.map((claim) => (
    <p key={claim.id}>
      <Link href={`/project/${project}/bids/${bid.bid.id}#${claim.id}`} prefetch={false}>
        {claimInWords(claim)}
      </Link>
    </p>
  ));
}

function Outcome({ bid, units }: { bid: DrawnBid; units: UnitSystem }) {
  const { findings, infill } = bid.evaluation;
  const differing = findings.filter(({ rule }) => rule === "components-against-total");
  const stated = claimsFor(bid.bid.claims, "infill-total-areal-density");
  if (infill.totalArealDensity.kind === "unknown") return "Nothing to compare with: the sum is not known.";
  if (stated.length === 0) return "The bid states no total, so nothing is compared.";
  if (differing.length === 0) return "Stated total and sum agree, to within 1 % for rounding.";
  return differing.map((finding) => (
    <div key={finding.key}>
      {finding.overClaims.length > 0 ? <Status word="over-claimed" /> : null}
      <p>{tell(finding.sentence, units)}</p>
    </div>
  ));
}

/** What each bid states as its total beside the sum of its components, then everything to ask about its infill. */
export function TotalsAgainstSum({
  project,
  bids,
  units,
}: {
  project: string;
  bids: readonly DrawnBid[];
  units: UnitSystem;
}) {
  const questions = bids.flatMap(({ letter, index, evaluation: { findings } }) =>
    findings.filter(isAboutInfill).map(({ key, title, sentence, question }) => ({
      letter,
      index,
      key,
      title,
      sentence: tell(sentence, units),
      question: tell(question, units),
    })),
  );
  return (
    <>
      <Scroller label="Stated totals and sums of components">
        <table className={styles.texts}>
          <caption>Stated total beside the sum of the components</caption>
          <thead>
            <tr>
              <th scope="col">Bid</th>
              <th scope="col">Total as the bid states it</th>
              <th scope="col">Sum of its components</th>
              <th scope="col">What that says</th>
            </tr>
          </thead>
          <tbody>
            {bids.map((bid) => (
              <tr key={bid.letter}>
                <th scope="row">
                  <BidLetter letter={bid.letter} index={bid.index} />
                </th>
                <td>
                  <StatedTotals project={project} bid={bid} />
                </td>
                <td className={styles.figure}>{formatFigure(bid.evaluation.infill.totalArealDensity, units)}</td>
                <td>
                  <Outcome bid={bid} units={units} />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </Scroller>
      {questions.length === 0 ? (
        <p>Nothing else in the infill claims of these bids contradicts itself.</p>
      ) : (
        <>
          <h3>To ask the bidders</h3>
          <ul>
            {questions.map(({ letter, index, title, sentence, question, key }) => (
              <li key={`${letter} ${key}`}>
                <BidLetter letter={letter} index={index} /> <strong>{title}.</strong> {sentence} Ask: “{question}”
              </li>
            ))}
          </ul>
        </>
      )}
    </>
  );
}
