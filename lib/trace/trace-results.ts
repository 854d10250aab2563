import { impactSpeed } from "#lib/claim";
import { type Figure, figureFromInterval, known, unknown, type Working, type WorkingInput } from "#lib/figure";
import { type DisplayUnit, formatValue, type In, measured } from "#lib/quantity";
import { aboveBaseline, type Baseline, baseline, type LeadIn } from "./baseline";
import { type ChannelClass, filteredTrace, samplingFor } from "./channel-filter";
import { type CriterionWindow, type HeadInjuryCriterion, headInjuryCriterion } from "./head-injury-criterion";
import type { Pulse, Trace } from "./model";
import { penetration, type Stop, speedChange } from "./motion";
import { impactPulse } from "./pulse";
import { type SpeedAgreement, speedAgreement, speedFromFall, speedsThatFit } from "./speed-agreement";

/** How times of an impact are shown. */
export const impactTimeShown = { unit: "ms", decimals: 2 } as const satisfies DisplayUnit;

/** What is to be found from a trace, and by which settings of the method. */
export type TraceQuestion = Readonly<{
  /** The class the method asks for; "unfiltered" where the recorder has filtered already. */
  filter: ChannelClass | "unfiltered";
  leadIn: LeadIn;
  /** Null where nobody states it; then neither rebound nor penetration can be told. */
  dropHeight: In<"m"> | null;
  criterionWindow: CriterionWindow;
}>;

export type TraceResults = Readonly<{
  /** The trace that the figures are read from: filtered, baseline removed. */
  trace: Trace;
  baseline: Baseline;
  pulse: Pulse | null;
  criterionInterval: HeadInjuryCriterion;
  peakLevel: Figure<"impactLevel">;
  headInjuryCriterion: Figure<"number">;
  pulseDuration: Figure<"time">;
  /** Speed before plus speed of the rebound. */
  velocityChange: Figure<"velocity">;
  /** By the trace alone. */
  impactVelocity: Figure<"velocity">;
  agreement: SpeedAgreement;
  reboundVelocity: Figure<"velocity">;
  penetration: Figure<"length">;
  energyReturned: Figure<"fraction">;
  /** What a reader of the figures has to know, in sentences. */
  notes: readonly string[];
}>;

const fromTrace = (label: string, text: string): WorkingInput => ({
  label,
  text,
  from: { kind: "figure", figure: "impact-trace" },
});
const given = (label: string, text: string): WorkingInput => ({
  label,
  text,
  from: { kind: "requirements", field: "method" },
});
const grams = (level: number) => formatValue("impactLevel", measured("impactLevel", level), { unit: "g", decimals: 1 });
const speedText = (speed: In<"m/s">) =>
  `${formatValue("velocity", speed, "us")} (${formatValue("velocity", speed, "metric")})`;
const lengthText = (length: In<"m">) =>
  `${formatValue("length", length, "us")} (${formatValue("length", length, "metric")})`;
const timeText = (time: number) => formatValue("time", measured("time", time), impactTimeShown);

const gravityNote =
  "The sensor reads 0 g in free fall and 1 g at rest, so the missile is slowed down by its reading less 1 g.";

/** Everything a trace tells, each figure with its working. */
export function traceResults(recorded: Trace, question: TraceQuestion): TraceResults {
  const smooth = question.filter === "unfiltered" ? recorded : filteredTrace(recorded, question.filter);
  const found = baseline(smooth, question.leadIn);
  const trace = aboveBaseline(smooth, found);
  const pulse = impactPulse(trace);
  const criterion = headInjuryCriterion(trace, question.criterionWindow);
  const shared = sharedAssumptions(question, recorded, found);
  return {
    trace,
    baseline: found,
    pulse,
    criterionInterval: criterion,
    peakLevel: peakFigure(trace, pulse, shared),
    headInjuryCriterion: criterionFigure(criterion, question.criterionWindow, shared),
    ...motionFigures(trace, pulse, found, question, shared),
    notes: [...shared.slice(1), ...pulseNotes(trace, pulse)],
  };
}

