import { expect, test } from "vitest";
import { isQuietKind, isQuietPlace } from "#lib/together";

test("nobody hears who scores or enters prices when", () => {
  for (const place of ["committee/scoresheet", "bids/bid-a/sealed-prices"]) expect(isQuietPlace(place)).toBe(true);
  for (const place of ["committee", "bids/bid-a", "brief", "bids/bid-a/sealed-prices/more"])
    expect(isQuietPlace(place)).toBe(false);
  for (const kind of ["scoresheet", "sealed-prices"]) expect(isQuietKind(kind)).toBe(true);
  for (const kind of ["bid", "brief"]) expect(isQuietKind(kind)).toBe(false);
});
