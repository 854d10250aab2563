import {
  bestClaim,
  type Claim,
  type ClaimQuery,
  type Conversion,
  type ConversionInputs,
  claimComparability,
  conversionInputNames,
  conversionsTo,
  convertReading,
  type DimensionOf,
  type EvidenceLevel,
  inSentence,
  propertyOf,
  type QuantityPropertyId,
  quantityOf,
} from "#lib/claim";
import {
  type Figure,
  figureFromInterval,
  formatFigure,
  intervalOfFigure,
  unknown,
  type WorkingInput,
} from "#lib/figure";
import { type Interval, intervalOf, type SiUnit } from "#lib/quantity";
import { claimInput } from "./claim-in-words";
import { dimensionOf } from "./dimension-of";
import { weakest } from "./weakest";

type Query<P extends QuantityPropertyId> = ClaimQuery & Readonly<{ property: P }>;

/** A figure that follows from another claim by definition. */
export type ConvertedFigure<P extends QuantityPropertyId> = Readonly<{
  figure: Figure<DimensionOf<P>>;
  evidence: EvidenceLevel;
  claim: Claim;
}>;

/** The claim from which the wanted property follows, by the wanted method where that method gives both. */
function sourceClaim(claims: readonly Claim[], { method, condition, edition }: ClaimQuery, { from }: Conversion) {
  const gives = method !== undefined && propertyOf(from).methods.includes(method);
  const found = bestClaim(claims, {
    property: from,
    ...(gives ? { method } : {}),
    ...(gives && edition !== undefined ? { edition } : {}),
    ...(condition === undefined ? {} : { condition }),
  });
  return found.ok ? found.value.claim : null;
}

/**
 * What the bid amounts to for a property that it does not claim, worked out from one that it does. Null where none of
 * its claims leads there; unknown where the conversion lacks an input.
 */
export function convertedFigure<P extends QuantityPropertyId>(
  bid: string,
  claims: readonly Claim[],
  query: Query<P>,
  area: Figure<"area"> | null,
): ConvertedFigure<P> | null {
  const sources = conversionsTo(query.property).flatMap((conversion) => {
    const claim = sourceClaim(claims, query, conversion);
    return claim === null ? [] : [{ conversion, claim }];
  });
  const [source] = sources;
  if (source === undefined) return null;
  const { conversion, claim } = source;
  const quantity = quantityOf(claim, conversion.from);
  if (quantity === null) return null;
  const air = bestClaimOf(claims, "heat-air-temperature");
  const inputs: ConversionInputs = {
    "field-area": area === null ? null : intervalOfFigure(area),
    "air-temperature": air === null ? null : intervalOf(air.quantity.reading),
  };
  const dimension = dimensionOf(query.property);
  const converted = convertReading(conversion, quantity.reading, inputs);
  if (!converted.ok) {
    const what = `${conversionInputNames[converted.problem.input]}, to get ${name(query.property)} from ${name(conversion.from)}`;
    return { figure: unknown(dimension, { kind: "missing-input", what }), evidence: claim.evidence, claim };
  }
  const used = conversion.needs.includes("air-temperature") && air !== null ? [air.claim] : [];
  const verdict = claimComparability(query, claim);
  const figure = figureFromInterval(dimension, converted.value as Interval<SiUnit<DimensionOf<P>>>, {
    formula: conversion.formula,
    inputs: [
      claimInput(bid, claim),
      ...used.map((each) => claimInput(bid, each)),
      ...(conversion.needs.includes("field-area") && area !== null ? [areaInput(area)] : []),
    ],
    assumptions: verdict.kind === "not-comparable" ? [conversion.provided] : verdict.cautions,
    source: conversion.source,
  });
  return { figure, evidence: weakest([claim, ...used].map(({ evidence }) => evidence)), claim };
}

function bestClaimOf(claims: readonly Claim[], property: "heat-air-temperature") {
  const found = bestClaim(claims, { property });
  const quantity = found.ok ? quantityOf(found.value.claim, property) : null;
  return found.ok && quantity !== null ? { claim: found.value.claim, quantity } : null;
}

const name = (property: QuantityPropertyId): string => inSentence(propertyOf(property).label);

const areaInput = (area: Figure<"area">): WorkingInput => ({
  label: "area of the field",
  text: `${formatFigure(area, "us")} (${formatFigure(area, "metric")})`,
  from: { kind: "figure", figure: "field-area" },
});
