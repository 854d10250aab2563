import { type Interval, type Span, tagged } from "#lib/quantity";
import { massShare } from "./mass-share";
import type { InfillComponent, InfillSystem } from "./model";

/** Elastic granules of a component by mass: all of a polymer, what is not mineral of a blend, nothing of the rest. */
function elasticShare({ material }: InfillComponent): Span {
  switch (material.class) {
    case "polymer":
      return { low: 1, high: 1 };
    case "blend":
      return { low: 1 - material.mineralShare.high, high: 1 - material.mineralShare.low };
    case "mineral":
    case "organic":
      return { low: 0, high: 0 };
  }
}

/** Share of the infill's mass that is rubber or another elastic granule; null where no infill is claimed. */
export function polymerShare(system: InfillSystem): Interval<"1"> | null {
  const share = massShare(system, elasticShare);
  return share === null ? null : tagged("fraction", share);
}
