import type { Shortfall } from "#lib/figure";
import { oncePer } from "#lib/once";
import { failed, intervalOf, type Quantity, type Reading, type Result, succeeded } from "#lib/quantity";
import { distanceFromNew } from "./age";
import { comparability } from "./comparability";
import { type Condition, formatCondition, isConditionStated, ofAge } from "./condition";
import { conditionsAgree } from "./conditions-agree";
import { compareEditions } from "./editions";
import { strengthOver } from "./evidence";
import { inSentence, methodOf, propertyOf } from "./find";
import { isAtFullDepth } from "./infill-state";
import type { MethodId, StatedMethod } from "./methods";
import type { Claim } from "./model";
import type { DimensionOf, PropertyId, QuantityPropertyId } from "./properties/properties";

/**
 * What is looked for. Without a method or condition any stands, by the rules of `bestClaim`. The edition of the method is
 * a year; without one the newest known is meant.
 */
export type ClaimQuery = Readonly<{ property: PropertyId; method?: MethodId; edition?: number; condition?: Condition }>;

/** The claim that stands for a bid, and those that could stand as well and say something of their own. */
export type Standing = Readonly<{ claim: Claim; others: readonly Claim[] }>;

/** The claims of a list by what they are about. Kept, because every figure and every rule asks for some. */
const byProperty = oncePer((claims: readonly Claim[]): ReadonlyMap<PropertyId, readonly Claim[]> => {
  const groups = new Map<PropertyId, Claim[]>();
  for (const claim of claims) {
    const group = groups.get(claim.property);
    if (group === undefined) groups.set(claim.property, [claim]);
    else group.push(claim);
  }
  return groups;
});

const none: readonly Claim[] = [];

/** Every claim about a property, in the order of the list. */
export const claimsFor = (claims: readonly Claim[], property: PropertyId): readonly Claim[] =>
  byProperty(claims).get(property) ?? none;

/** Claims about one property, the one with the best standing first. */
const ranked = oncePer((claims: readonly Claim[]): readonly Claim[] =>
  claims.length < 2 ? claims : claims.toSorted(byStanding),
);

/**
 * The claim that answers a query, whatever the order of the list:
 * 1. it is a figure or a choice, unless the property takes words;
 * 2. its method and edition compare with the ones that are wanted, its condition agrees with the one that is wanted;
 * 3. where no condition is wanted, the one nearest to a new surface (a condition not stated counts as new), at the full
 *    infill depth before a lesser one;
 * 4. the strongest evidence; then a named method before none, a stated condition before none;
 * 5. where several still stand, the figure less favourable to the bid. Where neither way is better, the lower one.
 * Claims by unlike methods never stand against each other: without a wanted method they end in a shortfall.
 */
export function bestClaim(claims: readonly Claim[], query: ClaimQuery): Result<Standing, Shortfall> {
  const { property, method, condition } = query;
  const about = claimsFor(claims, property);
  if (about.length === 0) return failed(noAnswer(inSentence(propertyOf(property).label), about));
  return method === undefined && condition === undefined ? bestOfAll(about) : bestAmong(about, query);
}

/** The best of claims about one property where any method and condition will do. Kept, because most rules ask for it. */
const bestOfAll = oncePer((about: readonly Claim[]): Result<Standing, Shortfall> => {
  const [first] = about;
  if (first === undefined) throw new RangeError("no claim to choose from");
  return bestAmong(about, { property: first.property });
});

function bestAmong(about: readonly Claim[], query: ClaimQuery): Result<Standing, Shortfall> {
  const property = propertyOf(query.property);
  const what = inSentence(property.label);
  const all = ranked(about);
  const answers = all.filter(({ value }) => property.kind === "words" || value.kind !== "words");
  const [strongest] = answers;
  if (strongest === undefined) return failed(noAnswer(what, all));
  const { method, condition } = query;
  const byMethod =
    method === undefined ? answers : answers.filter((claim) => isComparable(claim, method, query.edition));
  const [comparable] = byMethod;
  if (comparable === undefined) return failed(unlikeMethod(what, query, strongest));
  const inCondition =
    condition === undefined
      ? nearestToNew(byMethod)
      : byMethod.filter((claim) => conditionsAgree(condition, claim.condition).kind === "agree");
  const [best] = inCondition;
  if (best === undefined) return failed(unlikeCondition(what, query, comparable));
  const standing = inCondition.filter((claim) => sameStanding(claim, best));
  const stranger = method === undefined ? standing.find((claim) => areUnlike(best, claim)) : undefined;
  if (stranger !== undefined) return failed(unlikeEachOther(what, best, stranger));
  const [claim = best, ...others] = [...standing].sort(lessFavourableFirst);
  return succeeded({ claim, others });
}

/** The quantity of a claim in the dimension of its property; null where the claim is in words. */
export function quantityOf<P extends QuantityPropertyId>(claim: Claim, property: P): Quantity<DimensionOf<P>> | null {
  if (claim.property !== property || claim.value.kind !== "quantity") return null;
  const { quantity } = claim.value;
  return isOfProperty(quantity, property) ? quantity : null;
}

/** A figure from a field or sample of known age. */
export type AgedPoint = Readonly<{ years: number; reading: Reading; claim: Claim }>;

/**
 * What the claims say of a property over the years by comparable methods: new is year 0, youngest first. Figures with
 * less infill than the full depth are left out.
 * @param hoursPerYear of the field it is read for, which turns hours of use into years; without it such claims are left out
 */
