import { bestClaim, type Claim, type QuantityPropertyId, quantityOf } from "#lib/claim";
import { type Figure, unknown } from "#lib/figure";
import {
  type ClaimedLength,
  componentMasses,
  crossSection,
  fillRatio,
  floatProneShare,
  freePile,
  type InfillSystem,
  infillDepth,
  mineralShare,
  stabilisingMass,
  submergedComponents,
  submergedMass,
  totalArealDensity,
  truckLoads,
  weightClass,
} from "#lib/infill";
import { findMaterial, type InfillMaterial } from "#lib/material";
import type { Reading } from "#lib/quantity";
import type { Bid, InfillFigures } from "./model";

/** A bid's infill with its materials looked up, and the ids of those that nobody describes. */
export type KnownInfill = Readonly<{ system: InfillSystem; unknownMaterials: readonly string[] }>;

export function knownInfill(bid: Bid, own: readonly InfillMaterial[]): KnownInfill {
  const components = bid.infill.components.map((component) => ({
    component,
    material: findMaterial(component.material, own),
  }));
  return {
    system: {
      bid: bid.id,
      placement: bid.infill.placement,
      components: components.flatMap(({ component: { id, arealDensity, bulkDensity }, material }) =>
        material === undefined
          ? []
          : [{ id, material, arealDensity: arealDensity.reading, bulkDensity: bulkDensity?.reading ?? null }],
      ),
    },
    unknownMaterials: components.flatMap(({ component, material }) =>
      material === undefined ? [component.material] : [],
    ),
  };
}

type LengthProperty = Extract<QuantityPropertyId, "pile-height" | "shock-layer-thickness">;

function claimedLength(bid: string, claims: readonly Claim[], property: LengthProperty): ClaimedLength | null {
  const found = bestClaim(claims, { property });
  const quantity = found.ok ? quantityOf(found.value.claim, property) : null;
  if (!found.ok || quantity === null) return null;
  return { reading: quantity.reading, from: { kind: "claim", bid, claim: found.value.claim.id } };
}

const readingOf = (length: ClaimedLength | null): Reading<"m"> | null => length?.reading ?? null;

/** Everything that the infill of a bid amounts to on a field of this area. */
export function infillFigures(
  bid: Bid,
  { system, unknownMaterials }: KnownInfill,
  area: Figure<"area">,
): InfillFigures {
  const pile = claimedLength(bid.id, bid.claims, "pile-height");
  const shockLayer = claimedLength(bid.id, bid.claims, "shock-layer-thickness");
  const depth = infillDepth(system);
  const mass = stabilisingMass(system, area);
  const masses = componentMasses(system, area);
  const total = totalArealDensity(system);
  const noPile = { kind: "not-claimed", what: "the pile height" } as const;
  const figures: InfillFigures = {
    totalArealDensity: total,
    stabilisingMass: mass,
    weightClass: weightClass(total),
    mineralShare: mineralShare(system),
    depth,
    freePile: pile === null ? unknown("length", noPile) : freePile(pile, depth),
    fillRatio: pile === null ? unknown("fraction", noPile) : fillRatio(pile, depth),
    submergedMass: submergedMass(system),
    floatProneShare: floatProneShare(system),
    truckLoads: truckLoads(mass),
    components: submergedComponents(system).map(({ id, label, submerged }, index) => ({
      id,
      label,
      mass: masses[index]?.mass ?? mass,
      submerged,
    })),
    crossSection: crossSection(system, readingOf(pile), readingOf(shockLayer)),
    unknownMaterials,
  };
  return unknownMaterials.length === 0 ? figures : withoutFigures(figures, unknownMaterials);
}

/** A total over part of the components would be too small, so with one material unknown no total is given. */
function withoutFigures(figures: InfillFigures, materials: readonly string[]): InfillFigures {
  const names = materials.map((material) => `“${material}”`).join(", ");
  const because = { kind: "missing-input", what: `a description of the material ${names} in the brief` } as const;
  return {
    ...figures,
    totalArealDensity: unknown("arealDensity", because),
    stabilisingMass: unknown("mass", because),
    weightClass: "unknown",
    mineralShare: unknown("fraction", because),
    depth: unknown("length", because),
    freePile: unknown("length", because),
    fillRatio: unknown("fraction", because),
    submergedMass: unknown("arealDensity", because),
    floatProneShare: unknown("fraction", because),
    truckLoads: unknown("count", because),
  };
}
