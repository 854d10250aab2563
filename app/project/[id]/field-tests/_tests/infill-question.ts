import type { Bid, BidEvaluation } from "#lib/evaluation";
import { intervalOfFigure } from "#lib/figure";
import { findMaterial, type InfillMaterial, infillMaterials } from "#lib/material";
import {
  explainQuantity,
  failed,
  formatValue,
  type In,
  type Interval,
  intervalOf,
  measured,
  parseExact,
  type Result,
  succeeded,
  type UnitSystem,
} from "#lib/quantity";
import { type Asked, textOf } from "./plan-choice";

/** A material that may be added, with its density as loose as it settles on the field. */
export type TopUp = Readonly<{ id: string; label: string; bulkDensity: Interval<"kg/m³">; source: string }>;

/** The depth wanted and the material to add, as typed. */
export type InfillChoice = Readonly<{ depth: string; material: string }>;

/** The materials of the installed bid, the uppermost first, then the catalogue. */
export function topUps(bid: Bid | null, own: readonly InfillMaterial[]): readonly TopUp[] {
  const installed = (bid?.infill.components ?? []).toReversed().flatMap(({ id, material, bulkDensity }): TopUp[] => {
    const found = findMaterial(material, own);
    const label = found?.label ?? material;
    if (bulkDensity !== null) {
      const stated = intervalOf(bulkDensity.reading);
      if (Number.isFinite(stated.high) && stated.low > 0)
        return [{ id, label, bulkDensity: stated, source: `${label}, bid ${bid?.letter}: ${bulkDensity.asEntered}` }];
    }
    return found === undefined
      ? []
      : [{ id, label, bulkDensity: found.bulkDensity, source: `${label}: ${found.bulkDensity.source}` }];
  });
  const others = [...own, ...infillMaterials].map(
    ({ id, label, bulkDensity }): TopUp => ({
      id: `material-${id}`,
      label,
      bulkDensity,
      source: `${label}: ${bulkDensity.source}`,
    }),
  );
  return [...installed, ...others];
}

/** The middle of the depth that the bid's infill comes to; null where it is not known. */
export function claimedDepth(evaluated: BidEvaluation | undefined): In<"m"> | null {
  const depth = evaluated === undefined ? null : intervalOfFigure(evaluated.infill.depth);
  return depth !== null && Number.isFinite(depth.low) && Number.isFinite(depth.high)
    ? measured("length", (depth.low + depth.high) / 2)
    : null;
}

export const infillChoice = (
  asked: Asked,
  start: Readonly<{ depth: In<"m"> | null; materials: readonly TopUp[]; units: UnitSystem }>,
): InfillChoice => ({
  depth: (
    textOf(asked, "depth") ?? (start.depth === null ? "" : formatValue("length", start.depth, start.units))
  ).trim(),
  material: textOf(asked, "material") ?? start.materials[0]?.id ?? "",
});

/** The depth wanted, or what keeps it from being read. */
export function depthWanted(text: string): Result<In<"m">, string> {
  if (text === "") return failed("Give the depth of infill that is wanted, for instance the depth of the contract.");
  const parsed = parseExact("length", text);
  if (!parsed.ok) return failed(explainQuantity(parsed.problem));
  return parsed.value.value > 0
    ? succeeded(parsed.value.value)
    : failed(`“${text}” was read. Expected a depth above 0.`);
}
