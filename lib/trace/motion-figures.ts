import { impactSpeed } from "#lib/claim";
import { type Figure, figureFromInterval, known, type Shortfall, unknown, type Working } from "#lib/figure";
import { type In, measured } from "#lib/quantity";
import type { Baseline } from "./baseline";
import { type Pulse, standardGravity, type Trace } from "./model";
import { penetration, type SpeedChange, speedChange } from "./motion";
import { type SpeedAgreement, speedAgreement, speedFromFall, speedsThatFit } from "./speed-agreement";
import { fromTrace, gramsText, lengthText, speedText, timeText } from "./trace-inputs";

/** What a trace says of the way of the missile. */
export type MotionFigures = Readonly<{
  pulseDuration: Figure<"time">;
  /** Speed before plus speed of the rebound. */
  velocityChange: Figure<"velocity">;
  /** By the trace alone: from the time of fall where the release was recorded, else a range. */
  impactVelocity: Figure<"velocity">;
  /** Whether the trace and √(2 · g₀ · drop height) can belong together. */
  agreement: SpeedAgreement;
  reboundVelocity: Figure<"velocity">;
  penetration: Figure<"length">;
  energyReturned: Figure<"fraction">;
}>;

/** What the figures are made of. */
type Impact = Readonly<{
  trace: Trace;
  pulse: Pulse;
  change: SpeedChange;
  /** What was done to the trace before, in sentences. */
  assumptions: readonly string[];
}>;

const gravityNote =
  "The sensor reads 0 g in free fall and 1 g at rest, so the missile is slowed down by its reading less 1 g.";
const withoutFriction = "The missile falls without friction.";

/** Duration, speeds, penetration and returned energy, each with its working. */
export function motionFigures(
  trace: Trace,
  pulse: Pulse | null,
  found: Baseline,
  dropHeight: In<"m"> | null,
  assumptions: readonly string[],
): MotionFigures {
  if (pulse === null || pulse.recorded !== "whole") return withoutPulse;
  const impact = { trace, pulse, change: speedChange(trace, pulse), assumptions };
  const fall = speedFromFall(trace, pulse, found);
  const agreement = speedAgreement(dropHeight, speedsThatFit(impact.change), fall);
  return {
    pulseDuration: durationFigure(impact),
    velocityChange: known("velocity", impact.change.change, integralWorking(impact)),
    impactVelocity: fall === null ? fittingSpeeds(impact) : speedByFall(impact, fall),
    agreement,
    ...afterImpact(impact, dropHeight, agreement),
  };
}

const noPulse = { kind: "missing-input", what: "a trace that holds the whole pulse" } as const satisfies Shortfall;

const afterImpactUnknown = (because: Shortfall) => ({
  reboundVelocity: unknown("velocity", because),
  penetration: unknown("length", because),
  energyReturned: unknown("fraction", because),
});

const withoutPulse: MotionFigures = {
  pulseDuration: unknown("time", noPulse),
  velocityChange: unknown("velocity", noPulse),
  impactVelocity: unknown("velocity", noPulse),
  agreement: { kind: "not-to-be-told", why: "The trace does not hold the whole pulse." },
  ...afterImpactUnknown(noPulse),
};

const durationFigure = ({ trace, pulse, change, assumptions }: Impact): Figure<"time"> =>
  known("time", change.duration, {
    formula: "duration = time between the last rise through the threshold and the first fall through it",
    inputs: [
      fromTrace("threshold", gramsText(pulse.threshold)),
      fromTrace("onset", timeText(pulse.onset * trace.interval)),
      fromTrace("end", timeText(pulse.end * trace.interval)),
    ],
    assumptions: [...assumptions, "The threshold is 2 % of G-max, and at least 1 g."],
    source: "our stated convention: no method in reach prescribes it",
  });

const integralWorking = ({ change, assumptions }: Impact): Working => ({
  formula: "change of speed = g₀ · ∫ (level − 1 g) dt over the pulse, g₀ = 9.80665 m/s²",
  inputs: [fromTrace("duration of the pulse", timeText(change.duration))],
  assumptions: [...assumptions, gravityNote, "It is the speed of impact plus the speed of the rebound."],
  source: "derived from the definition of acceleration",
});

const fittingSpeeds = (impact: Impact): Figure<"velocity"> =>
  figureFromInterval("velocity", speedsThatFit(impact.change), {
    ...integralWorking(impact),
    formula: "half the change of speed ≤ speed of impact ≤ change of speed",
    inputs: [fromTrace("change of speed", speedText(impact.change.change))],
    assumptions: [
      ...impact.assumptions,
      gravityNote,
      "A surface gives back no more speed than it takes, and at the end of contact it stands no higher than at its beginning.",
    ],
  });

const speedByFall = ({ assumptions }: Impact, fall: In<"m/s">): Figure<"velocity"> =>
  known("velocity", fall, {
    formula: "speed of impact = g₀ · time from the release to the onset of the pulse",
    inputs: [fromTrace("time of fall", timeText(fall / standardGravity))],
    assumptions: [...assumptions, withoutFriction],
    source: "derived from free fall",
  });

type AfterImpact = Pick<MotionFigures, "reboundVelocity" | "penetration" | "energyReturned">;

/** Rebound, penetration and returned energy, which all need the speed of impact. */
function afterImpact(impact: Impact, dropHeight: In<"m"> | null, agreement: SpeedAgreement): AfterImpact {
  if (dropHeight === null) return afterImpactUnknown({ kind: "missing-input", what: "the drop height" });
  const refused = (reason: string) =>
    afterImpactUnknown({ kind: "outside-validity", what: "motion after the impact", reason });
  if (agreement.kind !== "agrees") return refused(agreement.why);
  const { trace, pulse, change, assumptions } = impact;
  const speed = impactSpeed(dropHeight);
  const stop = penetration(trace, pulse, speed);
  if (stop === null || change.change > 2 * speed)
    return refused("it hangs on the calibration of the sensor, because the trace only just fits the drop height.");
  const rebound = measured("velocity", change.change - speed);
  const height = {
    label: "drop height",
    text: lengthText(dropHeight),
    from: { kind: "given-here" },
  } as const;
  const arrival = fromTrace("speed of impact, √(2 · g₀ · drop height)", speedText(speed));
  const all = [...assumptions, gravityNote, withoutFriction];
  return {
    reboundVelocity: known("velocity", rebound, {
      formula: "speed of the rebound = change of speed − speed of impact",
      inputs: [height, arrival, fromTrace("change of speed", speedText(change.change))],
      assumptions: all,
      source: "derived from the definition of acceleration",
    }),
    penetration: known("length", stop.depth, {
      formula: "penetration = ∫∫ motion from the onset to the stop, starting at the speed of impact",
      inputs: [height, arrival, fromTrace("time from the onset to the stop", timeText(stop.afterOnset))],
      assumptions: [...all, "It is the way of the missile after the onset, fibres and loose infill included."],
      source: "derived: double integration of the trace",
    }),
    energyReturned: known("fraction", measured("fraction", (rebound / speed) ** 2), {
      formula: "energy returned = (speed of the rebound ÷ speed of impact)²",
      inputs: [arrival, fromTrace("speed of the rebound", speedText(rebound))],
      assumptions: all,
      source: "derived from kinetic energy",
    }),
  };
}
