import { type Property, type PropertyId, properties } from "#lib/claim";
import { type Project, type ProjectFile, projectFileSchema } from "#lib/evaluation";
import { inUnit, unitFor } from "#lib/quantity";
import demonstration from "../../app/_demo/demonstration-project.json";

const demo = demonstration as unknown as ProjectFile;
type BidInFile = ProjectFile["bids"][number];
type ClaimInFile = BidInFile["claims"][number];

/** How much the figures of one bid differ from those of the bid before, so that no two bids say the same. */
const step = 0.001;

/** A plausible claim for a property: near the middle of its usual band, a choice, or words. */
function plausibleClaim(property: Property, id: string, condition: string, bid: number): ClaimInFile {
  const text = { id, property: property.id as PropertyId, method: property.methods[0] ?? "", evidence: "stated" };
  switch (property.kind) {
    case "choice":
      return { ...text, figure: property.choices[0]?.id ?? "" };
    case "words":
      return { ...text, words: "As stated in the bid" };
    case "quantity": {
      const unit = unitFor(property.dimension, "us");
      const band = property.plausible;
      const middle = (band === null ? 1 : (band.low + band.high) / 2) * (1 + bid * step);
      const written = inUnit(property.dimension, middle as never, unit);
      return { ...text, figure: `${Number(written.toPrecision(4))} ${unit}`, condition };
    }
  }
}

/** One of the demonstration's bids filled up with plausible claims, each property as new and then after five years. */
function filledBid(index: number, claimCount: number): BidInFile {
  const model = demo.bids[index % demo.bids.length];
  if (model === undefined) throw new RangeError("the demonstration has bids");
  const claimed = new Set(model.claims.map(({ property }) => property));
  const asNew = properties
    .filter(({ id }) => !claimed.has(id))
    .map((property) => plausibleClaim(property, `more-${property.id}`, "new", index));
  const aged = properties.map((property) => plausibleClaim(property, `aged-${property.id}`, "year 5", index));
  const claims = [...model.claims, ...asNew, ...aged].slice(0, claimCount);
  if (claims.length < claimCount) throw new RangeError(`only ${claims.length} claims to give`);
  const letter = index < 26 ? String.fromCharCode(65 + index) : `${String.fromCharCode(39 + index)}2`;
  return { ...model, id: `bid-${index}`, letter, claims };
}

/** The demonstration with as many bids and claims as asked for, as a file. */
export const manyBidsFile = (bids: number, claims: number): ProjectFile => ({
  ...demo,
  bids: Array.from({ length: bids }, (_, index) => filledBid(index, claims)),
});

export const manyBids = (bids: number, claims: number): Project => projectFileSchema.parse(manyBidsFile(bids, claims));
