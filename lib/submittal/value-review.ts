import {
  atLeastAsStrong,
  type Claim,
  claimComparability,
  comparability,
  conditionsAgree,
  inSentence,
  isConditionStated,
  matchEvidence,
  methodOf,
  propertyOf,
} from "#lib/claim";
import { gateDecision } from "#lib/criteria";
import { intervalOf } from "#lib/quantity";
import { limitInWords, type Requirement } from "#lib/requirement";
import { spanChange } from "./span-change";
import { widenedLimit } from "./widened-limit";

/** How a submitted value stands to a clause of the specification. */
export type AgainstSpecification = Readonly<
  | { kind: "meets" }
  | { kind: "falls-short" }
  | { kind: "not-decided" }
  | { kind: "not-shown"; reason: string }
  | { kind: "not-comparable"; reason: string }
  | { kind: "no-limit" }
>;

/** How it stands to what the winner bid. `differs` is for properties of which neither way is better. */
export type AgainstBid = Readonly<
  | { kind: "as-bid" | "weaker" | "stronger" | "differs" | "not-bid" | "not-shown" }
  | { kind: "not-comparable"; reason: string }
>;

/** The review of one value with a comment that may be sent as it is or changed. */
export type ValueReview = Readonly<{
  /** Id of the clause; null where none speaks of the value. */
  requirement: string | null;
  specification: AgainstSpecification;
  bid: AgainstBid;
  cautions: readonly string[];
  comment: string;
}>;

/** What is held against what. Null where no clause speaks of it, nothing was submitted, or nothing was bid. */
export type ReviewedValue = Readonly<{
  requirement: Requirement | null;
  submitted: Claim | null;
  bid: Claim | null;
  /** How far a submitted figure may lie from the bid's and still count as the same, as a share of it. */
  sameWithin: number;
}>;

function againstSpecification({
  requirement,
  submitted,
}: ReviewedValue): AgainstSpecification & Readonly<{ cautions?: readonly string[] }> {
  if (requirement === null) return { kind: "no-limit" };
  const { limit, subject, method, edition, condition, evidence, tolerance } = requirement;
  if (submitted === null) return { kind: "not-shown", reason: "nothing was handed in for it" };
  if (limit === null || subject?.property === undefined) return { kind: "no-limit" };
  const verdict = claimComparability(
    {
      property: subject.property,
      ...(method === null ? {} : { method }),
      ...(edition.year === null ? {} : { edition: edition.year }),
      ...(isConditionStated(condition) ? { condition } : {}),
    },
    submitted,
  );
  if (verdict.kind === "not-comparable") return { kind: "not-comparable", reason: verdict.reason };
  if (verdict.kind === "comparable-after-conversion")
    return { kind: "not-comparable", reason: "It is given as another property." };
  if (submitted.value.kind !== "quantity") return { kind: "not-shown", reason: "it is described in words only" };
  const wanted = matchEvidence(evidence);
  if (wanted !== null && !atLeastAsStrong(submitted.evidence, wanted))
    return { kind: "not-shown", reason: `it is not shown as asked, which is: ${inSentence(evidence)}` };
  const { low, high } = intervalOf(submitted.value.quantity.reading);
  const stray = tolerance?.value ?? 0;
  // a tolerance lets a reading lie beyond the limit by so much; below it the figure is read as if it were that much better
  const outcome = gateDecision(widenedLimit(limit, stray), { low, high });
  return { kind: outcome.kind, cautions: verdict.cautions.map(ofSubmittal) };
}

/** Cautions are worded for claims of a bid; here the paper that was handed in is what leaves something open. */
const ofSubmittal = (caution: string): string => caution.replace(/^The bid /, "The submittal ");

