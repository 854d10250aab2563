import fc from "fast-check";
import { expect, test } from "vitest";
import { portableExp, portableLog } from "#lib/sampling";

// computed with mpmath to 20 digits
test("agrees with mpmath to one unit in the last place", () => {
  const logs: readonly (readonly [number, number])[] = [
    [1e-300, -690.7755278982137],
    [0.3, -1.2039728043259361],
    [0.7, -0.35667494393873245],
    [1.5, 0.4054651081081644],
    [12, 2.4849066497880004],
    [123456.789, 11.723646487185881],
  ];
  for (const [x, log] of logs) expect(Math.abs(portableLog(x) / log - 1)).toBeLessThan(2.3e-16);
  const powers: readonly (readonly [number, number])[] = [
    [-700, 9.85967654375977e-305],
    [-1, 0.36787944117144233],
    [0.5, 1.6487212707001282],
    [10.1, 24343.00942440838],
    [700, 1.0142320547350045e304],
  ];
  for (const [x, power] of powers) expect(Math.abs(portableExp(x) / power - 1)).toBeLessThan(2.3e-16);
});

test("follows the logarithm and the exponential of the language everywhere", () => {
  fc.assert(
    fc.property(fc.double({ min: 1e-300, max: 1e300, noNaN: true }), (x) => {
      expect(Math.abs(portableLog(x) - Math.log(x))).toBeLessThanOrEqual(4e-16 * Math.max(Math.abs(Math.log(x)), 1));
    }),
    { numRuns: 2000 },
  );
  fc.assert(
    fc.property(fc.double({ min: -700, max: 709, noNaN: true }), (x) => {
      expect(Math.abs(portableExp(x) / Math.exp(x) - 1)).toBeLessThanOrEqual(5e-16);
    }),
    { numRuns: 2000 },
  );
});

test("has its ends", () => {
  expect([portableExp(0), portableExp(800), portableExp(-800), portableLog(1)]).toEqual([
    1,
    Number.POSITIVE_INFINITY,
    0,
    0,
  ]);
});
