import {
  type Claim,
  comparability,
  formatCondition,
  inSentence,
  propertyOf,
  type QuantityPropertyId,
} from "#lib/claim";
import { quantityInPhrase, say } from "#lib/figure";
import { intervalOf, type Quantity } from "#lib/quantity";
import { claimInput } from "../inputs";
import type { CheckedBid, Found, Rule } from "../model";

/** Which way a property goes with use and age. */
const worsening: readonly Readonly<{ property: QuantityPropertyId; withAge: "rises" | "falls" }>[] = [
  { property: "g-max", withAge: "rises" },
  { property: "head-injury-criterion", withAge: "rises" },
  { property: "critical-fall-height", withAge: "falls" },
  { property: "shock-absorption", withAge: "falls" },
  { property: "shock-layer-force-reduction", withAge: "falls" },
  { property: "system-infiltration", withAge: "falls" },
  { property: "carpet-infiltration", withAge: "falls" },
  { property: "shock-layer-infiltration", withAge: "falls" },
  { property: "tuft-bind", withAge: "falls" },
  { property: "grab-strength", withAge: "falls" },
];

/** How far repeated tests of one field differ. */
const scatterShare = 0.05;

/** Fields compact, clog and wear: a figure that got better with age is rare and wants a reason. */
export const agedBetterThanNew: Rule = {
  id: "aged-better-than-new",
  title: "Better after years than as new",
  holds: "a figure after years or wear against the same property as new by a method that compares",
  tolerance: "5 % of the figure as new, for scatter between tests (common practice, no source)",
  check: (bid) => worsening.flatMap(({ property, withAge }) => foundFor(bid, property, withAge)),
};

function foundFor(bid: CheckedBid, property: QuantityPropertyId, withAge: "rises" | "falls"): readonly Found[] {
  const figures = bid.claims
    .filter((claim) => claim.property === property)
    .toSorted((one, other) => (one.id < other.id ? -1 : 1))
    .flatMap((claim) => (claim.value.kind === "quantity" ? [{ claim, quantity: claim.value.quantity }] : []));
  const asNew = figures.filter(({ claim }) => claim.condition.kind === "new");
  const used = figures.filter(({ claim }) => ["aged", "after-cycles"].includes(claim.condition.kind));
  return used.flatMap((aged) => {
    const compared = asNew.filter((fresh) => areComparable(fresh.claim, aged.claim));
    const [first] = compared;
    if (first === undefined || !compared.every((fresh) => isBetter(aged.quantity, fresh.quantity, withAge))) return [];
    return [found(bid, first, aged)];
  });
}

type Stated = Readonly<{ claim: Claim; quantity: Quantity }>;

function found(bid: CheckedBid, fresh: Stated, aged: Stated): Found {
  const what = inSentence(propertyOf(aged.claim.property).label);
  const [freshShown, agedShown] = [fresh, aged].map(({ quantity }) =>
    quantityInPhrase(quantity.dimension, intervalOf(quantity.reading)),
  );
  const condition = formatCondition(aged.claim.condition);
  return {
    severity: "needs an answer",
    claims: [fresh.claim.id, aged.claim.id],
    overClaims: [aged.claim.id],
    sentence: say`For ${what} the bid states ${freshShown ?? ""} as new and ${agedShown ?? ""} in the condition “${condition}”. With use this usually gets worse, not better (rule of thumb: common practice, no source).`,
    question: say`Your bid states ${freshShown ?? ""} as new and ${agedShown ?? ""} in the condition “${condition}” for ${what}. Are both from the same build, tested in the same way, and what explains that it got better?`,
    working: {
      formula: "figure after use no better than 5 % beyond the figure as new",
      inputs: [claimInput(bid, fresh.claim), claimInput(bid, aged.claim)],
      assumptions: [
        "Infill compacts and pores clog with use, so this property gets worse (common practice, no source).",
        "Repeated tests may differ by 5 % of the figure as new (common practice, no source).",
      ],
      source: "common practice, no source",
    },
  };
}

const areComparable = (fresh: Claim, aged: Claim): boolean =>
  fresh.method !== "not-stated" && comparability(fresh.property, fresh.method, aged.method).kind === "comparable";

/** Whether every reading of the aged figure is better than every reading as new, beyond the scatter. */
function isBetter(aged: Quantity, fresh: Quantity, withAge: "rises" | "falls"): boolean {
  const [agedSpan, freshSpan] = [intervalOf(aged.reading), intervalOf(fresh.reading)];
  return withAge === "rises"
    ? agedSpan.high < freshSpan.low * (1 - scatterShare)
    : agedSpan.low > freshSpan.high * (1 + scatterShare);
}
