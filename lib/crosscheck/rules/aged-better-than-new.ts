import {
  type Claim,
  claimsFor,
  comparability,
  formatCondition,
  inSentence,
  type PropertyId,
  propertyOf,
  type QuantityPropertyId,
} from "#lib/claim";
import { quantityInPhrase, say } from "#lib/figure";
import { intervalOf, type Quantity } from "#lib/quantity";
import { claimInput } from "../inputs";
import type { CheckedBid, Found, Rule } from "../model";
import { onOtherFields, sameWeather } from "../same-test";

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
  { property: "seam-strength", withAge: "falls" },
];

/** Properties that are figures after ageing by themselves, and what they are as new. */
const agedOf: Readonly<Partial<Record<PropertyId, QuantityPropertyId>>> = {
  "tuft-bind-aged": "tuft-bind",
  "seam-strength-aged": "seam-strength",
  "shock-layer-aged-force-reduction": "shock-layer-force-reduction",
};

const agedForms: ReadonlyMap<PropertyId, readonly PropertyId[]> = new Map(
  worsening.map(({ property }) => [
    property,
    (Object.keys(agedOf) as PropertyId[]).filter((form) => agedOf[form] === property),
  ]),
);

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
  const own = claimsFor(bid.claims, property);
  const afterAgeing = (agedForms.get(property) ?? []).flatMap((form) => claimsFor(bid.claims, form));
  const aged = [...own.filter(isAged), ...afterAgeing];
  if (aged.length === 0 || aged.length === own.length + afterAgeing.length) return [];
  const fresh = inOrder(own.filter((claim) => !isAged(claim)));
  return inOrder(aged).flatMap((one) => {
    const compared = fresh.filter(({ claim }) => isAsNew(claim, one.claim) && areComparable(claim, one.claim));
    const [first] = compared;
    return first === undefined || !compared.every(({ quantity }) => isBetter(one.quantity, quantity, withAge))
      ? []
      : [found(bid, first, one)];
  });
}

const inOrder = (claims: readonly Claim[]): readonly Stated[] =>
  claims
    .flatMap((claim) => (claim.value.kind === "quantity" ? [{ claim, quantity: claim.value.quantity }] : []))
    .toSorted((one, other) => (one.claim.id < other.claim.id ? -1 : 1));

type Stated = Readonly<{ claim: Claim; quantity: Quantity }>;

function found(bid: CheckedBid, fresh: Stated, aged: Stated): Found {
  const what = inSentence(propertyOf(fresh.claim.property).label);
  const [freshShown, agedShown] = [fresh, aged].map(({ quantity }) =>
    quantityInPhrase(quantity.dimension, intervalOf(quantity.reading)),
  );
  const state = stateOf(aged.claim);
  return {
    severity: "needs an answer",
    claims: [fresh.claim.id, aged.claim.id],
    overClaims: [aged.claim.id],
    told: () => ({
      sentence: say`For ${what} the bid states ${freshShown ?? ""} as new and ${agedShown ?? ""} ${state}. With use this usually gets worse, not better (rule of thumb: common practice, no source).`,
      question: say`Your bid states ${freshShown ?? ""} as new and ${agedShown ?? ""} ${state} for ${what}. Are both from the same build, tested in the same way, and what explains that it got better?`,
      working: {
        formula: "figure after use no better than 5 % beyond the figure as new",
        inputs: [claimInput(bid, fresh.claim), claimInput(bid, aged.claim)],
        assumptions: [
          "Infill compacts and pores clog with use, so this property gets worse (common practice, no source).",
          "Repeated tests may differ by 5 % of the figure as new (common practice, no source).",
        ],
        source: "common practice, no source",
      },
    }),
  };
}

const areComparable = (fresh: Claim, aged: Claim): boolean =>
  fresh.method !== "not-stated" &&
  comparability(fresh.property, fresh.method, aged.method).kind === "comparable" &&
  !onOtherFields(fresh, aged) &&
  sameWeather(fresh, aged);

/** Beside a figure after ageing, one without a condition is the figure as new. */
const isAsNew = (fresh: Claim, aged: Claim): boolean =>
  fresh.condition.age.kind === "new" ||
  (agedOf[aged.property] !== undefined && fresh.condition.age.kind === "not-stated");

/** Whether a figure is for a surface or sample after years, hours or cycles, or after ageing. */
const isAged = ({ property, condition }: Claim): boolean =>
  agedOf[property] !== undefined || ["aged", "used", "after-cycles"].includes(condition.age.kind);

/** The condition in words; a figure after ageing says so in its name. */
const stateOf = ({ property, condition }: Claim): string =>
  agedOf[property] === undefined ? `in the condition “${formatCondition(condition)}”` : "after ageing";

/** Whether every reading of the aged figure is better than every reading as new, beyond the scatter. */
function isBetter(aged: Quantity, fresh: Quantity, withAge: "rises" | "falls"): boolean {
  const [agedSpan, freshSpan] = [intervalOf(aged.reading), intervalOf(fresh.reading)];
  return withAge === "rises"
    ? agedSpan.high < freshSpan.low * (1 - scatterShare)
    : agedSpan.low > freshSpan.high * (1 + scatterShare);
}
