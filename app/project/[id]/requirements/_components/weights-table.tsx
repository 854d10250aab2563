"use client";
import { useWatch } from "react-hook-form";
import { formatShare } from "#lib/evaluation";
import { Scroller } from "../../../../_components/scroller";
import { gateAsTyped } from "./criterion-kinds";
import type { CriterionText } from "./measure-choices";
import styles from "./requirements.module.css";
import { typedWeights } from "./typed-weights";
import type { WeighingText } from "./weighing-rows";

/** All criteria at a glance, as they stand in the form: what each gates and how much of the whole it makes up. */
export function WeightsTable() {
  const criteria: readonly CriterionText[] = useWatch({ name: "criteria" });
  const weighing: WeighingText | undefined = useWatch({ name: "weighing" });
  const { shares } = typedWeights(criteria, weighing);
  const isDirect = weighing === undefined || weighing.kind === "direct";
  if (criteria.length === 0) return <p>There is nothing to weigh yet. Add a criterion above.</p>;
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
            <th scope="col" className="number">
              Share of the whole
            </th>
          </tr>
        </thead>
        <tbody>
          {criteria.map(({ id, label, gate, valueFunction, weight }, index) => (
            <tr key={id}>
              <th scope="row">
                <a href={`#${id}`}>{label === "" ? `Criterion ${index + 1}` : label}</a>
              </th>
              <td>{gateAsTyped(gate) || "–"}</td>
              {isDirect ? <td className="number">{valueFunction.kind === "none" ? "–" : weight}</td> : null}
              <td className="number">
                {valueFunction.kind === "none" ? "not scored" : formatShare(shares[index] ?? 0)}
                <svg aria-hidden="true" width="96" height="10" viewBox="0 0 96 10" className={styles.bar}>
                  <rect width={96 * (shares[index] ?? 0)} height="10" />
                </svg>
              </td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row" colSpan={isDirect ? 3 : 2}>
              Sum
            </th>
            <td className="number">{formatShare(shares.reduce((sum, share) => sum + share, 0))}</td>
          </tr>
        </tfoot>
      </table>
    </Scroller>
  );
}
