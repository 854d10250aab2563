import { impactSpeed } from "#lib/claim";
import { formatInterval, formatValue, type In, type Interval, measured } from "#lib/quantity";
import type { Baseline } from "./baseline";
import { type Pulse, standardGravity, type Trace } from "./model";
import type { SpeedChange } from "./motion";

/**
 * Speeds of impact that fit a change of speed. A surface that gives nothing back takes all of it from the fall; one that
 * gives everything back takes half; and the missile leaves no higher than where it met the surface.
 */
export const speedsThatFit = ({ change, heldBack, duration }: SpeedChange): Interval<"m/s"> => {
  const noHigher = duration > 0 ? heldBack / duration : 0;
  return {
    low: measured("velocity", Math.min(change, Math.max(change / 2, noHigher))),
    high: change,
  };
};

/** Speed of impact in m/s from the time between release and onset; null where the trace does not show the release. */
export function speedFromFall({ interval }: Trace, { onset }: Pulse, found: Baseline): In<"m/s"> | null {
  if (found.kind === "not-removed" || found.release === null) return null;
  return measured("velocity", standardGravity * (onset - found.release + 0.5) * interval);
}

/** How far a speed from the trace may differ from √(2gh). @source our stated convention: room for calibration and friction */
const speedTolerance = 0.03;

/** Whether the trace and the stated drop height can belong to one impact. */
export type SpeedAgreement = Readonly<
  | { kind: "agrees"; why: string }
  | { kind: "trace-too-weak"; why: string }
  | { kind: "trace-too-strong"; why: string }
  | { kind: "not-to-be-told"; why: string }
>;

const both = (speed: In<"m/s">) =>
  `${formatValue("velocity", speed, "us")} (${formatValue("velocity", speed, "metric")})`;
const bothEnds = (speeds: Interval<"m/s">) =>
  `${formatInterval("velocity", speeds, "us")} (${formatInterval("velocity", speeds, "metric")})`;

/** Holds √(2 · g₀ · drop height) against the speed by the trace. */
export function speedAgreement(
  dropHeight: In<"m"> | null,
  fitting: Interval<"m/s">,
  fall: In<"m/s"> | null,
): SpeedAgreement {
  if (dropHeight === null) return { kind: "not-to-be-told", why: "No drop height is stated." };
  const stated = impactSpeed(dropHeight);
  const speeds = fall === null ? fitting : { low: fall, high: fall };
  const asks = `The drop height gives ${both(stated)} at impact; the trace fits ${bothEnds(speeds)}`;
  if (stated > speeds.high * (1 + speedTolerance))
    return {
      kind: "trace-too-weak",
      why: `${asks}, which is less. Check the calibration, the drop height and whether the whole pulse was recorded.`,
    };
  if (stated < speeds.low * (1 - speedTolerance))
    return { kind: "trace-too-strong", why: `${asks}, which is more. Check the calibration and the drop height.` };
  const tolerance = `${speedTolerance * 100} %`;
  return {
    kind: "agrees",
    why:
      fall === null
        ? `${asks}, as the rebound is not measured: the stated one lies there, give or take ${tolerance}.`
        : `${asks}: they agree within ${tolerance}.`,
  };
}
