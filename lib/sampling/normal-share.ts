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

/** Coefficients of the three ratios of polynomials, highest power first: in the middle, in the tail, far out. */
const middle = {
  above: [
    2509.0809287301227, 33430.57558358813, 67265.7709270087, 45921.95393154987, 13731.69376550946, 1971.5909503065513,
    133.14166789178438, 3.3871328727963665,
  ],
  below: [
    5226.495278852854, 28729.085735721943, 39307.89580009271, 21213.794301586597, 5394.196021424751, 687.1870074920579,
    42.31333070160091, 1,
  ],
} as const;
const tail = {
  above: [
    0.0007745450142783414, 0.022723844989269184, 0.2417807251774506, 1.2704582524523684, 3.6478483247632045,
    5.769497221460691, 4.630337846156546, 1.4234371107496835,
  ],
  below: [
    1.0507500716444169e-9, 0.0005475938084995345, 0.015198666563616457, 0.14810397642748008, 0.6897673349851,
    1.6763848301838038, 2.053191626637759, 1,
  ],
} as const;
const farOut = {
  above: [
    2.0103343992922881e-7, 0.000027115555687434876, 0.0012426609473880784, 0.026532189526576124, 0.29656057182850487,
    1.7848265399172913, 5.463784911164114, 6.657904643501103,
  ],
  below: [
    2.0442631033899397e-15, 1.421511758316446e-7, 0.000018463183175100548, 0.0007868691311456133, 0.014875361290850615,
    0.1369298809227358, 0.599832206555888, 1,
  ],
} as const;

type Eight = readonly [number, number, number, number, number, number, number, number];

// written out, as a loop over an array took three times as long
const ratio = ({ above, below }: Readonly<{ above: Eight; below: Eight }>, r: number): number => {
  const [a7, a6, a5, a4, a3, a2, a1, a0] = above;
  const [b7, b6, b5, b4, b3, b2, b1, b0] = below;
  return (
    (((((((a7 * r + a6) * r + a5) * r + a4) * r + a3) * r + a2) * r + a1) * r + a0) /
    (((((((b7 * r + b6) * r + b5) * r + b4) * r + b3) * r + b2) * r + b1) * r + b0)
  );
};

/**
 * The value that a standard normal one stays below with the given chance, to about 16 digits; minus infinity at 0 and
 * infinity at 1.
 * @throws RangeError if the chance is not from 0 to 1
 * @source Wichura, algorithm AS 241 (PPND16), Applied Statistics 37, 1988, from memory; checked against SciPy
 */
export function normalQuantile(chance: number): number {
  const q = chance - 0.5;
  if (q <= 0.425 && q >= -0.425) return q * ratio(middle, 0.180625 - q * q);
  if (!(chance >= 0 && chance <= 1)) throw new RangeError(`a chance from 0 to 1 is needed, got ${chance}`);
  const nearEnd = q < 0 ? chance : 1 - chance;
  if (nearEnd === 0) return q < 0 ? Number.NEGATIVE_INFINITY : Number.POSITIVE_INFINITY;
  const r = Math.sqrt(-portableLog(nearEnd));
  const size = r <= 5 ? ratio(tail, r - 1.6) : ratio(farOut, r - 5);
  return q < 0 ? -size : size;
}
