import { readdirSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { findingsAmong, rules } from "#lib/crosscheck";
import { checkedBid, claims, written } from "./checked-bid";

describe("every rule", () => {
  const tested = readdirSync(new URL("rules", import.meta.url)).map((file) => file.replace(/\.test\.ts$/, ""));

  test("has a test file of its own, and no test file is without its rule", () =>
    expect(tested.toSorted()).toEqual(rules.map(({ id }) => id).toSorted()));

  test("has an id of its own that can stand in a key", () => {
    const ids = rules.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(id).toMatch(/^[a-z]+(-[a-z]+)+$/);
  });

  test.each(rules.map((rule) => [rule.id, rule] as const))(
    "says what %s is about",
    (_id, { title, holds, tolerance }) => {
      expect(title).toMatch(/^[\p{Lu}].{8,}[^.]$/u);
      expect(holds).toMatch(/^\p{L}.* (against|with) .*[^.]$/u);
      expect(tolerance).not.toBe("");
      // figures of the tolerance are somebody's: a source, a definition, or nobody's and said so
      if (/\d/.test(tolerance))
        expect(tolerance).toMatch(/common practice, no source|by definition|derived|from memory/);
    },
  );

  test("says nothing of an empty bid", () =>
    expect(findingsAmong([checkedBid({ id: "bid-b" })])(checkedBid())).toEqual([]));
});

test("the most serious finding stands first, whatever the order of the claims", () => {
  const written9 = written("arealDensity", "3.2 lb/ft²");
  const all = claims(
    { property: "g-max", figure: "68 g", method: "clegg-on-turf", condition: "new" },
    { property: "shock-layer", figure: "none" },
    { property: "infill-total-areal-density", figure: "9.6 psf" },
  );
  const severities = (list: typeof all) =>
    findingsAmong([])(checkedBid({ claims: list, totalArealDensity: written9 })).map(({ severity }) => severity);
  expect(severities(all)[0]).toBe("can't be true");
  expect(severities(all.toReversed())).toEqual(severities(all));
});
