import Link from "next/link";
import { askedOfInWords, gateInWords, marginInWords } from "#lib/evaluation";
import type { Figure } from "#lib/figure";
import type { UnitSystem } from "#lib/quantity";
import { Scroller } from "../../../../_components/scroller";
import { Status } from "../../../../_components/status";
import { originAddress } from "../../../../_components/working";
import type { JudgedBid } from "../../_components/judged-bids";
import { BidHeads } from "./bid-heads";
import { Reason } from "./reason";
import styles from "./tables.module.css";

/** The claim or entry that a figure rests on first; the bid itself where there is no figure. */
function sourceOf(project: string, { id }: JudgedBid["evaluated"], figure: Figure): string {
  const origins = figure.kind === "unknown" ? [] : figure.working.inputs.map(({ from }) => from);
  const entered = origins.find(({ kind }) => kind === "claim" || kind === "infill-component" || kind === "price-line");
  return (entered && originAddress(project, entered)) ?? `/project/${project}/bids/${id}`;
}

/** How every bid stands at every gate. */
export function GatesTable({
  project,
  bids,
  units,
}: {
  project: string;
  bids: readonly JudgedBid[];
  units: UnitSystem;
}) {
  const gated = (bids[0]?.criteria ?? []).flatMap(({ score: { criterion } }, row) =>
    criterion.gate.kind === "none" ? [] : [{ criterion, gate: criterion.gate, row }],
  );
  if (gated.length === 0) {
    return (
      <p>
        No criterion is a gate.{" "}
        <Link href={`/project/${project}/requirements`} prefetch={false}>
          Set a limit in the requirements
        </Link>{" "}
        where a bid must not be considered beyond it.
      </p>
    );
  }
  return (
    <Scroller label="Gates, table">
      <table className={styles.matrix}>
        <caption>How each bid stands at each gate</caption>
        <thead>
          <tr>
            <th scope="col">Gate</th>
            <BidHeads bids={bids} />
          </tr>
        </thead>
        <tbody>
          {gated.map(({ criterion, gate, row }) => (
            <tr key={criterion.id}>
              <th scope="row">
                <Link href={`/project/${project}/requirements#${criterion.id}`} prefetch={false}>
                  {criterion.label}
                </Link>
                <span className={styles.under}>{gateInWords(gate, criterion.measure, units)}</span>
                {criterion.askedOf.kind === "every-bid" ? null : (
                  <span className={styles.under}>{askedOfInWords(criterion.askedOf, units)}</span>
                )}
              </th>
              {bids.map(({ evaluated, criteria }) => {
                const judged = criteria[row];
                if (judged === undefined) return <td key={evaluated.id} />;
                return (
                  <td key={evaluated.id}>
                    <Status word={judged.score.status} />
                    {judged.score.because === null ? (
                      <span className={styles.under}>{marginInWords(judged.score, judged.figure, units)}</span>
                    ) : (
                      <Reason score={judged.score} of={`${criterion.label}, bid ${evaluated.letter}`} />
                    )}
                    <Link
                      href={sourceOf(project, evaluated, judged.figure)}
                      className={`${styles.where} screen-only`}
                      prefetch={false}
                    >
                      in the bid
                      <span className="visually-hidden">
                        : {criterion.label}, bid {evaluated.letter}
                      </span>
                    </Link>
                  </td>
                );
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </Scroller>
  );
}
