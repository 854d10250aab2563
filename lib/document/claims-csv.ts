import {
  type ClaimField,
  claimFieldLabels,
  claimFields,
  commaSeparated,
  evidenceLevels,
  matchEvidence,
  matchMethod,
  matchProperty,
  methodOf,
  propertyOf,
} from "#lib/claim";
import type { BidText } from "#lib/evaluation";
import { fieldInWords } from "./field-in-words";

type Claims = BidText["claims"];

/** Fields whose name does not say enough by itself. */
const labelled: readonly ClaimField[] = ["method", "testField", "fieldCount", "spread"];
const heading = (field: ClaimField): string =>
  labelled.includes(field) ? claimFieldLabels[field] : fieldInWords(field);
const headings = claimFields.map(heading);

/** A field of a claim as it was entered; what was chosen from a list stands there by its name. */
function cellOf(claim: Claims[number], field: ClaimField): string {
  const held: Readonly<Record<string, unknown>> = claim;
  const written = held[field];
  const text = typeof written === "string" ? written.trim() : "";
  if (field === "property") {
    const property = matchProperty(text);
    return property === null ? text : propertyOf(property).label;
  }
  if (field === "method") {
    const method = matchMethod(text);
    if (method === null) return text;
    return method === "not-stated" ? "not stated" : methodOf(method).designation;
  }
  if (field === "evidence") return evidenceLevels.find(({ id }) => id === matchEvidence(text))?.label ?? text;
  return text;
}

const rowOf = (claim: Claims[number]): readonly string[] => claimFields.map((field) => cellOf(claim, field));

/** The claims of one bid for a spreadsheet. Pasted into a ledger, headings and all, it gives the same claims. */
export const claimsCsv = (claims: Claims): string => commaSeparated([headings, ...claims.map(rowOf)]);

/** The claims of all bids, each behind the letter and the bidder. */
export const claimsOfBidsCsv = (bids: readonly Pick<BidText, "letter" | "bidder" | "claims">[]): string =>
  commaSeparated([
    ["Bid", "Bidder", ...headings],
    ...bids.flatMap(({ letter, bidder, claims }) => claims.map((claim) => [letter, bidder, ...rowOf(claim)])),
  ]);
