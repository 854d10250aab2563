import { type Figure, known, unknown, type WorkingInput } from "#lib/figure";
import { formatValue, type In, measured } from "#lib/quantity";
import { fewestTries, largestShare, mostTries } from "./binomial";
import { confidenceBy, toleranceFactor } from "./tolerance-factor";

const percent = (share: number) => formatValue("fraction", measured("fraction", share), { unit: "%", decimals: 0 });
const given = (label: string, text: string): WorkingInput => ({
  label,
  text,
  from: { kind: "given-here" },
});

const atRandom =
  "The locations are drawn at random; a plan that seeks out worn places finds more than their share, so its result is on the safe side.";

/** What is to be shown of a field, and how surely. */
export type ShareQuestion = Readonly<{
  /** Share of the field that may at most lie at or above the limit. */
  share: In<"1">;
  confidence: In<"1">;
}>;

/** How many locations to test so that at most `allowed` at or above the limit show what is asked. */
export function locationsNeeded({ share, confidence }: ShareQuestion, allowed: number): Figure<"count"> {
  const count = fewestTries(allowed, share, confidence);
  if (count === null)
    return unknown("count", {
      kind: "outside-validity",
      what: "the number of locations",
      reason: `more than ${mostTries.toLocaleString("en-US")} would be needed.`,
    });
  return known("count", measured("count", count), {
    formula: "smallest n with Σ over i from 0 to k of C(n, i) · pⁱ · (1 − p)ⁿ⁻ⁱ ≤ 1 − confidence",
    inputs: [
      given("p, share of the field at or above the limit", percent(share)),
      given("confidence", percent(confidence)),
      given("k, locations allowed at or above the limit", `${allowed}`),
    ],
    assumptions: [atRandom],
    source: "exact binomial distribution; Clopper and Pearson (1934)",
  });
}

/** The largest share of the field that can lie at or above the limit after a test, with the given confidence. */
export function shareAboveLimit(tested: number, above: number, confidence: In<"1">): Figure<"fraction"> {
  if (tested === 0) return unknown("fraction", { kind: "missing-input", what: "at least one location with a level" });
  return {
    kind: "at-most",
    dimension: "fraction",
    high: measured("fraction", largestShare(above, tested, confidence)),
    working: {
      formula: "largest p with Σ over i from 0 to k of C(n, i) · pⁱ · (1 − p)ⁿ⁻ⁱ ≥ 1 − confidence",
      inputs: [
        given("n, locations tested", `${tested}`),
        given("k, of them at or above the limit", `${above}`),
        given("confidence", percent(confidence)),
      ],
      assumptions: [atRandom],
      source: "exact binomial distribution; Clopper and Pearson (1934)",
    },
  };
}

/** The level below which at least 1 − share of the field lies, with the given confidence, if its levels are normally distributed. */
export function upperToleranceLimit(levels: readonly In<"g">[], question: ShareQuestion): Figure<"impactLevel"> {
  const count = levels.length;
  if (count < 3)
    return unknown("impactLevel", { kind: "missing-input", what: "the levels of at least three locations" });
  const mean = levels.reduce((sum, level) => sum + level, 0) / count;
  const deviation = Math.sqrt(levels.reduce((sum, level) => sum + (level - mean) ** 2, 0) / (count - 1));
  const factor = toleranceFactor(count, 1 - question.share, question.confidence);
  const grams = (level: number) =>
    formatValue("impactLevel", measured("impactLevel", level), { unit: "g", decimals: 1 });
  return known("impactLevel", measured("impactLevel", mean + factor * deviation), {
    formula: "limit = mean + factor × standard deviation of the locations",
    inputs: [
      { label: "locations", text: `${count}`, from: { kind: "figure", figure: "location-levels" } },
      { label: "mean", text: grams(mean), from: { kind: "figure", figure: "location-levels" } },
      { label: "standard deviation", text: grams(deviation), from: { kind: "figure", figure: "location-levels" } },
      given("one-sided tolerance factor", factor.toFixed(3)),
      given("share of the field that may lie above", percent(question.share)),
      given("confidence", percent(question.confidence)),
    ],
    assumptions: [atRandom, "Levels over the field are normally distributed: look at the spread before relying on it."],
    source: "NIST/SEMATECH e-Handbook 7.2.6.3; ISO 16269-6",
  });
}

/** Locations beyond which the normal form is not searched. */
const mostByNormal = 2000;

/**
 * How many locations the normal form needs where the mean is expected to lie `margin` standard deviations of the
 * locations below the limit.
 */
export function locationsNeededByNormal(question: ShareQuestion, margin: number): Figure<"count"> {
  const { share, confidence } = question;
  const enough = (count: number) => confidenceBy(count, 1 - share)(margin) >= confidence;
  if (!enough(mostByNormal))
    return unknown("count", {
      kind: "outside-validity",
      what: "the number of locations",
      reason: `the mean lies ${margin.toFixed(2)} standard deviations below the limit, too close for any number up to ${mostByNormal.toLocaleString("en-US")}.`,
    });
  let [low, high] = [1, mostByNormal];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (enough(middle)) high = middle;
    else low = middle;
  }
  return known("count", measured("count", high), {
    formula: "smallest n whose one-sided tolerance factor is at most the margin",
    inputs: [
      given("margin, (limit − mean) ÷ standard deviation", margin.toFixed(2)),
      given("share of the field that may lie above", percent(share)),
      given("confidence", percent(confidence)),
    ],
    assumptions: [
      atRandom,
      "Levels over the field are normally distributed, and mean and spread come out as expected.",
    ],
    source: "NIST/SEMATECH e-Handbook 7.2.6.3; ISO 16269-6",
  });
}
