import { expect, test } from "vitest";
import { quantityInPhrase, say, tell } from "#lib/figure";
import { measured } from "#lib/quantity";

const mass = quantityInPhrase("arealDensity", measured("arealDensity", 9, "lb/ft²"));

test("a phrase is told in the units of its reader", () => {
  const phrase = say`The infill weighs ${mass}, in ${2} layers of ${"sand"}.`;
  expect(tell(phrase, "us")).toBe("The infill weighs 9.00 lb/ft², in 2 layers of sand.");
  // 9 lb/ft² × 4.882428 kg/m² each (NIST SP 811)
  expect(tell(phrase, "metric")).toBe("The infill weighs 43.9 kg/m², in 2 layers of sand.");
});

test("a phrase may stand in another, and is plain data", () => {
  const phrase = say`${say`It weighs ${mass}`}; that is heavy.`;
  expect(tell(JSON.parse(JSON.stringify(phrase)), "us")).toBe("It weighs 9.00 lb/ft²; that is heavy.");
});

test("a range and an open side are told as such", () => {
  const low = measured("length", 0, "in");
  const high = measured("length", 2, "in");
  expect(tell(say`${quantityInPhrase("length", { low, high })} deep`, "us")).toBe("0.00–2.00 in deep");
});
