import type { Claim } from "#lib/claim";
import { deviationsCounted } from "#lib/criteria";
import type { Distribution } from "#lib/sampling";

/**
 * How a claimed figure scatters where the bid says more than its ends: around one number by the standard deviation of the
 * report, or mostly near the middle of “±”.
 * @source “±” as a triangle: JCGM 100:2008, 4.3.9, for bounds near which values are less likely
 */
export function claimSpread({ value, spread }: Claim): Distribution | null {
  if (value.kind !== "quantity") return null;
  const { reading } = value.quantity;
  if (reading.kind === "exact")
    return spread === null || spread.deviation === 0
      ? null
      : { kind: "normal", mean: reading.value, deviation: spread.deviation };
  if (reading.kind !== "plus-or-minus" || reading.tolerance === 0) return null;
  const { value: likely, tolerance } = reading;
  return { kind: "triangular", low: likely - tolerance, likely, high: likely + tolerance };
}

/** The same for a working: how a score and a gate take the figure, and what is drawn where chances are asked for. */
export function claimSpreadInWords({ value, spread }: Claim): readonly string[] {
  if (value.kind !== "quantity") return [];
  const { kind } = value.quantity.reading;
  if (kind === "range")
    return ["Every value of the range counts alike where chances are drawn (JCGM 100:2008, 4.3.7)."];
  if (kind === "plus-or-minus")
    return [
      "What stands behind “±” is taken as its ends. Where chances are drawn, values near the middle are likelier (JCGM 100:2008, 4.3.9).",
    ];
  return spread === null
    ? []
    : [
        `The report states a standard deviation of ${spread.asEntered}. A score takes the figure with ${deviationsCounted} of them to both sides, about 19 of 20 results (JCGM 100:2008, 6.3); a gate takes it as stated.`,
      ];
}
