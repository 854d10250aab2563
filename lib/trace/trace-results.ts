import { type Figure, known, unknown } from "#lib/figure";
import { type In, measured } from "#lib/quantity";
import { aboveBaseline, type Baseline, baseline, type LeadIn } from "./baseline";
import { type ChannelClass, filteredTrace, samplingFor } from "./channel-filter";
import { type CriterionWindow, type HeadInjuryCriterion, headInjuryCriterion } from "./head-injury-criterion";
import type { Pulse, Trace } from "./model";
import { type MotionFigures, motionFigures } from "./motion-figures";
import { impactPulse } from "./pulse";
import { fromTrace, gramsText, timeText } from "./trace-inputs";

/** What is to be found from a trace, and by which settings of the method. */
export type TraceQuestion = Readonly<{
  /** The class the method asks for; "unfiltered" where the recorder has filtered already. */
  filter: ChannelClass | "unfiltered";
  leadIn: LeadIn;
  /** Null where nobody states it; then neither rebound nor penetration can be told. */
  dropHeight: In<"m"> | null;
  criterionWindow: CriterionWindow;
}>;

export type TraceResults = MotionFigures &
  Readonly<{
    /** The trace that the figures are read from: filtered, baseline removed. */
    trace: Trace;
    baseline: Baseline;
    pulse: Pulse | null;
    criterionInterval: HeadInjuryCriterion;
    peakLevel: Figure<"impactLevel">;
    headInjuryCriterion: Figure<"number">;
    /** What a reader of the figures has to know, in sentences. */
    notes: readonly string[];
  }>;

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
    ...motionFigures(trace, pulse, found, question.dropHeight, shared),
    notes: [...shared, ...pulseNotes(trace, pulse)],
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
    return `The mean of ${found.samples} samples before the impact, ${gramsText(found.level)}, counts as zero; they scatter by ${gramsText(found.noise)} (standard deviation).`;
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
      fromTrace("mean level between them", gramsText(meanLevel)),
    ],
    assumptions: [
      ...assumptions,
      `All intervals ${windowNames[window]} between two samples were searched; levels between samples lie on straight lines.`,
      "It means something for a head-shaped missile only, and it neither predicts nor rules out injury.",
    ],
    source: "definition as in ASTM F1292 and EN 1177, from memory",
  });
}
