import {
  type Claim,
  type EvidenceLevel,
  evidenceLevels,
  fieldsInWords,
  formatCondition,
  inSentence,
  methodOf,
  propertyOf,
  reportInWords,
} from "#lib/claim";
import type { WorkingInput } from "#lib/figure";
import { oncePer } from "#lib/once";

const evidenceLabel = (level: EvidenceLevel): string =>
  inSentence(evidenceLevels.find(({ id }) => id === level)?.label ?? level);

/** What is claimed, as written; what was chosen from a list by its label. */
export function claimedInWords({ property: id, value }: Claim): string {
  switch (value.kind) {
    case "quantity":
      return value.quantity.asEntered;
    case "choice": {
      const property = propertyOf(id);
      const choice = property.kind === "choice" ? property.choices.find((each) => each.id === value.choice) : undefined;
      return inSentence(choice?.label ?? value.choice);
    }
    case "words":
      return value.words;
  }
}

/** What stands behind a claim: method, condition, proof and report, without the value and where it is written. */
export function claimDetails(claim: Claim): string {
  const { method, edition, condition, evidence, date } = claim;
  return [
    method === "not-stated" ? "method not stated" : methodOf(method).designation,
    edition.text === "" ? "" : `edition ${edition.text}`,
    formatCondition(condition),
    ...fieldsInWords(claim),
    claim.spread === null ? "" : `standard deviation ${claim.spread.asEntered}`,
    evidenceLabel(evidence),
    ...reportInWords({ ...claim, date: date?.text ?? "" }),
  ]
    .filter((part) => part !== "")
    .join(", ");
}

/** A claim as it stands in the bid: figure, method, condition, proof, report, document and page. */
export const claimInWords = oncePer((claim: Claim): string => {
  const { document, page } = claim;
  const parts = [claimedInWords(claim), claimDetails(claim), document, page === "" ? "" : `p. ${page}`];
  return parts.filter((part) => part !== "").join(", ");
});

/** A claim as an input of a working. */
export const claimInput = (bid: string, claim: Claim): WorkingInput => ({
  label: propertyOf(claim.property).label,
  text: claimInWords(claim),
  from: { kind: "claim", bid, claim: claim.id },
});
