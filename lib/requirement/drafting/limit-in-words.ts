import type { AskedOf, GateRule } from "#lib/criteria";
import { inSentence } from "#lib/figure";
import {
  type DimensionName,
  type ExactQuantity,
  formatValue,
  measured,
  unitFor,
  withCurrencySign,
  writtenCurrency,
} from "#lib/quantity";

const plain = (text: string) =>
  text
    .replace(/[\s,]/g, "")
    .replace(/(\.\d*?)0+(?=\D|$)/, "$1")
    .replace(/\.(?=\D|$)/, "");

/** The figure as the owner wrote it, with the other system of units behind it where that says something else. */
export function figureInWords({ asEntered, dimension, unit, value }: ExactQuantity): string {
  const si = measured(dimension as DimensionName, value);
  const currency = writtenCurrency(asEntered).code ?? "USD";
  const [us, metric] = (["us", "metric"] as const).map((system) =>
    withCurrencySign(formatValue(dimension, si, system), currency),
  ) as [string, string];
  if (us === metric || value === 0) return asEntered;
  const isUs = us.endsWith(unit) || unit === unitFor(dimension, "us");
  const other = isUs ? metric : us;
  return plain(other) === plain(asEntered) ? asEntered : `${asEntered} (${other})`;
}

/** “at least 8 lbf (35.6 N)”, “below 165 g”, “from 1.25 in (31.8 mm) to 1.75 in (44.5 mm)”. */
export function limitInWords(limit: GateRule): string {
  switch (limit.kind) {
    case "at-least":
      return `at least ${figureInWords(limit.limit)}`;
    case "at-most":
      return `at most ${figureInWords(limit.limit)}`;
    case "below":
      return `below ${figureInWords(limit.limit)}`;
    case "within":
      return `from ${figureInWords(limit.low)} to ${figureInWords(limit.high)}`;
  }
}

/** “Asked only of bids with infill mass per area below 6 lb/ft² (29.3 kg/m²).”; null where it is asked of all. */
export const askedOfInWords = (askedOf: AskedOf): string | null =>
  askedOf.kind === "every-bid"
    ? null
    : `Asked only of bids with ${inSentence(askedOf.measure.label)} ${limitInWords(askedOf.is)}.`;
