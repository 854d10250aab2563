import { type DimensionName, formatInterval, formatValue, type UnitSystem, withCurrencySign } from "#lib/quantity";
import type { Figure } from "./figure";
import { intervalOfFigure } from "./from-interval";

/** A figure in the reader's units: "8.90 lb/ft²", "8.50–9.00 lb/ft²", "at most 165 g", "not known". */
export function formatFigure<D extends DimensionName>(figure: Figure<D>, system: UnitSystem): string {
  const text = inDollars(figure, system);
  return figure.kind === "unknown" || figure.currency === undefined ? text : withCurrencySign(text, figure.currency);
}

function inDollars<D extends DimensionName>(figure: Figure<D>, system: UnitSystem): string {
  if (figure.kind === "known") return formatValue(figure.dimension, figure.value, system);
  const interval = intervalOfFigure(figure);
  return interval === null ? "not known" : formatInterval(figure.dimension, interval, system);
}
