import { formatValue, type In } from "#lib/quantity";
import type { ImpactRequirement } from "./model";
import { type DepthDeviation, depthSpread } from "./spread/depth-spread";

/** Infill depths over an installed field, all of one day. */
export type DepthGrid = Readonly<{ date: string; depths: readonly In<"m">[] }>;

/** What a measured grid makes of the spread, and a sentence that says so. */
export type GridSpread = Readonly<{ kind: "counts"; deviation: DepthDeviation; sentence: string }>;
export type NoGrid = Readonly<{ kind: "does-not-count"; sentence: string | null }>;

/** Chance that the deviation lies between its ends, both sides together. */
const gridChance = 0.9;

/** Whether the owner lets a measured grid set the spread, and whether there is one that can. */
export function gridSpread(
  { outlook = {} }: Pick<ImpactRequirement, "outlook">,
  grid: DepthGrid | null,
): GridSpread | NoGrid {
  if (outlook.installedSpread !== "depth-grid") return { kind: "does-not-count", sentence: null };
  if (grid === null) return { kind: "does-not-count", sentence: noGrid };
  const found = depthSpread(grid.depths, gridChance);
  if (found.kind === "not-enough") {
    return { kind: "does-not-count", sentence: `The depths measured on ${grid.date} don’t count. ${found.reason}` };
  }
  const { deviation, range, count } = found;
  const [us, metric] = (["us", "metric"] as const).map((system) => formatValue("length", deviation, system));
  return {
    kind: "counts",
    deviation: { low: range.low, likely: deviation, high: range.high },
    sentence: `Infill depth differs from spot to spot with a standard deviation of ${us} (${metric}), measured on ${grid.date} at ${count} spots of the installed field; that grid counts.`,
  };
}

const noGrid =
  "No depths were measured on an installed field of this system, so what the owner set for all bids counts.";
