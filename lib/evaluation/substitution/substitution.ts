import type { Bid, Substitution } from "../model";

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