/** The steps before any figure is read off, in words: filter, sampling, baseline. */
function sharedAssumptions(question: TraceQuestion, { interval }: Trace, found: Baseline): readonly string[] {
  const { filter } = question;
  const slow = filter !== "unfiltered" && samplingFor(filter, interval) === "slower-than-the-class-asks";
  return [
    filter === "unfiltered"
      ? "The trace is taken as it stands, without a filter."
      : `The trace went through the low-pass filter of channel frequency class ${filter} of SAE J211-1, forwards and backwards.`,
    ...(slow
      ? [
          `The trace has ${Math.round(1 / interval).toLocaleString("en-US")} samples a second; class ${filter} asks for ${(10 * filter).toLocaleString("en-US")}, so peaks may be cut.`,
        ]
      : []),
    baselineInWords(found),
  ];
}

function baselineInWords(found: Baseline): string {
  if (found.kind === "removed")
    return `The mean of ${found.samples} samples before the impact, ${grams(found.level)}, counts as zero; they scatter by ${grams(found.noise)} (standard deviation).`;
  return found.because === "too-few-quiet-samples"
    ? `Only ${found.quietSamples} quiet samples come before the impact, too few for a zero; levels are taken as recorded.`
    : "No fall of 1 g was found before the impact, so the release is not known; levels are taken as recorded.";
}

function pulseNotes({ levels }: Trace, pulse: Pulse | null): readonly string[] {
  const lowest = Math.min(
    0,
    ...levels.slice(0, 1),
    levels.reduce((least, level) => Math.min(least, level), 0),
  );
  const highest = levels.reduce((most, level) => Math.max(most, level), 0);
  return [
    ...(-lowest > highest
      ? ["The strongest reading is below zero. If the sensor is mounted upside down, turn the trace over."]
      : []),
    ...(pulse !== null && pulse.recorded !== "whole"
      ? ["The trace does not hold the whole pulse, so duration, speeds and penetration can't be told."]
      : []),
  ];
}

function peakFigure(trace: Trace, pulse: Pulse | null, assumptions: readonly string[]): Figure<"impactLevel"> {
  if (pulse === null) return unknown("impactLevel", { kind: "missing-input", what: "a trace that shows an impact" });
  const level = trace.levels[pulse.peak] ?? measured("impactLevel", 0);
  return known("impactLevel", level, {
    formula: "G-max = highest sample above the baseline",
    inputs: [fromTrace("time of the highest sample", timeText(pulse.peak * trace.interval))],
    assumptions,
    source: "definition of G-max as in ASTM F355, from memory",
  });
}

const windowNames: Readonly<Record<CriterionWindow, string>> = {
  "any-length": "of any length",
  "15-ms": "of at most 15 ms",
  "36-ms": "of at most 36 ms",
};

function criterionFigure(
  { value, from, to, meanLevel }: HeadInjuryCriterion,
  window: CriterionWindow,
  assumptions: readonly string[],
): Figure<"number"> {
  return known("number", measured("number", value), {
    formula: "criterion = largest (t₂ − t₁) · (mean level from t₁ to t₂)^2.5, times in s, levels in g",
    inputs: [
      fromTrace("from t₁ to t₂", `${timeText(from)} to ${timeText(to)}`),
      fromTrace("mean level between them", grams(meanLevel)),
    ],
    assumptions: [
      ...assumptions,
      `All intervals ${windowNames[window]} between two samples were searched; levels between samples lie on straight lines.`,
      "It means something for a head-shaped missile only, and it neither predicts nor rules out injury.",
    ],
    source: "definition as in ASTM F1292 and EN 1177, from memory",
  });
}

type MotionFigures = Pick<
  TraceResults,
  | "pulseDuration"
  | "velocityChange"
  | "impactVelocity"
  | "agreement"
  | "reboundVelocity"
  | "penetration"
  | "energyReturned"
>;

