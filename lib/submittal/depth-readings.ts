import { studentFactor } from "#lib/impact";
import { type In, measured } from "#lib/quantity";

/** What readings of infill depth say of the average of the whole field. Lengths in m. */
export type DepthReadings = Readonly<
  | { kind: "too-few"; readings: number }
  | {
      kind: "known";
      readings: number;
      mean: In<"m">;
      deviation: In<"m">;
      /** Between these the average of the field lies with the confidence asked for. */
      low: In<"m">;
      high: In<"m">;
      verdict: "as wanted" | "short" | "over" | "not decided";
      /** Readings that lie beyond the tolerance of a single place. */
      beyond: number;
      /** Readings with which half the width shrinks to the tolerance of the average, as unlike as these; 100,000 for that many or more. */
      readingsNeeded: number;
    }
>;

/** The depth that is wanted, with tolerances of the average and of a single place, in m. */
export type WantedDepth = Readonly<{ depth: In<"m">; average: In<"m">; place: In<"m"> }>;

/** Most readings that are thought of. */
const mostReadings = 100_000;

/** The fewest readings with which half the width is at most so much; found by halving, as it only shrinks with more. */
function readingsFor(halfWidth: number, deviation: number, confidence: number): number {
  const isEnough = (readings: number) =>
    studentFactor(confidence, readings - 1) * deviation <= halfWidth * Math.sqrt(readings);
  let [few, enough] = [1, mostReadings];
  while (enough - few > 1) {
    const middle = Math.floor((few + enough) / 2);
    if (isEnough(middle)) enough = middle;
    else few = middle;
  }
  return enough;
}

/**
 * Average infill depth of the field with its confidence interval, against the depth wanted. It takes readings as made at
 * places chosen without regard to what lies there; readings of low places only say nothing of the average.
 * @param confidence above 0 and below 1, usually 0.95
 * @source interval of a mean by Student's t: NIST/SEMATECH e-Handbook 1.3.5.2
 */
export function depthReadings(readings: readonly In<"m">[], wanted: WantedDepth, confidence = 0.95): DepthReadings {
  const count = readings.length;
  if (count < 2) return { kind: "too-few", readings: count };
  const mean = readings.reduce((sum, depth) => sum + depth, 0) / count;
  const deviation = Math.sqrt(readings.reduce((sum, depth) => sum + (depth - mean) ** 2, 0) / (count - 1));
  const half = (studentFactor(confidence, count - 1) * deviation) / Math.sqrt(count);
  const [low, high] = [mean - half, mean + half];
  const rounding = 1e-12;
  const [least, most] = [wanted.depth - wanted.average - rounding, wanted.depth + wanted.average + rounding];
  return {
    kind: "known",
    readings: count,
    mean: measured("length", mean),
    deviation: measured("length", deviation),
    low: measured("length", low),
    high: measured("length", high),
    verdict: high < least ? "short" : low > most ? "over" : low >= least && high <= most ? "as wanted" : "not decided",
    beyond: readings.filter((depth) => Math.abs(depth - wanted.depth) > wanted.place + rounding).length,
    readingsNeeded: readingsFor(wanted.average, deviation, confidence),
  };
}
