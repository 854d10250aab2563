import {
  bestClaim,
  type Claim,
  type ClaimQuery,
  comparability,
  type DimensionOf,
  type EvidenceLevel,
  evidenceLevels,
  formatCondition,
  inSentence,
  methodOf,
  propertyOf,
  type QuantityPropertyId,
  quantityOf,
  reportInWords,
} from "#lib/claim";
import { type Figure, figureFromInterval, unknown, type WorkingInput } from "#lib/figure";
import { intervalOf, type SiUnit } from "#lib/quantity";

/** A figure with what shows it. */
export type EvidencedFigure = Readonly<{ figure: Figure; evidence: EvidenceLevel }>;

/** The evidence of something that is not there. */
export const noEvidence: EvidenceLevel = "stated";

const evidenceLabel = (level: EvidenceLevel): string =>
  inSentence(evidenceLevels.find(({ id }) => id === level)?.label ?? level);

/** A claim as it stands in the bid: figure, method, condition, proof, report, document and page. */
export function claimInWords(claim: Claim): string {
  const { value, method, edition, condition, evidence, date, document, page } = claim;
  const figure =
    value.kind === "quantity" ? value.quantity.asEntered : value.kind === "choice" ? value.choice : value.words;
  const parts = [
    figure,
    method === "not-stated" ? "method not stated" : methodOf(method).designation,
    edition.text === "" ? "" : `edition ${edition.text}`,
    formatCondition(condition),
    evidenceLabel(evidence),
    ...reportInWords({ ...claim, date: date?.text ?? "" }),
    document,
    page === "" ? "" : `p. ${page}`,
  ];
  return parts.filter((part) => part !== "").join(", ");
}

const claimInput = (bid: string, claim: Claim): WorkingInput => ({
  label: propertyOf(claim.property).label,
  text: claimInWords(claim),
  from: { kind: "claim", bid, claim: claim.id },
});

const methodNote = (claim: Claim, { method }: ClaimQuery): readonly string[] => {
  if (method === undefined) return [];
  const verdict = comparability(claim.property, method, claim.method);
  return verdict.kind === "comparable" && verdict.note !== "" ? [verdict.note] : [];
};

function dimensionOf<P extends QuantityPropertyId>(id: P): DimensionOf<P> {
  const property = propertyOf(id);
  if (property.kind !== "quantity") throw new RangeError(`${id} takes no figure`);
  return property.dimension as DimensionOf<P>; // the catalogue's own list says so; a look-up by id loses it
}

/** What is looked for: a property that takes a figure, by which method and in which condition. */
type FigureQuery<P extends QuantityPropertyId> = ClaimQuery & Readonly<{ property: P }>;

/** A claimed figure; `claim` is the one that stands behind it, null where none counts. */
export type ClaimedFigure<P extends QuantityPropertyId> = Readonly<{
  figure: Figure<DimensionOf<P>>;
  evidence: EvidenceLevel;
  claim: Claim | null;
}>;

/** The figure that a bid claims for a property, as written, or why none of its claims counts. */
export function claimedFigure<P extends QuantityPropertyId>(
  bid: string,
  claims: readonly Claim[],
  query: FigureQuery<P>,
): ClaimedFigure<P> {
  const found = bestClaim(claims, query);
  if (!found.ok) {
    return { figure: unknown(dimensionOf(query.property), found.problem), evidence: noEvidence, claim: null };
  }
  const { claim, others } = found.value;
  const quantity = quantityOf(claim, query.property);
  if (quantity === null) throw new RangeError(`${claim.id} holds no figure for ${query.property}`);
  const figure = figureFromInterval(quantity.dimension, intervalOf<SiUnit<DimensionOf<P>>>(quantity.reading), {
    formula: "as claimed, converted exactly",
    inputs: [claimInput(bid, claim)],
    assumptions: [
      ...methodNote(claim, query),
      ...others.map((other) => `The bid also states ${claimInWords(other)}; the less favourable figure counts.`),
    ],
    source: claim.document === "" ? "the bid" : `the bid: ${claim.document}`,
  });
  return { figure, evidence: claim.evidence, claim };
}