function againstBid({ submitted, bid, sameWithin }: ReviewedValue): AgainstBid {
  if (bid === null) return { kind: "not-bid" };
  if (submitted === null) return { kind: "not-shown" };
  if (bid.method !== "not-stated") {
    const verdict = comparability(bid.property, bid.method, submitted.method);
    if (verdict.kind === "not-comparable") return { kind: "not-comparable", reason: verdict.reason };
  }
  const conditions = isConditionStated(bid.condition)
    ? conditionsAgree(bid.condition, submitted.condition)
    : { kind: "agree" as const };
  if (conditions.kind === "differ") return { kind: "not-comparable", reason: conditions.reason };
  if (bid.value.kind === "choice" && submitted.value.kind === "choice")
    return { kind: bid.value.choice === submitted.value.choice ? "as-bid" : "differs" };
  if (bid.value.kind !== "quantity" || submitted.value.kind !== "quantity")
    return { kind: "not-comparable", reason: "One of the two is in words only." };
  const [was, is] = [intervalOf(bid.value.quantity.reading), intervalOf(submitted.value.quantity.reading)];
  const change = spanChange(propertyOf(bid.property).direction, was, is, sameWithin);
  return { kind: change === "same" ? "as-bid" : change };
}

/** The value as it was written. */
function shown({ property, value }: Claim): string {
  if (value.kind === "quantity") return value.quantity.asEntered;
  if (value.kind === "words") return `“${value.words}”`;
  const definition = propertyOf(property);
  const label =
    definition.kind === "choice" ? definition.choices.find(({ id }) => id === value.choice)?.label : undefined;
  return `“${label ?? value.choice}”`;
}

function where({ document, page }: Claim): string {
  if (document === "") return "";
  return page === "" ? ` (${document})` : ` (${document}, p. ${page})`;
}

function specificationSentence({ requirement, submitted }: ReviewedValue, found: AgainstSpecification): string {
  if (requirement === null)
    return submitted === null
      ? ""
      : `${propertyOf(submitted.property).label}: ${shown(submitted)}${where(submitted)} is noted; no clause speaks of it.`;
  const { label, limit, method } = requirement;
  const name = inSentence(label);
  const asked = limit === null ? "" : limitInWords(limit);
  const by = method === null ? "" : ` by ${methodOf(method).designation}`;
  const got = submitted === null ? "" : `${shown(submitted)}${where(submitted)}`;
  switch (found.kind) {
    case "meets":
      return `${label}: ${got} meets the limit, ${asked}.`;
    case "falls-short":
      return `${label}: ${got} does not meet the limit, ${asked}. Hand in a product that meets it, or a request for substitution.`;
    case "not-decided":
      return `${label}: ${got} lies across the limit, ${asked}. Hand in the single readings${by}.`;
    case "not-shown":
      return `${label}: ${found.reason}. Hand in a figure for ${name}${by}${asked === "" ? "" : `; the limit is ${asked}`}.`;
    case "not-comparable":
      return `${label}: ${got} can’t be held against the clause. ${found.reason} Hand in a figure${by}.`;
    case "no-limit":
      return `${label}: ${got} is noted; the clause sets no limit for it.`;
  }
}

function bidSentence({ submitted, bid }: ReviewedValue, found: AgainstBid): string | null {
  if (bid === null || submitted === null) return null;
  const [was, is] = [shown(bid), shown(submitted)];
  switch (found.kind) {
    case "weaker":
      return `The bid promised ${was}, and ${is} is weaker. Deliver what was bid, or say why not and at what credit.`;
    case "stronger":
      return `It is better than the ${was} of the bid. Confirm that price and warranty stay as they are.`;
    case "differs":
      return `The bid says ${was}. Say which of the two is delivered and what it changes.`;
    case "not-comparable":
      return `It can’t be held against the ${was} of the bid: ${inSentence(found.reason)}`;
    case "as-bid":
    case "not-bid":
    case "not-shown":
      return null;
  }
}

/**
 * Holds one submitted value against the clause and against what the winner bid, like with like only, and drafts a comment.
 * Review is for general agreement: it changes no contract and certifies nothing.
 */
export function reviewValue(reviewed: ReviewedValue): ValueReview {
  const { cautions = [], ...specification } = againstSpecification(reviewed);
  const bid = againstBid(reviewed);
  const comment = [specificationSentence(reviewed, specification), bidSentence(reviewed, bid)]
    .filter((sentence) => sentence !== null)
    .join(" ");
  return { requirement: reviewed.requirement?.id ?? null, specification, bid, cautions, comment };
}
