import { type Criterion, weightShares } from "#lib/criteria";
import { formatShare, gateInWords } from "#lib/evaluation";
import type { UnitSystem } from "#lib/quantity";
import { Scroller } from "../../../../_components/scroller";
import type { JudgedBid } from "../../evaluation/_components/judged-bids";
import { ValueCurves } from "../../evaluation/_components/value-curves";

/** The criteria as last saved: what weighs how much, and where the bids stand on each line. */
export function SavedCriteria({
  criteria,
  bids,
  units,
}: {
  criteria: readonly Criterion[];
  bids: readonly JudgedBid[];
  units: UnitSystem;
}) {
  if (criteria.length === 0) return null;
  const shares = weightShares(criteria);
  return (
    <section aria-labelledby="saved-heading">
      <h2 id="saved-heading">Weights and scores, as last saved</h2>
      <Scroller label="Gates and weights">
        <table>
          <caption>Gates and weights</caption>
          <thead>
            <tr>
              <th scope="col">Criterion</th>
              <th scope="col">Gate</th>
              <th scope="col" className="number">
                Points
              </th>
              <th scope="col" className="number">
                Share
              </th>
            </tr>
          </thead>
          <tbody>
            {criteria.map(({ id, label, gate, measure, weight, valueFunction }, index) => (
              <tr key={id}>
                <th scope="row">{label}</th>
                <td>{gate.kind === "none" ? "none" : gateInWords(gate, measure.dimension, units)}</td>
                <td className="number">{valueFunction.kind === "none" ? "not scored" : weight}</td>
                <td className="number">{formatShare(shares[index] ?? 0)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </Scroller>
      <h3>How figures become values</h3>
      <p>
        {bids.length === 0
          ? "Each line runs from 0 to 100 points. The bids will stand on it by their letters once they are entered."
          : "Each line runs from 0 to 100 points. The letters show where the bids’ figures stand on it."}
      </p>
      <ValueCurves criteria={criteria} bids={bids} units={units} />
    </section>
  );
}
