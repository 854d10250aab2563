import {
  type Claim,
  conversionsTo,
  evidenceLevels,
  inSentence,
  type MethodId,
  type Property,
  propertyOf,
  shownIn,
} from "#lib/claim";
import { convertedFigure, type Evaluation } from "#lib/evaluation";
import { explainShortfall, intervalOfFigure } from "#lib/figure";
import { formatInterval, type UnitSystem } from "#lib/quantity";
import { type Cell, emptyCell } from "./model";
import { numberAndUnit } from "./number-and-unit";

/** What a line of claimed figures is for. */
export type LineSetting = Readonly<{
  property: Property;
  /** The method of the line; null where any will do. */
  reference: MethodId | null;
  area: Evaluation["area"];
  units: UnitSystem;
}>;

/**
 * What a bid amounts to on a line that it says nothing about, where that follows by definition from another of its
 * claims; null where none leads there.
 */
export function convertedCell(
  bid: string,
  claims: readonly Claim[],
  { property, reference, area, units }: LineSetting,
): Cell | null {
  const [conversion] = conversionsTo(property.id);
  if (conversion === undefined) return null;
  const wanted = { property: conversion.to, ...(reference === null ? {} : { method: reference }) };
  const converted = convertedFigure(bid, claims, wanted, area);
  if (converted === null) return null;
  const { figure, evidence, claim } = converted;
  const interval = intervalOfFigure(figure);
  const source = inSentence(propertyOf(claim.property).label);
  if (figure.kind === "unknown" || interval === null)
    return {
      ...emptyCell(bid),
      status: "not shown",
      lines: figure.kind === "unknown" ? [`The bid gives ${source}. ${explainShortfall(figure.because)}`] : [],
    };
  const shown = shownIn(property, units);
  const statement = {
    id: claim.id,
    ...numberAndUnit(formatInterval(figure.dimension, interval, shown), figure.dimension, shown),
    qualifier: `from ${source}`,
    level: evidenceLevels.findIndex(({ id }) => id === evidence) + 1,
    facts: [{ label: "Worked out", text: `Not stated in the bid; it follows from ${source} by definition.` }],
  };
  return { ...emptyCell(bid), statements: [statement], working: figure.working };
}
