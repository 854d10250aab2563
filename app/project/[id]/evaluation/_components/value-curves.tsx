import { type Criterion, weightShares } from "#lib/criteria";
import { formatShare } from "#lib/evaluation";
import type { UnitSystem } from "#lib/quantity";
import { CriterionCurve } from "../../_components/criterion-curve";
import type { JudgedBid } from "../../_components/judged-bids";
import styles from "../../_components/value-curve.module.css";

/** How figures turn into values, one small drawing a criterion. */
export function ValueCurves({
  criteria,
  bids,
  units,
}: {
  criteria: readonly Criterion[];
  bids: readonly JudgedBid[];
  units: UnitSystem;
}) {
  const shares = weightShares(criteria);
  return (
    <div className={styles.multiples}>
      {criteria.map((criterion, row) =>
        criterion.valueFunction.kind === "none" ? null : (
          <CriterionCurve
            key={criterion.id}
            row={row}
            rule={criterion.valueFunction}
            measure={criterion.measure}
            name={criterion.label}
            caption={
              <>
                <strong>{criterion.label}</strong>, {formatShare(shares[row] ?? 0)} of the weight
              </>
            }
            bids={bids}
            units={units}
          />
        ),
      )}
    </div>
  );
}
