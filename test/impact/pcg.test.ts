import { expect, test } from "vitest";
import { pcg32 } from "./pcg";

// the demonstration of the author's C library prints these for seed 42, sequence 54; from memory
test("gives the numbers that the author's program prints", () => {
  const next = pcg32(42n, 54n);
  expect(Array.from({ length: 6 }, next)).toEqual([
    0xa15c02b7, 0x7b47f409, 0xba1d3330, 0x83d2f293, 0xbfa4784b, 0xcbed606e,
  ]);
});
