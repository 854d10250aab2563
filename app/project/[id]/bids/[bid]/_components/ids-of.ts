import type { BidText } from "#lib/evaluation";

/** Every id in a bid. Links from workings name them without their kind, so new ones differ across all lists. */
export const idsOf = ({
  infill,
  claims,
  prices = [],
}: Pick<BidText, "infill" | "claims"> & Partial<Pick<BidText, "prices">>): readonly string[] =>
  [...infill.components, ...claims, ...prices].map(({ id }) => id);
