import { methodOf } from "#lib/claim";
import { quantityInPhrase, say } from "#lib/figure";
import type { In, Interval } from "#lib/quantity";
import { dropHeightOf } from "../drop-height";
import { largestCriterion, usualLeastCriterion } from "../head-injury-bounds";
import { numberSpan } from "../in-words";
import { claimInput } from "../inputs";
import type { CheckedBid, Found, Rule } from "../model";
import { testShared } from "../same-test";
import { type StatedFigure, statedFigures } from "../stated-figures";

/** Room for filtering, rounding and the mean of several drops. */
const roundingShare = 0.05;

/** Peak and head injury criterion come from one record of one fall, so the height of the fall ties them together. */
export const gMaxAndHic: Rule = {
  id: "g-max-and-hic",
  title: "G-max and head injury criterion do not fit one fall",
  holds: "the head injury criterion against what the G-max of the same test and its drop height allow",
  tolerance: "5 % for filtering and rounding (common practice, no source), on top of bounds that hold for any rebound",
  check: (bid) =>
    statedFigures(bid.claims, "head-injury-criterion").flatMap((criterion) =>
      statedFigures(bid.claims, "g-max").flatMap((level) => foundFor(bid, level, criterion)),
    ),
};

type Level = StatedFigure<"g-max">;
type Criterion = StatedFigure<"head-injury-criterion">;

function foundFor(bid: CheckedBid, level: Level, criterion: Criterion): readonly Found[] {
  const shared = testShared(level.claim, criterion.claim);
  const { method } = criterion.claim;
  if (shared === "apart" || method === "not-stated") return [];
  const drop = dropHeightOf(bid, criterion.claim);
  if (drop === null) return []; // without the height the speed is not known
  const bounds = boundsFor(level.interval, drop.height);
  const isHigh = criterion.interval.low > bounds.high * (1 + roundingShare);
  const isLow = criterion.interval.high < bounds.low * (1 - roundingShare);
  if (!isHigh && !isLow) return [];
  const levelShown = quantityInPhrase("impactLevel", level.interval);
  const stated = numberSpan(criterion.interval);
  const fall = quantityInPhrase("distance", drop.height);
  const allowed = isHigh ? `at most ${rounded(bounds.high)}` : `at least about ${rounded(bounds.low)}`;
  return [
    {
      severity: isHigh && shared === "one report" ? "can't be true" : "needs an answer",
      claims: [level.claim.id, criterion.claim.id],
      told: () => ({
        sentence: isHigh
          ? say`A fall from ${fall} that peaks at ${levelShown} allows a head injury criterion of ${allowed}; the bid states ${stated}.`
          : say`A fall from ${fall} that peaks at ${levelShown} usually gives a head injury criterion of ${allowed}; the bid states ${stated}.`,
        question: say`Your bid states a G-max of ${levelShown} and a head injury criterion of ${stated} by ${methodOf(method).designation}. Are both from the same drops, from which height, and can you send the record?`,
        working: {
          formula: isHigh
            ? "criterion ≤ A^2.5 × (2v/g) ÷ (A − 1), with A the peak in g and v the speed at impact"
            : "criterion ≥ 0.4928 × A^1.5 × v/g, with A the peak in g and v the speed at impact",
          inputs: [claimInput(bid, level.claim), claimInput(bid, criterion.claim), drop.input],
          assumptions: isHigh
            ? [
                "The missile bounces at most as fast as it fell, and sinks in by at most 0.1 m (3.9 in).",
                ...(shared === "one report" ? [] : ["No document says so, but both are taken to be from one test."]),
              ]
            : [
                "The pulse has one hump without a hollow, no more pointed than a triangle, and the missile need not bounce.",
                ...(shared === "one report" ? [] : ["No document says so, but both are taken to be from one test."]),
              ],
          source: "derived from the definition of the head injury criterion and conservation of momentum and energy",
        },
      }),
    },
  ];
}

/** What a level allows: the most after a full bounce, the least for the most pointed usual pulse. */
const boundsFor = ({ low, high }: Interval<"g">, height: In<"m">): Readonly<{ low: number; high: number }> => ({
  low: Number.isFinite(low) ? usualLeastCriterion(low, height) : 0,
  high: Number.isFinite(high) ? largestCriterion(high, height) : Number.POSITIVE_INFINITY,
});

const rounded = (criterion: number): string => Number(criterion.toPrecision(3)).toLocaleString("en-US");
