// Logarithm and exponential from basic arithmetic alone. A language leaves the last bits of its own to the machine;
// these round alike everywhere, so that a seed gives the same bytes on every machine. Good to one unit in the last place.

const number64 = new Float64Array(1);
const words = new Int32Array(number64.buffer);
const upper = new Uint8Array(new Uint32Array([1]).buffer)[0] === 1 ? 1 : 0;
const lower = 1 - upper;

const ln2High = 0.6931471803691238;
const ln2Low = 1.9082149292705877e-10;

/**
 * Natural logarithm of a normal number above 0.
 * @source the algorithm of FDLIBM’s e_log.c (Sun Microsystems 1993), from memory; tests hold it against other libraries
 */
export function portableLog(x: number): number {
  number64[0] = x;
  let high = words[upper] as number;
  let power = (high >>> 20) - 1023;
  high &= 0xfffff;
  const above = (high + 0x95f64) & 0x100000; // puts the rest between √½ and √2
  words[upper] = high | (above ^ 0x3ff00000);
  power += above >>> 20;
  const f = (number64[0] as number) - 1;
  const s = f / (2 + f);
  const z = s * s;
  const w = z * z;
  const even = w * (0.3999999999940942 + w * (0.22222198432149784 + w * 0.15313837699209373));
  const odd = z * (0.6666666666666735 + w * (0.2857142874366239 + w * (0.1818357216161805 + w * 0.14798198605116586)));
  const half = 0.5 * f * f;
  return s * (half + even + odd) + power * ln2Low - half + f + power * ln2High;
}

/** 2 to a whole power from −1022 to 1023, exactly. */
function powerOfTwo(power: number): number {
  words[lower] = 0;
  words[upper] = (power + 1023) << 20;
  return number64[0] as number;
}

/**
 * e to the power of x: 0 below −708, infinite above 709.78.
 * @source the algorithm of FDLIBM’s e_exp.c (Sun Microsystems 1993), from memory; tests hold it against other libraries
 */
export function portableExp(x: number): number {
  if (x > 709.782712893384) return Number.POSITIVE_INFINITY;
  if (!(x > -708)) return 0;
  const power = Math.round(x * Math.LOG2E);
  const high = x - power * ln2High;
  const low = power * ln2Low;
  const rest = high - low;
  const square = rest * rest;
  const c =
    rest -
    square *
      (0.16666666666666602 +
        square *
          (-0.0027777777777015593 +
            square * (0.00006613756321437934 + square * (-0.0000016533902205465252 + square * 4.1381367970572385e-8))));
  const result = 1 + ((rest * c) / (2 - c) - low + high);
  return power > 1023 ? result * 2 * powerOfTwo(power - 1) : result * powerOfTwo(power);
}