function motionFigures(
  trace: Trace,
  pulse: Pulse | null,
  found: Baseline,
  { dropHeight }: TraceQuestion,
  assumptions: readonly string[],
): MotionFigures {
  if (pulse === null || pulse.recorded !== "whole") {
    const because = { kind: "missing-input", what: "a trace that holds the whole pulse" } as const;
    return {
      pulseDuration: unknown("time", because),
      velocityChange: unknown("velocity", because),
      impactVelocity: unknown("velocity", because),
      agreement: { kind: "not-to-be-told", why: "The trace does not hold the whole pulse." },
      reboundVelocity: unknown("velocity", because),
      penetration: unknown("length", because),
      energyReturned: unknown("fraction", because),
    };
  }
  const change = speedChange(trace, pulse);
  const speeds = speedsThatFit(change);
  const fall = speedFromFall(trace, pulse, found);
  const agreement = speedAgreement(dropHeight, speeds, fall);
  const duration: Working = {
    formula: "duration = time between the last rise through the threshold and the first fall through it",
    inputs: [
      fromTrace("threshold", grams(pulse.threshold)),
      fromTrace("onset", timeText(pulse.onset * trace.interval)),
      fromTrace("end", timeText(pulse.end * trace.interval)),
    ],
    assumptions: [...assumptions, "The threshold is 2 % of G-max, and at least 1 g: our stated convention."],
    source: "our stated convention: no method in reach prescribes it",
  };
  const integral: Working = {
    formula: "change of speed = g₀ · ∫ (level − 1 g) dt over the pulse, g₀ = 9.80665 m/s²",
    inputs: [fromTrace("duration of the pulse", timeText(change.duration))],
    assumptions: [...assumptions, gravityNote, "It is the speed of impact plus the speed of the rebound."],
    source: "derived from the definition of acceleration",
  };
  return {
    pulseDuration: known("time", change.duration, duration),
    velocityChange: known("velocity", change.change, integral),
    impactVelocity:
      fall === null
        ? figureFromInterval("velocity", speeds, {
            ...integral,
            formula: "half the change of speed ≤ speed of impact ≤ change of speed",
            inputs: [fromTrace("change of speed", speedText(change.change))],
            assumptions: [
              ...integral.assumptions,
              "A surface gives back no more speed than it takes, and at the end of contact it stands no higher than at its beginning.",
            ],
          })
        : known("velocity", fall, {
            formula: "speed of impact = g₀ · time from the release to the onset of the pulse",
            inputs: [fromTrace("time of fall", timeText(fall / 9.80665))],
            assumptions: [...assumptions, "The missile falls without friction."],
            source: "derived from free fall",
          }),
    agreement,
    ...afterImpact(trace, pulse, change.change, dropHeight, agreement, assumptions),
  };
}

/** Rebound, penetration and returned energy, which all need the speed of impact. */
function afterImpact(
  trace: Trace,
  pulse: Pulse,
  change: In<"m/s">,
  dropHeight: In<"m"> | null,
  agreement: SpeedAgreement,
  assumptions: readonly string[],
): Pick<TraceResults, "reboundVelocity" | "penetration" | "energyReturned"> {
  const because =
    dropHeight === null
      ? ({ kind: "missing-input", what: "the drop height" } as const)
      : ({
          kind: "outside-validity",
          what: "motion after the impact",
          reason: explainDisagreement(agreement),
        } as const);
  const speed = dropHeight === null ? null : impactSpeed(dropHeight);
  const stop: Stop | null = speed === null ? null : penetration(trace, pulse, speed);
  if (dropHeight === null || speed === null || stop === null || agreement.kind !== "agrees")
    return {
      reboundVelocity: unknown("velocity", because),
      penetration: unknown("length", because),
      energyReturned: unknown("fraction", because),
    };
  const rebound = measured("velocity", Math.min(Math.max(0, change - speed), speed));
  const inputs = [
    given("drop height", lengthText(dropHeight)),
    fromTrace("speed of impact, √(2 · g₀ · drop height)", speedText(speed)),
    fromTrace("change of speed", speedText(change)),
  ];
  const all = [...assumptions, gravityNote, "The missile falls without friction."];
  return {
    reboundVelocity: known("velocity", rebound, {
      formula: "speed of the rebound = change of speed − speed of impact",
      inputs,
      assumptions: all,
      source: "derived from the definition of acceleration",
    }),
    penetration: known("length", stop.depth, {
      formula: "penetration = ∫∫ motion from the onset to the stop, starting at the speed of impact",
      inputs: [...inputs.slice(0, 2), fromTrace("time from the onset to the stop", timeText(stop.afterOnset))],
      assumptions: [...all, "It is the way of the missile after the onset, fibres and loose infill included."],
      source: "derived: double integration of the trace",
    }),
    energyReturned: known("fraction", measured("fraction", (rebound / speed) ** 2), {
      formula: "energy returned = (speed of the rebound ÷ speed of impact)²",
      inputs: [...inputs.slice(1), fromTrace("speed of the rebound", speedText(rebound))],
      assumptions: all,
      source: "derived from kinetic energy",
    }),
  };
}

const explainDisagreement = (agreement: SpeedAgreement): string =>
  "why" in agreement ? agreement.why : "the trace does not stop a missile from that height.";
