import { listed } from "#lib/figure";
import { formatValue } from "#lib/quantity";
import { type Drop, dropEnergy } from "./drop";
import { familyOf } from "./families";
import { inSentence, methodOf, propertyOf } from "./find";
import type { MethodId, StatedMethod, TestMethod } from "./methods";
import type { PropertyId } from "./properties/properties";

/**
 * Whether a figure by one method may stand where another is wanted. `note` says what to look at all the same and is
 * empty where the methods are one; `reason` says why not, `ask` what to ask the bidder.
 */
export type Comparability = Readonly<
  { kind: "comparable"; note: string } | { kind: "not-comparable"; reason: string; ask: string }
>;

/**
 * Holds the method that is wanted for a property against the method that stands behind a claim.
 * Figures are never converted from one method into another.
 * @source ASTM F1702, scope, for impact figures: not comparable with another mass, geometry, drop height or method
 */
export function comparability(property: PropertyId, wanted: MethodId, got: StatedMethod): Comparability {
  const key = `${property} ${wanted} ${got}`;
  const kept = judged.get(key);
  if (kept !== undefined) return kept;
  const made = judge(property, wanted, got);
  judged.set(key, made);
  return made;
}

/** Kept, because every figure asks again; there are only as many as there are properties and pairs of methods. */
const judged = new Map<string, Comparability>();

function judge(property: PropertyId, wanted: MethodId, got: StatedMethod): Comparability {
  if (got === "not-stated") return methodMissing(property);
  const [wantedMethod, gotMethod] = [methodOf(wanted), methodOf(got)];
  const stranger = [gotMethod, wantedMethod].find(({ id }) => !standsBehind(property, id));
  if (stranger !== undefined) return notComparable(property, wantedMethod, strangeness(property, stranger));
  if (wanted === got) return { kind: "comparable", note: openHeightNote(property, gotMethod) };
  if (wantedMethod.measuresLike === gotMethod.measuresLike) {
    return { kind: "comparable", note: sameFamilyNote(wantedMethod, gotMethod) };
  }
  if (propertyOf(property).comparedBy === "missile" && sameMissile(wantedMethod, gotMethod)) {
    return {
      kind: "comparable",
      note: `${gotMethod.designation} and ${wantedMethod.designation} drop the same missile, and the height is the result.`,
    };
  }
  return notComparable(property, wantedMethod, unlikeness(wantedMethod, gotMethod));
}

function methodMissing(property: PropertyId): Comparability {
  const what = inSentence(propertyOf(property).label);
  return {
    kind: "not-comparable",
    reason: "The method was not stated, so nobody can tell what the figure measures.",
    ask: `Which test method stands behind the stated ${what}, and in which report and on which page is it?`,
  };
}

const notComparable = (property: PropertyId, wanted: TestMethod, reason: string): Comparability => ({
  kind: "not-comparable",
  reason,
  ask: `What does a test by ${wanted.designation} give for ${inSentence(propertyOf(property).label)}?`,
});

const standsBehind = (property: PropertyId, method: string): boolean =>
  propertyOf(property).methods.some((id) => id === method);

const strangeness = (property: PropertyId, { designation, measuresLike }: TestMethod): string =>
  `${designation} ${familyOf(measuresLike).does}; that gives no figure for ${inSentence(propertyOf(property).label)}.`;

function sameFamilyNote(wanted: TestMethod, got: TestMethod): string {
  const { drop } = familyOf(got.measuresLike);
  const alike =
    drop === null ? "procedure" : drop.height === null ? "missile and way of dropping it" : "missile and drop height";
  const both = `${got.designation} and ${wanted.designation} use the same ${alike}`;
  const field = [got, wanted].find(({ setting }) => setting === "field");
  const apparatus = [got, wanted].find(({ setting }) => setting === "apparatus");
  return field !== undefined && apparatus !== undefined
    ? `${both}; ${apparatus.designation} describes the apparatus and ${field.designation} its use on an installed field, so test points, temperature and age belong to the figure.`
    : `${both}; they are separate documents, so check edition and scope.`;
}

/** A method that fixes no drop height gives figures that compare only where the reports name the same one. */
function openHeightNote(property: PropertyId, { designation, measuresLike }: TestMethod): string {
  const { drop } = familyOf(measuresLike);
  if (drop === null || drop.height !== null || propertyOf(property).comparedBy === "missile") return "";
  return `${designation} fixes no drop height, so look in the reports whether both figures are for the same one.`;
}

function sameMissile(wanted: TestMethod, got: TestMethod): boolean {
  const { missile } = familyOf(wanted.measuresLike);
  return missile !== null && missile === familyOf(got.measuresLike).missile;
}

function unlikeness(wanted: TestMethod, got: TestMethod): string {
  const [wantedFamily, gotFamily] = [familyOf(wanted.measuresLike), familyOf(got.measuresLike)];
  if (wantedFamily.drop === null || gotFamily.drop === null) {
    return `${got.designation} ${gotFamily.does}, while ${wanted.designation} ${wantedFamily.does}. One figure does not follow from the other.`;
  }
  const unlike = differences(wantedFamily.drop, gotFamily.drop);
  return `${got.designation} drops ${described(gotFamily.drop)}; ${wanted.designation} drops ${described(wantedFamily.drop)}. They differ in ${listed(unlike)}, so one figure does not follow from the other.`;
}

const energyText = ({ mass, height }: Drop): string | null =>
  height === null ? null : formatValue("energy", dropEnergy(mass, height), "metric");

function described(drop: Drop): string {
  const energy = energyText(drop);
  const missile = `a ${drop.face} missile of ${drop.massText}, ${drop.across}, from ${drop.heightText}`;
  return energy === null ? missile : `${missile}, which gives ${energy}`;
}

function differences(one: Drop, other: Drop): readonly string[] {
  const [oneEnergy, otherEnergy] = [energyText(one), energyText(other)];
  return [
    ...(one.mass === other.mass ? [] : ["missile mass"]),
    ...(one.face === other.face && one.across === other.across ? [] : ["striking face"]),
    ...(one.heightText === other.heightText ? [] : ["drop height"]),
    ...(oneEnergy === null || otherEnergy === null || oneEnergy === otherEnergy ? [] : ["drop energy"]),
  ];
}
