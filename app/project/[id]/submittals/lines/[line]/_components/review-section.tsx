import { type Claim, methodOf, propertyOf } from "#lib/claim";
import { claimDetails, claimedInWords, type SubmittalReview } from "#lib/evaluation";
import { limitInWords, type Requirement } from "#lib/requirement";
import { type RegisterItem, reviewActions, reviewLetter } from "#lib/submittal";
import { Scroller } from "../../../../../../_components/scroller";
import { Status } from "../../../../../../_components/status";
import { CopyText } from "../../../../_components/copy-text";
import type { Papers } from "../../../../_components/paper/document-address";
import { DocumentLink } from "../../../../_components/paper/document-link";
import { AgainstBidWord } from "../../../_components/against-bid";
import { specificationWord } from "../../../_register/outcome-words";
import styles from "./review-section.module.css";

/** One version held against the specification and the bid, value by value, with what the reports show. */
export function ReviewSection({
  item,
  index,
  review,
  submittedPapers,
  bidPapers,
}: {
  item: RegisterItem;
  index: number;
  review: SubmittalReview;
  submittedPapers: Papers;
  bidPapers: Papers;
}) {
  const { rows, suggested } = review;
  const number = index + 1;
  return (
    <section aria-labelledby={`review-${number}`}>
      <h2 id={`review-${number}`}>Review of version {number}</h2>
      {rows.length === 0 ? (
        <p>No value is entered and no clause of this line sets a limit, so there is nothing to compare.</p>
      ) : (
        <Scroller label={`Review of version ${number}`}>
          <table className={styles.review}>
            <caption className="visually-hidden">Review of version {number}</caption>
            <thead>
              <tr>
                <th scope="col">Property</th>
                <th scope="col">Against the specification</th>
                <th scope="col">Against the bid</th>
                <th scope="col">Specified</th>
                <th scope="col">Bid</th>
                <th scope="col">Submitted</th>
              </tr>
            </thead>
            <tbody>
              {rows.map(({ key, requirement, submitted, bid, review: found }) => {
                const word = specificationWord(found.specification);
                return (
                  <tr key={key}>
                    <th scope="row">{nameOf(requirement, submitted)}</th>
                    <td>{word === null ? "no limit" : <Status word={word} />}</td>
                    <td>
                      <AgainstBidWord of={found.bid.kind} />
                    </td>
                    <td>{specified(requirement)}</td>
                    <td>{bid === null ? "–" : <Stated claim={bid} papers={bidPapers} />}</td>
                    <td>{submitted === null ? "–" : <Stated claim={submitted} papers={submittedPapers} />}</td>
                  </tr>
                );
              })}
            </tbody>
          </table>
        </Scroller>
      )}
      {rows.length === 0 ? null : (
        <>
          <h3>Comments</h3>
          <ol className={styles.comments}>
            {rows.map(({ key, comment, isOwnWords, review: { cautions } }) => (
              <li key={key}>
                {comment}
                {isOwnWords ? <span className="soft"> (the reviewer’s words)</span> : null}
                {cautions.map((caution) => (
                  <span key={caution} className={styles.caution}>
                    {caution}
                  </span>
                ))}
              </li>
            ))}
          </ol>
        </>
      )}
      <Findings review={review} papers={submittedPapers} />
      <p>
        What was found points to <strong>{reviewActions[suggested].label}</strong>. The answer is the reviewer’s.
      </p>
      <CopyText text={reviewLetter(item, index, review)} what="the answer as text" />
    </section>
  );
}

/** What the checks of the laboratory reports found. */
function Findings({ review: { reports }, papers }: { review: SubmittalReview; papers: Papers }) {
  if (reports.length === 0) return null;
  return (
    <>
      <h3>Laboratory reports</h3>
      {reports.map(({ report, findings }, place) => (
        <div key={report.id}>
          <p>
            <strong>
              Report {place + 1}
              {report.document === "" ? "" : ": "}
              <DocumentLink papers={papers} named={report} />
            </strong>
            {findings.length === 0 ? " – nothing was amiss in what was read off." : null}
          </p>
          {findings.length === 0 ? null : (
            <ul className={styles.findings}>
              {findings.map(({ check, severity, sentence }) => (
                <li key={`${check} ${sentence}`}>
                  <strong>{severity === "note" ? "Worth knowing" : "Needs an answer"}:</strong> {sentence}
                </li>
              ))}
            </ul>
          )}
        </div>
      ))}
    </>
  );
}

const nameOf = (requirement: Requirement | null, submitted: Claim | null): string =>
  requirement?.label ?? (submitted === null ? "" : propertyOf(submitted.property).label);

function specified(requirement: Requirement | null): string {
  if (requirement === null) return "no clause";
  const { limit, method } = requirement;
  const words = limit === null ? "no limit" : limitInWords(limit);
  return method === null ? words : `${words}, ${methodOf(method).designation}`;
}

/** A value as it is written, with the paper that opens at its page. */
function Stated({ claim, papers }: { claim: Claim; papers: Papers }) {
  const { document, page } = claim;
  return (
    <>
      <strong>{claimedInWords(claim)}</strong>, {claimDetails(claim)}
      {document === "" ? null : (
        <>
          <br />
          <DocumentLink papers={papers} named={{ document, page }} />
        </>
      )}
    </>
  );
}
