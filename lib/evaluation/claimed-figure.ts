import {
  bestClaim,
  type Claim,
  type ClaimQuery,
  claimComparability,
  type DimensionOf,
  type EvidenceLevel,
  type QuantityPropertyId,
  quantityOf,
} from "#lib/claim";
import { type Figure, figureFromInterval, unknown } from "#lib/figure";
import { intervalOf, type SiUnit } from "#lib/quantity";
import type { Distribution } from "#lib/sampling";
import { claimInput, claimInWords } from "./claim-in-words";
import { claimSpread, claimSpreadInWords } from "./claim-spread";
import { convertedFigure } from "./converted-figure";
import { dimensionOf } from "./dimension-of";
import { noEvidence } from "./weakest";

/** A figure with what shows it, and how it scatters where the bid says more than its ends. */
export type EvidencedFigure = Readonly<{ figure: Figure; evidence: EvidenceLevel; spread?: Distribution | null }>;

/** What to look at although the figure counts; silence on the method alone is said where no method is wanted. */
function cautions(claim: Claim, query: ClaimQuery): readonly string[] {
  const verdict = claimComparability(query, claim);
  return verdict.kind === "not-comparable" ? [] : verdict.cautions;
}

const otherClaims = (others: readonly Claim[]): readonly string[] =>
  others.map((other) => `The bid also states ${claimInWords(other)}; the less favourable figure counts.`);

const sourceOf = ({ document }: Claim): string => (document === "" ? "the bid" : `the bid: ${document}`);

/** What is looked for: a property that takes a figure, by which method and in which condition. */
type FigureQuery<P extends QuantityPropertyId> = ClaimQuery & Readonly<{ property: P }>;

/** A claimed figure; `claim` is the one that stands behind it, null where none counts. */
export type ClaimedFigure<P extends QuantityPropertyId> = Readonly<{
  figure: Figure<DimensionOf<P>>;
  evidence: EvidenceLevel;
  spread?: Distribution | null;
  claim: Claim | null;
}>;

/**
 * The figure that a bid claims for a property, as written; worked out from another of its claims where it follows from
 * that by definition; or why none of its claims counts.
 * @param area of the field, for what follows through it; null where none is at hand
 */
export function claimedFigure<P extends QuantityPropertyId>(
  bid: string,
  claims: readonly Claim[],
  query: FigureQuery<P>,
  area: Figure<"area"> | null,
): ClaimedFigure<P> {
  const found = bestClaim(claims, query);
  if (!found.ok) {
    const gap = found.problem.kind === "not-claimed" || found.problem.kind === "not-a-figure";
    const converted = gap ? convertedFigure(bid, claims, query, area) : null;
    return (
      converted ?? { figure: unknown(dimensionOf(query.property), found.problem), evidence: noEvidence, claim: null }
    );
  }
  const { claim, others } = found.value;
  const quantity = quantityOf(claim, query.property);
  if (quantity === null) throw new RangeError(`${claim.id} holds no figure for ${query.property}`);
  const figure = figureFromInterval(quantity.dimension, intervalOf<SiUnit<DimensionOf<P>>>(quantity.reading), () => ({
    formula: "as claimed, converted exactly",
    inputs: [claimInput(bid, claim)],
    assumptions: [...cautions(claim, query), ...claimSpreadInWords(claim), ...otherClaims(others)],
    source: sourceOf(claim),
  }));
  return { figure, evidence: claim.evidence, spread: claimSpread(claim), claim };
}
