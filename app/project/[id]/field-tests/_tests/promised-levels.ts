import { type Claim, claimsFor, comparability, type MethodId, quantityOf } from "#lib/claim";
import type { Bid } from "#lib/evaluation";
import type { PromisedLevels, WarrantyClause } from "#lib/fieldtest";
import { type Figure, intervalOfFigure } from "#lib/figure";
import { type In, intervalOf, inUnit } from "#lib/quantity";

/** A level that the bid guarantees, as a figure by the method that is asked for. */
type Guarantee = Readonly<{ claim: Claim; level: In<"g">; years: number | null }>;

/** Claims that may promise a level: the limit of the warranty does by what it is, the others by their proof. */
const promising = ["warranty-hardness-limit", "g-max", "g-max-highest-point"] as const;

/** What is promised for the average alone says nothing of a single location, so it is not among them. */
function guaranteesOf({ claims }: Bid, method: MethodId): readonly Guarantee[] {
  const ofAverage = claimsFor(claims, "warranty-hardness-basis").some(
    ({ value }) => value.kind === "choice" && value.choice === "average",
  );
  return promising.flatMap((property) =>
    claimsFor(claims, property).flatMap((claim): readonly Guarantee[] => {
      const promises = property === "warranty-hardness-limit" ? !ofAverage : claim.evidence === "guaranteed";
      const ofFullDepth = claim.condition.infill === null; // a level over less infill is no promise for the field
      const quantity = promises && ofFullDepth ? quantityOf(claim, property) : null;
      if (quantity === null || comparability(property, method, claim.method).kind !== "comparable") return [];
      const { high } = intervalOf(quantity.reading);
      return Number.isFinite(high) ? [{ claim, level: high, years: yearsOf(claim, claims) }] : [];
    }),
  );
}

/** For how long a guarantee lasts: its own age, else the years of the warranty. */
function yearsOf({ condition: { age } }: Claim, claims: readonly Claim[]): number | null {
  if (age.kind === "aged") return age.years;
  const [years] = claimsFor(claims, "warranty-years").flatMap((claim) => quantityOf(claim, "warranty-years") ?? []);
  if (years === undefined) return null;
  const { low } = intervalOf(years.reading);
  return Number.isFinite(low) ? inUnit("time", low, "year") : null;
}

/** The strictest guarantee of a bid; null where it guarantees no level. */
const strictest = (bid: Bid, method: MethodId): Guarantee | null =>
  guaranteesOf(bid, method).toSorted((one, other) => one.level - other.level)[0] ?? null;

/** What a bid said of the level of its field: as new, and for how long it guarantees one. */
export function promisedLevels(bid: Bid | null, asNew: Figure<"impactLevel"> | null, method: MethodId): PromisedLevels {
  const claimed = asNew === null ? null : intervalOfFigure(asNew);
  const guarantee = bid === null ? null : strictest(bid, method);
  return {
    method,
    claimed: claimed !== null && Number.isFinite(claimed.high) ? claimed.high : null,
    guaranteed: guarantee === null ? null : { level: guarantee.level, years: guarantee.years },
  };
}

/** The guarantee as a clause, with its place and its words; null where there is none. */
export function guaranteeClause(bid: Bid | null, method: MethodId): WarrantyClause | null {
  const found = bid === null ? null : strictest(bid, method);
  if (found === null) return null;
  const { document, page, words, value } = found.claim;
  const where = [document, page === "" ? "" : `page ${page}`].filter((part) => part !== "").join(", ");
  return {
    where: where === "" ? "place in the bid not noted" : where,
    words: words === "" && value.kind === "quantity" ? value.quantity.asEntered : words,
    limit: found.level,
  };
}
