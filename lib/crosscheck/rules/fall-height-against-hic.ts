import { familyOf, methodOf } from "#lib/claim";
import { quantityInPhrase, say } from "#lib/figure";
import type { In, Interval } from "#lib/quantity";
import { dropHeightOf } from "../drop-height";
import { numberSpan } from "../in-words";
import { claimInput, constantInput } from "../inputs";
import type { CheckedBid, Found, Rule, Severity } from "../model";
import { sameCondition } from "../same-test";
import { type StatedFigure, statedFigures } from "../stated-figures";

/** What the head injury criterion reaches at the critical fall height, by definition. */
const criterionAtLimit = 1000;

/** How far two tests of one surface differ. */
const scatterShare = 0.1;

/** How the criterion grows with the height of the fall on a linear spring without losses. */
const springExponent = 1.25;

/** How far a real surface may be from the spring before it is hard to believe. */
const beyondSpring = 2;

type Height = StatedFigure<"critical-fall-height">;
type Criterion = StatedFigure<"head-injury-criterion">;

/** Below the critical fall height the criterion is below 1000, above it is above: a stated criterion has to fit in. */
export const fallHeightAgainstHic: Rule = {
  id: "fall-height-against-hic",
  title: "Critical fall height and head injury criterion do not fit",
  holds: "the critical fall height against the head injury criterion stated at a known drop height",
  tolerance: "10 % of the criterion for scatter between tests (common practice, no source)",
  check: (bid) =>
    statedFigures(bid.claims, "critical-fall-height").flatMap((height) =>
      statedFigures(bid.claims, "head-injury-criterion").flatMap((criterion) => foundFor(bid, height, criterion)),
    ),
};

function foundFor(bid: CheckedBid, height: Height, criterion: Criterion): readonly Found[] {
  const drop = dropHeightOf(bid, criterion.claim);
  if (drop === null || !byHeadForm(height) || !sameCondition(height.claim, criterion.claim)) return [];
  const verdict = verdictOf(height.interval, criterion.interval, drop.height);
  if (verdict === null) return [];
  const [heightShown, dropShown] = [
    quantityInPhrase("distance", height.interval),
    quantityInPhrase("distance", drop.height),
  ];
  const stated = numberSpan(criterion.interval);
  return [
    {
      severity: verdict.severity,
      claims: [height.claim.id, criterion.claim.id],
      told: () => ({
        sentence: say`The bid states a critical fall height of ${heightShown}, and a head injury criterion of ${stated} at a fall from ${dropShown}. ${verdict.because}`,
        question: say`Your bid states a critical fall height of ${heightShown} and a head injury criterion of ${stated} at ${dropShown}. Are both from the same build and condition, and which reports show them?`,
        working: {
          formula: verdict.formula,
          inputs: [
            claimInput(bid, height.claim),
            claimInput(bid, criterion.claim),
            drop.input,
            constantInput("Criterion at the critical fall height", "1000"),
          ],
          assumptions: [
            "On one surface the criterion grows with the height of the fall.",
            "Two tests of one surface may differ by 10 % (common practice, no source).",
          ],
          source: verdict.source,
        },
      }),
    },
  ];
}

type Verdict = Readonly<{ severity: Severity; because: string; formula: string; source: string }>;

function verdictOf(height: Interval<"m">, criterion: Interval<"1">, drop: In<"m">): Verdict | null {
  const source = "derived from the definition of the critical fall height";
  if (drop < height.low && criterion.low > criterionAtLimit * (1 + scatterShare)) {
    const because = "Below the critical fall height the criterion is below 1000, so both can’t be true.";
    return {
      severity: "can't be true",
      because,
      formula: "criterion < 1000 at a fall below the critical height",
      source,
    };
  }
  if (drop > height.high && criterion.high < criterionAtLimit * (1 - scatterShare)) {
    const because = "Above the critical fall height the criterion is above 1000, unless another limit ended the test.";
    return {
      severity: "needs an answer",
      because,
      formula: "criterion > 1000 at a fall above the critical height",
      source,
    };
  }
  return springVerdict(height, criterion, drop);
}

function springVerdict(height: Interval<"m">, criterion: Interval<"1">, drop: In<"m">): Verdict | null {
  const most = onSpring(drop, height.low) * beyondSpring;
  const least = onSpring(drop, height.high) / beyondSpring;
  if (criterion.low <= most && criterion.high >= least) return null;
  return {
    severity: "needs an answer",
    because:
      "A linear spring with this critical fall height would be more than a factor of two away (rule of thumb: common practice, no source).",
    formula: "1000 × (drop height ÷ critical fall height)^1.25, within a factor of two",
    source: "derived for a linear spring without losses; the factor of two is common practice, no source",
  };
}

/** The criterion on a spring that reaches 1000 at the critical height; open and none stand for a height that is not bounded. */
function onSpring(drop: In<"m">, critical: In<"m">): number {
  if (critical === Number.POSITIVE_INFINITY) return 0;
  return critical > 0 ? criterionAtLimit * (drop / critical) ** springExponent : Number.POSITIVE_INFINITY;
}

const byHeadForm = ({ claim: { method } }: Height): boolean =>
  method !== "not-stated" && familyOf(methodOf(method).measuresLike).missile === "e";
