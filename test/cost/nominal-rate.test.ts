import fc from "fast-check";
import { expect, test } from "vitest";
import { fisherNominalRate, fisherRateWithout } from "#lib/cost";

test("taking inflation out of a nominal rate gives the real rate back", () => {
  const rate = fc.double({ min: -0.5, max: 0.5, noNaN: true });
  fc.assert(
    fc.property(rate, rate, (real, inflation) => {
      expect(fisherRateWithout(fisherNominalRate(real, inflation), inflation)).toBeCloseTo(real, 12);
    }),
  );
});

test("refuses to take out a rate of −100 %", () => {
  expect(() => fisherRateWithout(0.06, -1)).toThrow("a rate above −100 % is needed, got -100 %");
});
