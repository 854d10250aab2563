import fc from "fast-check";
import { expect } from "vitest";
import type { CheckedBid } from "#lib/crosscheck";
import { foundBy } from "./checked-bid";

const seen = (rule: string, bid: CheckedBid) =>
  foundBy(rule, bid).map(({ key, severity, sentence }) => ({ key, severity, sentence }));

/** The order of claims and price lines never changes what a rule finds. */
export function orderNeverMatters(rule: string, bid: CheckedBid): void {
  const asGiven = seen(rule, bid);
  expect(asGiven).not.toEqual([]);
  const shuffled = <T>(list: readonly T[]) => fc.shuffledSubarray([...list], { minLength: list.length });
  fc.assert(
    fc.property(shuffled(bid.claims), shuffled(bid.prices), (claims, prices) => {
      expect(seen(rule, { ...bid, claims, prices })).toEqual(asGiven);
    }),
    { numRuns: 20 },
  );
}

/** Two ways to write one bid lead to findings of the same kind and severity. */
export function expectSameFindings(rule: string, one: CheckedBid, other: CheckedBid): void {
  const kinds = (bid: CheckedBid) => foundBy(rule, bid).map(({ key, severity }) => ({ key, severity }));
  expect(kinds(one)).toEqual(kinds(other));
}
