import { formatShare } from "#lib/evaluation";
import type { UnitSystem } from "#lib/quantity";
import { CriterionCurve } from "../../_components/criterion-curve";
import type { JudgedBid } from "../../_components/judged-bids";
import styles from "../../_components/value-curve.module.css";

/** How figures turn into values, one small drawing a criterion. */
export function ValueCurves({ bids, units }: { bids: readonly JudgedBid[]; units: UnitSystem }) {
  const criteria = bids[0]?.criteria ?? [];
  return (
    <div className={styles.multiples}>
      {criteria.map(({ score: { criterion, share } }, row) =>
        criterion.valueFunction.kind === "none" ? null : (
          <CriterionCurve
            key={criterion.id}
            row={row}
            rule={criterion.valueFunction}
            dimension={criterion.measure.dimension}
            name={criterion.label}
            caption={
              <>
                <strong>{criterion.label}</strong>, {formatShare(share)} of the weight
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
