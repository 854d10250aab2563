import type { Claim } from "#lib/claim";
import type { PriceLine } from "#lib/cost";
import type { PlainDate } from "#lib/quantity";
import type { Bid } from "../model";

/** A request to deliver something else than what was bid, with what it claims. */
export type Substitution = Readonly<{
  id: string;
  item: string;
  requested: PlainDate | null;
  reason: string;
  /** What the substitute claims: each stands in place of all that the bid says of its property. */
  claims: readonly Claim[];
  /** Infill in place of the bid’s; without a component the bid’s stays. */
  infill: Bid["infill"];
  /** What it costs more, or less where it is a credit; null where the price stays. */
  priceChange: PriceLine | null;
  decision: "" | "accepted" | "rejected";
  decided: PlainDate | null;
  note: string;
}>;

/** The bid with the claims, the infill and the price of a substitution in place of its own. */
export function substitutedBid(bid: Bid, { claims, infill, priceChange }: Substitution): Bid {
  const replaced = new Set(claims.map(({ property }) => property));
  const standing = bid.claims.filter(({ property }) => !replaced.has(property));
  const taken = new Set(standing.map(({ id }) => id));
  // ids are told apart within a bid only, and a request has its own
  const own = claims.map((claim) => (taken.has(claim.id) ? { ...claim, id: `substitute-${claim.id}` } : claim));
  return {
    ...bid,
    claims: [...standing, ...own],
    infill: infill.components.length === 0 ? bid.infill : infill,
    prices: priceChange === null ? bid.prices : [...bid.prices, priceChange],
  };
}
