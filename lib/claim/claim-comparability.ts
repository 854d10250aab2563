import type { ClaimQuery } from "./claimed";
import { comparability } from "./comparability";
import { type Condition, isConditionStated } from "./condition";
import { conditionsAgree } from "./conditions-agree";
import { type Conversion, conversionBetween } from "./conversions";
import { compareEditions } from "./editions";
import { inSentence, propertyOf } from "./find";
import type { Claim } from "./model";
import { type Influence, variesWith } from "./varies-with";

/**
 * Whether a claim may stand where something is wanted. `cautions` say, a sentence each, what to look at all the same;
 * `reason` says why it may not, `ask` what to ask the bidder.
 */
export type ClaimComparability = Readonly<
  | { kind: "comparable"; cautions: readonly string[] }
  | { kind: "comparable-after-conversion"; conversion: Conversion; cautions: readonly string[] }
  | { kind: "not-comparable"; reason: string; ask: string }
>;

/**
 * Holds a claim against what is wanted: property, method and edition, then age, wetness and temperature. Another
 * property stands for the wanted one only where it follows by definition, never across missiles or apparatus.
 */
export function claimComparability(query: ClaimQuery, claim: Claim): ClaimComparability {
  const conversion = query.property === claim.property ? null : conversionBetween(claim.property, query.property);
  if (query.property !== claim.property && conversion === null) return anotherProperty(query, claim);
  const byMethod = methodCautions(query, claim);
  if (byMethod.kind === "not-comparable") return byMethod;
  if (query.condition !== undefined) {
    const agreement = conditionsAgree(query.condition, claim.condition);
    if (agreement.kind === "differ") return notComparable(claim, agreement.reason, "in the condition that is wanted");
  }
  const cautions = [...byMethod.cautions, ...conditionCautions(claim), ...buildCautions(claim)];
  if (conversion === null) return { kind: "comparable", cautions };
  const provided = conversion.provided === "" ? [] : [conversion.provided];
  return { kind: "comparable-after-conversion", conversion, cautions: [...cautions, ...provided] };
}

const label = (claim: Claim): string => inSentence(propertyOf(claim.property).label);

const notComparable = (claim: Claim, reason: string, how: string): ClaimComparability => ({
  kind: "not-comparable",
  reason,
  ask: `What is the figure for ${label(claim)} ${how}?`,
});

const anotherProperty = ({ property }: ClaimQuery, claim: Claim): ClaimComparability => ({
  kind: "not-comparable",
  reason: `The claim is about ${label(claim)}, from which ${inSentence(propertyOf(property).label)} does not follow.`,
  ask: `What is the figure for ${inSentence(propertyOf(property).label)}?`,
});

type MethodVerdict = Exclude<ClaimComparability, { kind: "comparable-after-conversion" }>;

/** The method of the query counts where it can stand behind the property of the claim. */
function methodCautions({ method, edition }: ClaimQuery, claim: Claim): MethodVerdict {
  if (method === undefined || !propertyOf(claim.property).methods.includes(method))
    return editionCautions(edition, claim);
  const verdict = comparability(claim.property, method, claim.method);
  if (verdict.kind === "not-comparable") return verdict;
  const editions = editionCautions(edition, claim);
  if (editions.kind === "not-comparable" || verdict.note === "") return editions;
  return { kind: "comparable", cautions: [verdict.note, ...editions.cautions] };
}

function editionCautions(wanted: number | undefined, claim: Claim): MethodVerdict {
  if (claim.method === "not-stated") return { kind: "comparable", cautions: [] };
  const compared = compareEditions(claim.method, wanted ?? null, claim.edition.year);
  switch (compared.kind) {
    case "alike":
      return { kind: "comparable", cautions: [] };
    case "caution":
      return { kind: "comparable", cautions: [compared.sentence] };
    case "unlike":
      return {
        kind: "not-comparable",
        reason: compared.reason,
        ask: `What does a test by the newest edition give for ${label(claim)}?`,
      };
  }
}

const silence: Readonly<
  Record<Influence, Readonly<{ isSilent: (condition: Condition) => boolean; sentence: string }>>
> = {
  age: {
    isSilent: ({ age }) => age.kind === "not-stated",
    sentence: "The bid does not say how old the surface was, and the figure changes with age.",
  },
  moisture: {
    isSilent: ({ moisture }) => moisture === "not-stated",
    sentence: "The bid does not say whether the surface was wet or dry.",
  },
  temperature: {
    isSilent: ({ temperature }) => temperature === null,
    sentence: "The bid does not say how warm the surface was.",
  },
};

/** What the bid leaves open of the conditions that change the property. */
function conditionCautions({ property, condition, value }: Claim): readonly string[] {
  if (value.kind !== "quantity") return [];
  if (!isConditionStated(condition) && variesWith(property).length > 0)
    return ["The bid does not state the condition of the surface, and the figure changes with it."];
  return variesWith(property)
    .map((influence) => silence[influence])
    .filter(({ isSilent }) => isSilent(condition))
    .map(({ sentence }) => sentence);
}

const buildCautions = ({ build }: Claim): readonly string[] =>
  build === "other-build"
    ? ["The report is of another build than this bid’s, so the figure need not hold for it."]
    : [];
