import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { grainOfMesh, sieveNumbers, sieveOpening } from "#lib/material";

describe("sieveOpening", () => {
  test("does not know sieves outside its table", () => expect(sieveOpening(37)).toBeUndefined());

  test("shrinks as the sieve number grows", () => {
    const openings = sieveNumbers.map((sieve) => sieveOpening(sieve) ?? 0);
    expect(openings).toEqual(openings.toSorted((one, other) => other - one));
  });
});

describe("grainOfMesh", () => {
  test("does not mind which sieve is named first", () => {
    const sieve = fc.constantFrom(...sieveNumbers);
    fc.assert(
      fc.property(sieve, sieve, (one, other) => {
        expect(grainOfMesh(one, other)).toEqual(grainOfMesh(other, one));
      }),
    );
  });

  test("is undefined where a sieve is missing from the table", () => expect(grainOfMesh(20, 37)).toBeUndefined());
});
