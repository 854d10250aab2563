import { type ClaimInput, claimSchema } from "#lib/claim";
import { priceLinesSchema } from "#lib/cost";
import { type CheckedBid, type Finding, findingsAmong } from "#lib/crosscheck";
import { type Figure, figureFromInterval } from "#lib/figure";
import { impactRequirementSchema } from "#lib/impact";
import {
  floatProneShare,
  type InfillSystem,
  infillDepth,
  mineralShare,
  type Placement,
  stabilisingMass,
  totalArealDensity,
} from "#lib/infill";
import { findMaterial } from "#lib/material";
import { type DimensionName, intervalOf, measured, parseQuantity, plainDate, type Reading } from "#lib/quantity";

const working = { formula: "given", inputs: [], assumptions: [], source: "invented" };

function read<D extends DimensionName>(dimension: D, text: string) {
  const parsed = parseQuantity(dimension, text);
  if (!parsed.ok) throw new Error(`${dimension} “${text}”`);
  return parsed.value.reading;
}

/** A figure as a person would write it. */
export const written = <D extends DimensionName>(dimension: D, text: string): Figure<D> =>
  figureFromInterval(dimension, intervalOf(read(dimension, text)), working);

/** A claim as text; what is left out is read as not stated. */
export type WrittenClaim = Partial<ClaimInput> & { property: string };

export const claims = (...texts: readonly WrittenClaim[]) =>
  texts.map((text, index) => claimSchema.parse({ id: `claim-${index}`, evidence: "stated", ...text }));

/** Infill from the material catalogue: `["silica-sand", "6 lb/ft²"]`, with the loose density where the bid states one. */
export function infill(
  placement: Placement,
  ...components: readonly (readonly [material: string, mass: string, loose?: string])[]
): InfillSystem {
  return {
    bid: "bid-a",
    placement,
    components: components.map(([id, mass, loose], index) => {
      const material = findMaterial(id, []);
      if (material === undefined) throw new Error(`no material ${id}`);
      const bulkDensity: Reading<"kg/m³"> | null = loose === undefined ? null : read("bulkDensity", loose);
      return { id: `component-${index}`, material, arealDensity: read("arealDensity", mass), bulkDensity };
    }),
  };
}

export const prices = (...lines: readonly unknown[]) => priceLinesSchema.parse(lines);

const impact = impactRequirementSchema.parse({
  method: "f1936",
  targetWindow: { low: "90 g", high: "130 g" },
  limit: "165 g",
  limitSource: "the owner's contract",
  testLocations: "10",
  horizonYears: "8 years",
  ownersDrift: { low: "1 g/year", likely: "3 g/year", high: "6 g/year" },
  chanceLevel: "95 %",
  depthSensitivity: { kind: "common-practice" },
});

/** A bid with nothing to find unless told otherwise; what follows from its infill and the area is worked out. */
export function checkedBid(differing: Partial<CheckedBid> = {}): CheckedBid {
  const area = differing.area ?? written("area", "80,000 ft²");
  const system = differing.infill ?? infill("layered");
  return {
    id: "bid-a",
    letter: "A",
    system: "",
    claims: [],
    infill: system,
    described: [],
    prices: [],
    totalArealDensity: totalArealDensity(system),
    stabilisingMass: stabilisingMass(system, area),
    infillDepth: infillDepth(system),
    mineralShare: mineralShare(system),
    floatProneShare: floatProneShare(system),
    area,
    hoursPerYear: measured("yearlyUse", 1800, "h/year"),
    studyYears: 20,
    asOf: plainDate("2027-06-01"),
    impact: { ...impact, method: "f1936" },
    ...differing,
  };
}

/** What one rule finds, so that a test of it is not disturbed by the others. */
export const foundBy = (rule: string, bid: CheckedBid, others: readonly CheckedBid[] = []): readonly Finding[] =>
  findingsAmong(others)(bid).filter((finding) => finding.rule === rule);
