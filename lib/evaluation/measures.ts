import {
  evidenceLevels as levels,
  type MethodId,
  methodOf,
  type Property,
  properties,
  type QuantityPropertyId,
} from "#lib/claim";
import { type EvidenceLevel, type Measure, ratingMeasure } from "#lib/criteria";
import type { DimensionName } from "#lib/quantity";

/** The levels of evidence as criteria ask for them, weakest first. */
export const evidenceLevels: readonly EvidenceLevel[] = levels.map(({ id, label }, rank) => ({
  level: id,
  label,
  rank,
}));

/** What is worked out from a bid and can be judged. Each is read off the evaluation in `derived-measures.ts`. */
export const derivedMeasures = [
  {
    id: "impact-level-as-new",
    label: "Impact level as new",
    dimension: "impactLevel",
    note: "By the method of the impact requirement.",
  },
  {
    id: "impact-level-worst-point",
    label: "Impact level at the hardest point, as new",
    dimension: "impactLevel",
    note: "By the method of the impact requirement; at most the level as new where that holds at every point.",
  },
  {
    id: "impact-level-at-horizon",
    label: "Impact level in the last year looked at",
    dimension: "impactLevel",
    note: "The whole range of the hardness outlook in that year.",
  },
  {
    id: "depth-margin",
    label: "Infill depth that may be lost before the limit",
    dimension: "length",
    note: "By the rule of thumb, where it applies, or the owner’s own sensitivity.",
  },
  {
    id: "shock-layer",
    label: "Thickness of the shock layer",
    dimension: "length",
    note: "Nothing where the bid says that there is none.",
  },
  {
    id: "infill-mass-per-area",
    label: "Infill mass per area",
    dimension: "arealDensity",
    note: "All components of the infill added up.",
  },
  {
    id: "stabilising-mass",
    label: "Total stabilising mass",
    dimension: "mass",
    note: "Infill mass over the whole field.",
  },
  { id: "mineral-share", label: "Mineral share of the infill", dimension: "fraction", note: "By mass." },
  {
    id: "submerged-mass",
    label: "Infill mass per area under water",
    dimension: "arealDensity",
    note: "What still presses down when the field is flooded.",
  },
  { id: "float-prone-share", label: "Share of the infill that may float", dimension: "fraction", note: "By mass." },
  { id: "infill-depth", label: "Infill depth from mass and density", dimension: "length", note: "Loose, as placed." },
  { id: "free-pile", label: "Free pile from depth", dimension: "length", note: "Pile height less infill depth." },
  {
    id: "present-value",
    label: "Life-cycle cost, present value",
    dimension: "money",
    note: "All costs of the study period at the base date.",
  },
  {
    id: "price-at-base-date",
    label: "Price at the base date",
    dimension: "money",
    note: "With the owner’s additions.",
  },
  {
    id: "equivalent-annual-cost",
    label: "Equivalent annual cost",
    dimension: "money",
    note: "The life-cycle cost as equal amounts a year.",
  },
  {
    id: "annual-cost-per-area",
    label: "Equivalent annual cost per area",
    dimension: "moneyPerArea",
    note: "A year.",
  },
  {
    id: "cost-per-hour",
    label: "Cost per hour of use",
    dimension: "moneyPerTime",
    note: "Equivalent annual cost ÷ hours a year.",
  },
] as const satisfies readonly Measure[];

export type DerivedMeasureId = (typeof derivedMeasures)[number]["id"];

/** A claimed property by one family of test methods: unlike methods are unlike measures, so they never share a scale. */
export type ClaimedMeasure = Measure & Readonly<{ property: QuantityPropertyId; method: MethodId | null }>;

type QuantityProperty = Extract<Property, { kind: "quantity" }> & Readonly<{ id: QuantityPropertyId }>;

const firstOfEachFamily = ({ methods }: QuantityProperty): readonly MethodId[] => {
  const families = new Map<string, MethodId>();
  for (const id of methods as readonly MethodId[]) {
    const family = methodOf(id).measuresLike;
    if (!families.has(family)) families.set(family, id);
  }
  return [...families.values()];
};

function measuresOf(property: QuantityProperty): readonly ClaimedMeasure[] {
  const dimension: DimensionName = property.dimension;
  const shared = { dimension, property: property.id };
  const methods = firstOfEachFamily(property);
  if (methods.length === 0)
    return [{ ...shared, id: property.id, label: property.label, note: property.question, method: null }];
  return methods.map((method) => ({
    ...shared,
    id: `${property.id}.${method}`,
    label: `${property.label}, by ${methodOf(method).designation}`,
    note: `${property.question} Figures by unlike methods do not count.`,
    method,
  }));
}

const isQuantity = (property: Property): property is QuantityProperty => property.kind === "quantity";

/** Every quantity of the claim catalogue as a measure. */
export const claimedMeasures: readonly ClaimedMeasure[] = properties.filter(isQuantity).flatMap(measuresOf);

/** Everything a criterion can judge. */
export const measures: readonly Measure[] = [...derivedMeasures, ratingMeasure, ...claimedMeasures];
