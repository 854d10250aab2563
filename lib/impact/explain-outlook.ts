import { explainShortfall } from "#lib/figure";
import { formatValue, measured } from "#lib/quantity";
import { ageInWords } from "./age-in-words";
import type { FittedDrift, HardnessOutlook, YearOrOpen } from "./model";

type Known = Extract<HardnessOutlook, { kind: "outlook" }>;

/** The outlook in sentences, for the text beside a chart: what it rests on, then when it leaves limit and window. */
export function explainOutlook(outlook: HardnessOutlook): readonly string[] {
  if (outlook.kind === "unknown") return [explainShortfall(outlook.because)];
  const limit = `the limit of ${formatValue("impactLevel", outlook.limit, "us")}`;
  const window = `the target window, ${formatValue("impactLevel", outlook.softest, "us")},`;
  return [
    premiseSentence(outlook),
    ...limitSentence(outlook.firstYearLikelyAbove, "The likely level", limit),
    ...limitSentence(outlook.firstYearPossiblyAbove, "The hard side of the range", limit),
    ...windowSentence(outlook.firstYearLikelyTooSoft, "The likely level", window),
    ...windowSentence(outlook.firstYearPossiblyTooSoft, "The soft side of the range", window),
    ...(outlook.firstYearPossiblyAbove.kind === "open-side" ? [openSentence("upper", "hard")] : []),
    ...(outlook.firstYearPossiblyTooSoft.kind === "open-side" ? [openSentence("lower", "soft")] : []),
  ];
}

const openSentence = (side: string, how: string): string =>
  `Not every level is stated with its ${side} side, so nothing says how ${how} it may be.`;

function premiseSentence({ drift, ages }: Known): string {
  switch (drift.kind) {
    case "fitted":
      return `Fitted to ${drift.points.length} levels in the bid${onFields(drift)}, at ages from ${ageInWords(ages.youngest)} to ${ageInWords(ages.oldest)} years; outside those ages the line is extrapolated.`;
    case "not-enough-points":
      return `The yearly change is the owner's assumption. ${drift.reason}`;
  }
}

function onFields({ fieldsApart }: FittedDrift): string {
  if (fieldsApart.kind === "pooled") return "";
  const between = formatValue("impactLevel", measured("impactLevel", fieldsApart.betweenFields), "us");
  return `, ${fieldsApart.named} fields named (spread from field to field ${between})`;
}

/** Nothing where the side is open. */
function limitSentence(found: YearOrOpen, subject: string, limit: string): readonly string[] {
  switch (found.kind) {
    case "known":
      return [
        found.year === 0
          ? `${subject} is at or above ${limit} as new.`
          : `${subject} first reaches ${limit} in year ${found.year}.`,
      ];
    case "not-within-horizon":
      return [`${subject} stays below ${limit} through year ${found.horizon}.`];
    case "open-side":
      return [];
  }
}

/** Nothing where the side is open. */
function windowSentence(found: YearOrOpen, subject: string, window: string): readonly string[] {
  switch (found.kind) {
    case "known":
      return [
        found.year === 0
          ? `${subject} falls below ${window} as new.`
          : `${subject} first falls below ${window} in year ${found.year}.`,
      ];
    case "not-within-horizon":
      return [`${subject} does not fall below ${window} through year ${found.horizon}.`];
    case "open-side":
      return [];
  }
}
