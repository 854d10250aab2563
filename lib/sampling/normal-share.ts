import { portableExp, portableLog } from "./portable";

const density = (x: number): number => portableExp(-0.5 * x * x) / 2.5066282746310002; // √(2π)

/**
 * Chance that a standard normal value stays below x, to 15 digits.
 * @source series and continued fraction as in Abramowitz and Stegun 26.2.11 and 26.2.14, from memory
 */
export function normalShare(x: number): number {
  if (Math.abs(x) > 5) {
    let fraction = 0;
    for (let term = 60; term >= 1; term -= 1) fraction = term / (Math.abs(x) + fraction);
    const tail = density(x) / (Math.abs(x) + fraction);
    return x < 0 ? tail : 1 - tail;
  }
  let term = x;
  let sum = x;
  for (let odd = 3; sum + term !== sum; odd += 2) {
    term *= (x * x) / odd;
    sum += term;
  }
  return 0.5 + density(x) * sum;
}

// The coefficients stand in the formulas: read from lists they took three times as long.

/** Within 0.425 of one half, over the share’s distance from there. */
const middle = (r: number): number =>
  (((((((2509.0809287301227 * r + 33430.57558358813) * r + 67265.7709270087) * r + 45921.95393154987) * r +
    13731.69376550946) *
    r +
    1971.5909503065513) *
    r +
    133.14166789178438) *
    r +
    3.3871328727963665) /
  (((((((5226.495278852854 * r + 28729.085735721943) * r + 39307.89580009271) * r + 21213.794301586597) * r +
    5394.196021424751) *
    r +
    687.1870074920579) *
    r +
    42.31333070160091) *
    r +
    1);

/** In the tail, over the root of the logarithm. */
const tail = (r: number): number =>
  (((((((0.0007745450142783414 * r + 0.022723844989269184) * r + 0.2417807251774506) * r + 1.2704582524523684) * r +
    3.6478483247632045) *
    r +
    5.769497221460691) *
    r +
    4.630337846156546) *
    r +
    1.4234371107496835) /
  (((((((1.0507500716444169e-9 * r + 0.0005475938084995345) * r + 0.015198666563616457) * r + 0.14810397642748008) * r +
    0.6897673349851) *
    r +
    1.6763848301838038) *
    r +
    2.053191626637759) *
    r +
    1);

/** Far out in the tail. */
const farOut = (r: number): number =>
  (((((((2.0103343992922881e-7 * r + 0.000027115555687434876) * r + 0.0012426609473880784) * r + 0.026532189526576124) *
    r +
    0.29656057182850487) *
    r +
    1.7848265399172913) *
    r +
    5.463784911164114) *
    r +
    6.657904643501103) /
  (((((((2.0442631033899397e-15 * r + 1.421511758316446e-7) * r + 0.000018463183175100548) * r +
    0.0007868691311456133) *
    r +
    0.014875361290850615) *
    r +
    0.1369298809227358) *
    r +
    0.599832206555888) *
    r +
    1);

/**
 * The value that a standard normal one stays below with the given chance, to about 16 digits; minus infinity at 0 and
 * infinity at 1.
 * @throws RangeError if the chance is not from 0 to 1
 * @source Wichura, algorithm AS 241 (PPND16), Applied Statistics 37, 1988, from memory; checked against SciPy
 */
export function normalQuantile(chance: number): number {
  const q = chance - 0.5;
  if (q <= 0.425 && q >= -0.425) return q * middle(0.180625 - q * q);
  if (!(chance >= 0 && chance <= 1)) throw new RangeError(`a chance from 0 to 1 is needed, got ${chance}`);
  const nearEnd = q < 0 ? chance : 1 - chance;
  if (nearEnd === 0) return q < 0 ? Number.NEGATIVE_INFINITY : Number.POSITIVE_INFINITY;
  const r = Math.sqrt(-portableLog(nearEnd));
  const size = r <= 5 ? tail(r - 1.6) : farOut(r - 5);
  return q < 0 ? -size : size;
}
