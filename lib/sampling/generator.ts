/** One stream of random numbers. Calling it moves it on; two streams of the same seed and name give the same numbers. */
export type Generator = Readonly<{
  /** The next 32 random bits, 0 to 2³² − 1. */
  nextBits: () => number;
  /** The next number strictly between 0 and 1, on a grid of 2⁻⁵². It takes two words of 32 bits. */
  nextShare: () => number;
  /** Fills an array with numbers strictly between 0 and 1: the same ones as `nextShare` would give. */
  fillShares: (into: Float64Array) => void;
  /** Fills an array with words of 32 random bits: the same ones as `nextBits` would give. */
  fillBits: (into: Uint32Array) => void;
  /** Goes on by 2⁶⁴ words at once, so that what follows can't overlap with what the stream gave before. */
  jump: () => void;
  /** The four words that the next number follows from. */
  state: () => readonly [number, number, number, number];
}>;

const cell = 2 ** -52;

/** A number between 0 and 1 from two words. Half a cell is added so that neither end comes up: a quantile there can be infinite. */
const shareOf = (upper: number, lower: number): number => ((upper >>> 6) * 0x4000000 + (lower >>> 6) + 0.5) * cell;

/** Words on their way to shares; nothing stays in it. */
const words = new Uint32Array(1024);

/**
 * xoshiro128**: 128 bits of state, period 2¹²⁸ − 1, whole-number arithmetic only, so that every machine draws alike.
 * @param start four words of 32 bits, not all 0
 * @throws RangeError if all four words are 0: the stream would never leave it
 * @source Blackman and Vigna, “Scrambled linear pseudorandom number generators”, ACM TOMS 47(4), 2021
 */
export function generatorFrom(start: readonly [number, number, number, number]): Generator {
  let [s0, s1, s2, s3] = start.map((word) => word | 0) as [number, number, number, number];
  if ((s0 | s1 | s2 | s3) === 0) throw new RangeError("a generator needs a state that is not all zeros");

  const nextBits = (): number => {
    const five = Math.imul(s1, 5);
    const result = Math.imul((five << 7) | (five >>> 25), 9) >>> 0;
    const shifted = s1 << 9;
    s2 ^= s0;
    s3 ^= s1;
    s1 ^= s2;
    s0 ^= s3;
    s2 ^= shifted;
    s3 = (s3 << 11) | (s3 >>> 21);
    return result;
  };
  const nextShare = (): number => {
    const upper = nextBits();
    return shareOf(upper, nextBits());
  };
  // the same steps as above, on words that stay in registers: a million draws are made this way
  const fillBits = (into: Uint32Array, count = into.length): void => {
    let [a, b, c, d] = [s0, s1, s2, s3];
    for (let index = 0; index < count; index += 1) {
      const five = Math.imul(b, 5);
      into[index] = Math.imul((five << 7) | (five >>> 25), 9);
      const shifted = b << 9;
      c ^= a;
      d ^= b;
      b ^= c;
      a ^= d;
      c ^= shifted;
      d = (d << 11) | (d >>> 21);
    }
    [s0, s1, s2, s3] = [a, b, c, d];
  };
  const fillShares = (into: Float64Array): void => {
    for (let from = 0; from < into.length; from += words.length / 2) {
      const count = Math.min(words.length / 2, into.length - from);
      fillBits(words, 2 * count);
      for (let index = 0; index < count; index += 1)
        into[from + index] = shareOf(words[2 * index] as number, words[2 * index + 1] as number);
    }
  };
  const jump = (): void => {
    let [j0, j1, j2, j3] = [0, 0, 0, 0];
    for (const word of jumpWords) {
      for (let bit = 0; bit < 32; bit += 1) {
        if ((word >>> bit) & 1) {
          j0 ^= s0;
          j1 ^= s1;
          j2 ^= s2;
          j3 ^= s3;
        }
        nextBits();
      }
    }
    [s0, s1, s2, s3] = [j0, j1, j2, j3];
  };
  return {
    nextBits,
    nextShare,
    fillShares,
    fillBits: (into) => fillBits(into),
    jump,
    state: () => [s0 >>> 0, s1 >>> 0, s2 >>> 0, s3 >>> 0],
  };
}

/** The polynomial that carries a state 2⁶⁴ words on. @source the same authors’ reference code */
const jumpWords = [0x8764000b, 0xf542d2d3, 0x6fa035c3, 0x77f2db5b] as const;
