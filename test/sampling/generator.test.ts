import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { generatorFrom, namedStream, splitMix64, textHash } from "#lib/sampling";

const taken = (count: number, next: () => number) => Array.from({ length: count }, next);

describe("generatorFrom", () => {
  // vector of the rand_xoshiro crate, produced by the authors' reference code
  test("gives the published numbers of xoshiro128** for the state 1, 2, 3, 4", () => {
    expect(taken(10, generatorFrom([1, 2, 3, 4]).nextBits)).toEqual([
      11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597, 4258142804,
    ]);
  });

  // test data of the public repository edorfaus/xoshiro-6502, produced by the reference C code: values, then states
  // after each jump that is followed by one number
  test("gives the numbers and the jumps of the reference code from another state", () => {
    const start = [0x964d4a0c, 0xd40ab895, 0xad7fdecb, 0x3006f0f0] as const;
    expect(taken(4, generatorFrom(start).nextBits)).toEqual([0xf1391922, 0x6fe53806, 0xa5be2840, 0xf510ee70]);
    const jumping = generatorFrom(start);
    const states = taken(4, () => 0).map(() => {
      jumping.jump();
      return jumping.state();
    });
    expect(states).toEqual([
      [0x2a6dd50d, 0x01177499, 0xd7eb7d01, 0xddc48284],
      [0x5efdee5a, 0x3aa13c3d, 0x8cc77479, 0xeb10a58f],
      [0x2ca76937, 0x14c9006e, 0x34097ea8, 0xfdd876ea],
      [0x01b72c9a, 0xa78174aa, 0x1cc317be, 0x888235b2],
    ]);
  });

  test("refuses the one state that it could never leave", () => {
    expect(() => generatorFrom([0, 0, 0, 0])).toThrow(RangeError);
  });

  test("keeps shares strictly between 0 and 1, even where all bits are equal", () => {
    const generator = namedStream(1, "shares");
    for (let draw = 0; draw < 10_000; draw += 1) {
      const share = generator.nextShare();
      expect(share > 0 && share < 1).toBe(true);
    }
    // the ends of the grid: all 52 bits 0, and all 1
    expect(0.5 * 2 ** -52).toBeGreaterThan(0);
    expect((2 ** 52 - 1 + 0.5) * 2 ** -52).toBeLessThan(1);
  });

  test("fills arrays with what single draws give", () => {
    const [one, other] = [namedStream(7, "a"), namedStream(7, "a")];
    const shares = new Float64Array(1300); // more than is drawn at once
    const bits = new Uint32Array(5);
    one.fillShares(shares);
    one.fillBits(bits);
    expect([...shares]).toEqual(taken(1300, other.nextShare));
    expect([...bits]).toEqual(taken(5, other.nextBits));
  });
});

describe("namedStream", () => {
  // FNV test suite of its authors: the hashes of "" , "a" and "foobar"
  test("hashes names by FNV-1a", () => {
    expect(["", "a", "foobar"].map(textHash)).toEqual([0xcbf29ce484222325n, 0xaf63dc4c8601ec8cn, 0x85944171f73967e8n]);
  });

  // reference outputs for the seed 1234567, as on Rosetta Code
  test("scatters seeds by SplitMix64", () => {
    expect(splitMix64(1234567n, 5)).toEqual([
      6457827717110365317n,
      3203168211198807973n,
      9817491932198370423n,
      4593380528125082431n,
      16408922859458223821n,
    ]);
  });

  test("gives the same numbers for one seed and name, others for another name or seed", () => {
    const first = (seed: number, name: string) => taken(4, namedStream(seed, name).nextBits);
    expect(first(2027, "tipping fee")).toEqual(first(2027, "tipping fee"));
    fc.assert(
      fc.property(fc.nat(), fc.nat(), fc.string(), fc.string(), (seed, otherSeed, name, otherName) => {
        const same = seed === otherSeed && name === otherName;
        expect(first(seed, name).join() === first(otherSeed, otherName).join()).toBe(same);
      }),
    );
  });

  test("keeps its numbers from one release to the next", () => {
    // no outside source: these stand for every record that has been kept with a seed
    expect(taken(3, namedStream(2027, "tipping fee").nextBits)).toMatchInlineSnapshot(`
      [
        355254220,
        1343893523,
        2102847544,
      ]
    `);
  });

  test("refuses a seed that is no whole number", () => {
    for (const seed of [-1, 0.5, Number.NaN, 2 ** 53]) expect(() => namedStream(seed, "a")).toThrow(RangeError);
  });

  test("draws shares whose mean, spread and neighbours are those of even numbers", () => {
    const generator = namedStream(3, "evenness");
    const shares = new Float64Array(200_000);
    generator.fillShares(shares);
    const mean = shares.reduce((sum, share) => sum + share, 0) / shares.length;
    const squares = shares.reduce((sum, share) => sum + (share - 0.5) ** 2, 0) / shares.length;
    const pairs = shares.reduce((sum, share, at) => sum + (share - 0.5) * ((shares[at - 1] ?? 0.5) - 0.5), 0);
    // four standard errors of each
    expect(Math.abs(mean - 0.5)).toBeLessThan(4 * Math.sqrt(1 / 12 / shares.length));
    expect(Math.abs(squares - 1 / 12)).toBeLessThan(4 * Math.sqrt(1 / 180 / shares.length));
    expect(Math.abs(pairs / shares.length)).toBeLessThan((4 * (1 / 12)) / Math.sqrt(shares.length));
  });
});
