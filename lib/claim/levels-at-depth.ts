import type { Reading } from "#lib/quantity";
import { claimsFor } from "./claimed";
import { comparability } from "./comparability";
import { type Condition, ofAge } from "./condition";
import { conditionsAgree } from "./conditions-agree";
import { type InfillState, isAtFullDepth } from "./infill-state";
import type { MethodId } from "./methods";
import type { Claim } from "./model";
import type { QuantityPropertyId } from "./properties/properties";

/** A figure of the new surface with the infill it was got with; null stands for the full depth. */
export type LevelAtDepth = Readonly<{ claim: Claim; reading: Reading; infill: InfillState | null }>;

/**
 * What the claims say of a property of the new surface at a lesser infill depth, with the figures at the full depth to
 * hold them against: those of the same documents where there are any, else all. None without a figure at a lesser depth.
 */
export function levelsAtLesserDepth(
  claims: readonly Claim[],
  property: QuantityPropertyId,
  method: MethodId,
): readonly LevelAtDepth[] {
  const asNew = claimsFor(claims, property).filter(
    (claim) => comparability(property, method, claim.method).kind === "comparable" && isNew(claim.condition),
  );
  const lesser = asNew.filter(({ condition }) => !isAtFullDepth(condition.infill));
  const [first] = lesser;
  if (first === undefined) return [];
  const alike = (claim: Claim) => inOneWeather(first, claim);
  const full = asNew.filter((claim) => isAtFullDepth(claim.condition.infill) && alike(claim));
  const documents = new Set(lesser.map(({ document }) => document).filter((document) => document !== ""));
  const ofThem = full.filter(({ document }) => documents.has(document));
  return [...(ofThem.length > 0 ? ofThem : full), ...lesser.filter(alike)].flatMap((claim) => {
    const { infill } = claim.condition;
    return claim.value.kind === "quantity"
      ? [{ claim, reading: claim.value.quantity.reading, infill: isAtFullDepth(infill) ? null : infill }]
      : [];
  });
}

/** An age that is not stated counts as new where the depth of the infill is. */
const isNew = ({ age, infill }: Condition): boolean =>
  age.kind === "new" || (age.kind === "not-stated" && infill !== null);

const { age } = ofAge({ kind: "new" });

const inOneWeather = ({ condition: one }: Claim, { condition: other }: Claim): boolean =>
  conditionsAgree({ ...one, age, infill: null }, { ...other, age, infill: null }).kind === "agree";
