import Link from "next/link";
import { askedOfInWords, formatPointSpan, formatShare, scatterInWords } from "#lib/evaluation";
import { formatFigure } from "#lib/figure";
import type { UnitSystem } from "#lib/quantity";
import { Scroller } from "../../../../_components/scroller";
import { Status } from "../../../../_components/status";
import { ShowWorking } from "../../../../_components/working";
import type { JudgedBid, JudgedCriterion } from "../../_components/judged-bids";
import { BidHeads } from "./bid-heads";
import { Reason } from "./reason";
import styles from "./tables.module.css";

function ScoreCell({
  project,
  of,
  judged,
  units,
}: {
  project: string;
  of: string;
  judged: JudgedCriterion;
  units: UnitSystem;
}) {
  const { score, figure } = judged;
  const { value, because, contribution, asked } = score;
  if (value === null) return null;
  return (
    <>
      {because === null && asked === "yes" ? null : (
        <span className={styles.under}>
          <Status word={score.status} />
        </span>
      )}
      {figure.kind === "unknown" ? null : <span className={styles.figure}>{formatFigure(figure, units)}</span>}
      {scatterInWords(score, units) === "" ? null : (
        <span className={styles.under}>{scatterInWords(score, units)}</span>
      )}
      <span className={styles.under}>value {formatPointSpan(value)}</span>
      <span className={styles.under}>
        adds <strong>{formatPointSpan(contribution)}</strong>
      </span>
      <Reason score={score} of={of} />
      {figure.kind === "unknown" ? null : <ShowWorking project={project} of={of} working={figure.working} />}
    </>
  );
}

/** Every weighing criterion of every bid: the figure, its value on the owner's anchors, and what it adds. */
export function ScoresTable({
  project,
  bids,
  units,
}: {
  project: string;
  bids: readonly JudgedBid[];
  units: UnitSystem;
}) {
  const rows = (bids[0]?.criteria ?? []).flatMap(({ score: { criterion, value, share } }, row) =>
    value === null ? [] : [{ criterion, share, row }],
  );
  return (
    <Scroller label="Scores, table">
      <table className={styles.matrix}>
        <caption>Figure, value from 0 to 100, and points added</caption>
        <thead>
          <tr>
            <th scope="col">Criterion and weight</th>
            <BidHeads bids={bids} />
          </tr>
        </thead>
        <tbody>
          {rows.map(({ criterion, share, row }) => (
            <tr key={criterion.id}>
              <th scope="row">
                <Link href={`/project/${project}/requirements#${criterion.id}`} prefetch={false}>
                  {criterion.label}
                </Link>
                <span className={styles.under}>{formatShare(share)} of the weight</span>
                {criterion.askedOf.kind === "every-bid" ? null : (
                  <span className={styles.under}>{askedOfInWords(criterion.askedOf, units)}</span>
                )}
              </th>
              {bids.map(({ evaluated, criteria }) => {
                const judged = criteria[row];
                return (
                  <td key={evaluated.id}>
                    {judged === undefined ? null : (
                      <ScoreCell
                        project={project}
                        of={`${criterion.label}, bid ${evaluated.letter}`}
                        judged={judged}
                        units={units}
                      />
                    )}
                  </td>
                );
              })}
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">Total, of 100</th>
            {bids.map(({ evaluated: { id, score } }) => (
              <td key={id}>{score.total === null ? "no total" : formatPointSpan(score.total)}</td>
            ))}
          </tr>
        </tfoot>
      </table>
    </Scroller>
  );
}
