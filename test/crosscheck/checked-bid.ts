import { type ClaimInput, claimSchema } from "#lib/claim";
import type { CheckedBid } from "#lib/crosscheck";
import { type Figure, figureFromInterval, unknown } from "#lib/figure";
import { type DimensionName, intervalOf, parseQuantity } from "#lib/quantity";

const working = { formula: "given", inputs: [], assumptions: [], source: "invented" };

/** A figure as a person would write it. */
export function written<D extends DimensionName>(dimension: D, text: string): Figure<D> {
  const parsed = parseQuantity(dimension, text);
  if (!parsed.ok) throw new Error(text);
  return figureFromInterval(dimension, intervalOf(parsed.value.reading), working);
}

export const claims = (...texts: readonly (Partial<ClaimInput> & { property: string })[]) =>
  texts.map((text, index) => claimSchema.parse({ id: `claim-${index}`, evidence: "stated", ...text }));

/** A bid with nothing to find unless told otherwise. */
export const checkedBid = (differing: Partial<CheckedBid> = {}): CheckedBid => ({
  claims: [],
  totalArealDensity: unknown("arealDensity", { kind: "not-claimed", what: "the components of the infill" }),
  infillDepth: unknown("length", { kind: "not-claimed", what: "the components of the infill" }),
  impactMethod: "f1936",
  ...differing,
});
