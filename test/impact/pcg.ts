const multiplier = 6364136223846793005n;
const last64 = (number: bigint) => BigInt.asUintN(64, number);

/**
 * PCG32 (XSH RR 64/32): repeatable whole numbers of 32 bits.
 * @source M. E. O'Neill, "PCG: A Family of Simple Fast Space-Efficient Statistically Good Algorithms" (2014)
 */
export function pcg32(seed: bigint, sequence: bigint): () => number {
  const increment = last64((sequence << 1n) | 1n);
  let state = 0n;
  const step = () => {
    state = last64(state * multiplier + increment);
  };
  step();
  state = last64(state + seed);
  step();
  return () => {
    const before = state;
    step();
    const mixed = Number(BigInt.asUintN(32, ((before >> 18n) ^ before) >> 27n));
    const turn = Number(before >> 59n);
    return ((mixed >>> turn) | (mixed << (-turn & 31))) >>> 0;
  };
}

/** Repeatable samples for trials. */
export type Samples = Readonly<{ uniform: () => number; normal: () => number; student: (freedom: number) => number }>;

export function samplesFrom(seed: number): Samples {
  const next = pcg32(BigInt(seed), 54n);
  const uniform = () => (next() + 0.5) / 2 ** 32;
  const normal = () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
  const student = (freedom: number) => {
    const squares = Array.from({ length: freedom }, () => normal() ** 2);
    return normal() / Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / freedom);
  };
  return { uniform, normal, student };
}
