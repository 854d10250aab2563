"use client";
import type { PersonsWeights } from "#lib/criteria";
import { formatShare } from "#lib/evaluation";
import { Scroller } from "../../../../_components/scroller";
import { gateAsTyped } from "./criterion-kinds";
import type { CriterionText } from "./measure-choices";
import styles from "./requirements.module.css";
import { typedWeights } from "./typed-weights";
import { useTyped } from "./use-typed";

type Row = Readonly<{ criterion: CriterionText; index: number; share: number }>;

/** Criteria of one heading, or those under none, with what they make up together. */
type Group = Readonly<{ label: string; points: string; rows: readonly Row[]; share: number }>;

/** All criteria at a glance, as they stand in the form: what each gates and how much of the whole it makes up. */
export function WeightsTable() {
  const typed = useTyped();
  const { criteria, headings, weighing } = typed;
  const { shares, people } = typedWeights(typed);
  const isDirect = weighing === undefined || weighing.kind === "direct";
  if (criteria.length === 0) return <p>There is nothing to weigh yet. Add a criterion above.</p>;
  const rows = criteria.map((criterion, index): Row => ({ criterion, index, share: shares[index] ?? 0 }));
  const grouped = (label: string, points: string, some: readonly Row[]): readonly Group[] =>
    some.length === 0 ? [] : [{ label, points, rows: some, share: some.reduce((sum, { share }) => sum + share, 0) }];
  const groups = [
    ...headings.flatMap(({ id, label, points }) =>
      grouped(
        label === "" ? id : label,
        points,
        rows.filter(({ criterion }) => criterion.heading === id),
      ),
    ),
    ...grouped(
      "",
      "",
      rows.filter(({ criterion }) => headings.every(({ id }) => id !== criterion.heading)),
    ),
  ];
  const before = isDirect ? 3 : 2;
  return (
    <Scroller label="Weights">
      <table className={styles.weights}>
        <thead>
          <tr>
            <th scope="col">Criterion</th>
            <th scope="col">Gate</th>
            {isDirect ? (
              <th scope="col" className="number">
                Points
              </th>
            ) : null}
            {people.map(({ person }) => (
              <th key={person} scope="col" className="number">
                {person}
              </th>
            ))}
            <th scope="col" className="number">
              {people.length > 0 ? "Mean share of the whole" : "Share of the whole"}
            </th>
          </tr>
        </thead>
        {groups.map((group) => (
          <tbody key={group.label}>
            {headings.length === 0 ? null : (
              <tr className={styles.groupRow}>
                <th scope="rowgroup" colSpan={isDirect && group.label !== "" ? 2 : before}>
                  {group.label === "" ? "Under no heading" : group.label}
                </th>
                {isDirect && group.label !== "" ? <td className="number">{group.points}</td> : null}
                {people.map(({ person, shares: own }) => (
                  <td key={person} className="number">
                    {formatShare(group.rows.reduce((sum, row) => sum + ownShare(own, row), 0))}
                  </td>
                ))}
                <td className="number">
                  {formatShare(group.share)}
                  <ShareBar share={group.share} />
                </td>
              </tr>
            )}
            {group.rows.map((row) => (
              <CriterionRow
                key={row.criterion.id}
                row={row}
                isDirect={isDirect}
                people={people}
                isInside={headings.length > 0}
              />
            ))}
          </tbody>
        ))}
        <tfoot>
          <tr>
            <th scope="row" colSpan={before + people.length}>
              Sum
            </th>
            <td className="number">{formatShare(shares.reduce((sum, share) => sum + share, 0))}</td>
          </tr>
        </tfoot>
      </table>
    </Scroller>
  );
}

const ownShare = (own: PersonsWeights["shares"], { criterion: { id } }: Row): number =>
  own.find(({ criterion }) => criterion === id)?.share ?? 0;

const ShareBar = ({ share }: { share: number }) => (
  <svg aria-hidden="true" width="96" height="10" viewBox="0 0 96 10" className={styles.bar}>
    <rect width={96 * share} height="10" />
  </svg>
);

function CriterionRow({
  row,
  isDirect,
  people,
  isInside,
}: {
  row: Row;
  isDirect: boolean;
  people: readonly PersonsWeights[];
  isInside: boolean;
}) {
  const { criterion, index, share } = row;
  const { id, label, gate, valueFunction, weight } = criterion;
  const isScored = valueFunction.kind !== "none";
  return (
    <tr>
      <th scope="row" className={isInside ? styles.inside : undefined}>
        <a href={`#${id}`}>{label === "" ? `Criterion ${index + 1}` : label}</a>
      </th>
      <td>{gateAsTyped(gate) || "–"}</td>
      {isDirect ? <td className="number">{isScored ? weight : "–"}</td> : null}
      {people.map(({ person, shares: own }) => (
        <td key={person} className="number">
          {isScored ? formatShare(ownShare(own, row)) : "–"}
        </td>
      ))}
      <td className="number">
        {isScored ? formatShare(share) : "not scored"}
        <ShareBar share={share} />
      </td>
    </tr>
  );
}
