import type { HardnessOutlook } from "#lib/impact";
import { measured } from "#lib/quantity";

/** Scatter below this can't be read off a test report, which gives whole g. @source derived from rounding to 1 g */
const readableScatter = measured("impactLevel", 0.05);

/** With that many levels or more a line needs no remark. @source common practice, no source */
const enoughLevels = 6;

const levels = (count: number): string => (count === 1 ? "one level" : `${count} levels`);

/** How little stands behind an outlook, in sentences; none where enough does. */
export function standingBehind(outlook: HardnessOutlook): readonly string[] {
  if (outlook.kind === "unknown") return [];
  const { drift, ages } = outlook;
  if (drift.kind === "not-enough-points") {
    const at = ages.youngest === ages.oldest ? `one age, ${ages.youngest} years` : "too few ages";
    const where = ages.youngest === 0 && ages.oldest === 0 ? "the new surface alone" : at;
    return [
      `The levels that are used come from ${where}. How fast this surface hardens is not shown, so the band says what the owner assumes and nothing about this bid.`,
    ];
  }
  const exact = drift.residualDeviation < readableScatter && drift.points.every(({ halfWidth }) => halfWidth === 0);
  return [
    ...(exact
      ? [
          "The stated levels lie exactly on a straight line, so the band has no width. Test results scatter; a band without width shows no certainty. Ask for the single results.",
        ]
      : []),
    ...(drift.fieldsApart.kind === "pooled" ? [drift.fieldsApart.reason] : []),
    ...(drift.points.length < enoughLevels
      ? [
          `Only ${levels(drift.points.length)} stand behind the line (${Number(drift.degreesOfFreedom.toFixed(1))} ${drift.degreesOfFreedom === 1 ? "degree" : "degrees"} of freedom), so one more test can move it noticeably.`,
        ]
      : []),
  ];
}
