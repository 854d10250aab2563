import fc from "fast-check";
import { expect } from "vitest";
import type { CheckedBid } from "#lib/crosscheck";
import { foundBy } from "./checked-bid";

/** Holds the law that the order of claims changes no finding, for a bid in which the rule finds something. */
export function expectSameInAnyOrder(rule: string, bid: CheckedBid, others: readonly CheckedBid[] = []): void {
  const found = foundBy(rule, bid, others);
  expect(found.length).toBeGreaterThan(0);
  expect(bid.claims.length).toBeGreaterThan(1);
  fc.assert(
    fc.property(fc.shuffledSubarray([...bid.claims], { minLength: bid.claims.length }), (claims) => {
      expect(foundBy(rule, { ...bid, claims }, others)).toEqual(found);
    }),
    { numRuns: 30 },
  );
}
