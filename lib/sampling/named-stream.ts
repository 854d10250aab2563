import { type Generator, generatorFrom } from "./generator";

const all64 = (1n << 64n) - 1n;

/** 64-bit hash of a text in UTF-8. @source Fowler, Noll and Vo, FNV-1a */
export function textHash(text: string): bigint {
  let hash = 0xcbf29ce484222325n;
  for (const byte of new TextEncoder().encode(text)) hash = ((hash ^ BigInt(byte)) * 0x100000001b3n) & all64;
  return hash;
}

/** Successive outputs of SplitMix64, which the authors of xoshiro advise for filling its state. @source Steele, Lea and Flood, OOPSLA 2014 */
export function splitMix64(seed: bigint, count: number): readonly bigint[] {
  let state = seed & all64;
  return Array.from({ length: count }, () => {
    state = (state + 0x9e3779b97f4a7c15n) & all64;
    let mixed = ((state ^ (state >> 30n)) * 0xbf58476d1ce4e5b9n) & all64;
    mixed = ((mixed ^ (mixed >> 27n)) * 0x94d049bb133111ebn) & all64;
    return mixed ^ (mixed >> 31n);
  });
}

/**
 * The stream of random numbers that belongs to a seed and a name. Each thing that is drawn has its own stream under its
 * own name: adding or leaving out one leaves all others as they were, and whatever shares a name moves together.
 * @param seed a whole number from 0 to 2⁵³ − 1, kept in the record
 * @throws RangeError if the seed is no such number
 */
export function namedStream(seed: number, name: string): Generator {
  if (!Number.isSafeInteger(seed) || seed < 0) throw new RangeError(`a seed is a whole number from 0, got ${seed}`);
  const [scattered = 0n] = splitMix64(BigInt(seed), 1);
  const [first = 0n, second = 0n] = splitMix64(scattered ^ textHash(name), 2);
  const words = [first, first >> 32n, second, second >> 32n].map((part) => Number(part & 0xffffffffn));
  return generatorFrom(words as [number, number, number, number]);
}