export const agedPoints = (
  claims: readonly Claim[],
  property: PropertyId,
  method: MethodId,
  hoursPerYear: number | null = null,
): readonly AgedPoint[] =>
  ranked(claimsFor(claims, property))
    .filter((claim) => isComparable(claim, method) && isAtFullDepth(claim.condition.infill))
    .flatMap((claim) => {
      const years = ageOf(claim.condition, hoursPerYear);
      return years === null || claim.value.kind !== "quantity"
        ? []
        : [{ years, reading: claim.value.quantity.reading, claim }];
    })
    .sort((one, other) => one.years - other.years);

function isOfProperty<P extends QuantityPropertyId>(
  quantity: Quantity,
  property: P,
): quantity is Quantity<DimensionOf<P>> {
  const definition = propertyOf(property);
  return definition.kind === "quantity" && definition.dimension === quantity.dimension;
}

function ageOf({ age }: Condition, hoursPerYear: number | null): number | null {
  switch (age.kind) {
    case "new":
      return 0;
    case "aged":
      return age.years;
    case "used":
      return hoursPerYear === null || !(hoursPerYear > 0) ? null : age.hours / hoursPerYear;
    case "after-cycles":
    case "other":
    case "not-stated":
      return null;
  }
}

const isComparable = (claim: Claim, method: MethodId, edition?: number): boolean =>
  comparability(claim.property, method, claim.method).kind === "comparable" && unlikeEdition(claim, edition) === null;

/** Why the edition behind a claim gives another figure than the one that is wanted; null where it does not. */
function unlikeEdition({ method, edition: { year } }: Claim, wanted?: number): string | null {
  const compared = method === "not-stated" ? null : compareEditions(method, wanted ?? null, year);
  return compared?.kind === "unlike" ? compared.reason : null;
}

/** Whether two claims rest on methods that do not compare; none named on both sides counts as alike. */
function areUnlike(one: Claim, other: Claim): boolean {
  if (one.method === "not-stated" || other.method === "not-stated") return one.method !== other.method;
  const byMethod = one.method !== other.method;
  return (
    (byMethod && comparability(one.property, one.method, other.method).kind === "not-comparable") ||
    (unlikeEdition(one) === null) !== (unlikeEdition(other) === null)
  );
}

const statedFirst = (one: boolean, other: boolean): number => Number(other) - Number(one);

/** Stronger evidence, then a named method, then a stated condition, then the id, so that the order is one only. */
function byStanding(one: Claim, other: Claim): number {
  return withinEvidence(one, other) || compareIds(one, other);
}

function withinEvidence(one: Claim, other: Claim): number {
  return (
    strengthOver(other.evidence, one.evidence) ||
    statedFirst(one.method !== "not-stated", other.method !== "not-stated") ||
    statedFirst(isConditionStated(one.condition), isConditionStated(other.condition))
  );
}

const sameStanding = (one: Claim, other: Claim): boolean => withinEvidence(one, other) === 0;

function compareIds(one: Claim, other: Claim): number {
  if (one.id === other.id) return 0;
  return one.id < other.id ? -1 : 1;
}

function nearestToNew(all: readonly Claim[]): readonly Claim[] {
  const full = all.filter(({ condition }) => isAtFullDepth(condition.infill));
  const claims = full.length > 0 ? full : all;
  const nearest = Math.min(...claims.map(({ condition }) => distanceFromNew(condition.age)));
  return claims.filter(({ condition }) => distanceFromNew(condition.age) === nearest);
}

function lessFavourableFirst(one: Claim, other: Claim): number {
  const [oneEnd, otherEnd] = [unfavourableEnd(one), unfavourableEnd(other)];
  if (oneEnd === otherEnd) return compareIds(one, other);
  const lowestFirst = oneEnd < otherEnd ? -1 : 1;
  return propertyOf(one.property).direction === "less" ? -lowestFirst : lowestFirst;
}

/** The end of a reading that is worse for the bid; 0 for choices and words, which have no ends. */
function unfavourableEnd({ property, value }: Claim): number {
  if (value.kind !== "quantity") return 0;
  const { low, high } = intervalOf(value.quantity.reading);
  return propertyOf(property).direction === "less" ? high : low;
}

const methodName = (method: StatedMethod): string =>
  method === "not-stated" ? "a method that is not stated" : methodOf(method).designation;

function inState(condition: Condition): string {
  return isConditionStated(condition)
    ? `in the condition “${formatCondition(condition)}”`
    : "in a condition that is not stated";
}

function noAnswer(what: string, all: readonly Claim[]): Shortfall {
  const [first] = all;
  return first === undefined
    ? { kind: "not-claimed", what }
    : { kind: "not-a-figure", what, words: first.value.kind === "words" ? first.value.words : first.words };
}

function unlikeMethod(what: string, { property, method, edition }: ClaimQuery, got: Claim): Shortfall {
  const compared = method === undefined ? null : comparability(property, method, got.method);
  return {
    kind: "not-comparable",
    what,
    wanted: methodName(method ?? "not-stated"),
    got: methodName(got.method),
    reason: compared?.kind === "not-comparable" ? compared.reason : (unlikeEdition(got, edition) ?? ""),
  };
}

function unlikeCondition(what: string, { method, condition }: ClaimQuery, got: Claim): Shortfall {
  const wanted = condition ?? ofAge({ kind: "not-stated" });
  const agreement = conditionsAgree(wanted, got.condition);
  return {
    kind: "not-comparable",
    what,
    wanted: `${method === undefined ? "a test" : methodName(method)} ${inState(wanted)}`,
    got: `${methodName(got.method)} ${inState(got.condition)}`,
    reason: agreement.kind === "differ" ? agreement.reason : "",
  };
}

const unlikeEachOther = (what: string, one: Claim, other: Claim): Shortfall => ({
  kind: "not-comparable",
  what,
  wanted: "one named method",
  got: `${methodName(one.method)} and by ${methodName(other.method)}`,
  reason: "The figures rest on unlike methods, so neither can stand for the other.",
});
