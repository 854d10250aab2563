import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { amountCents, amountText } from "#lib/cost";
import { measured } from "#lib/quantity";
import { lineWith } from "./lines";

const area = measured("area", 80_000, "ft²");
const amount = (text: Readonly<Record<string, string>>) => lineWith("at-base-date", { amount: text }).amount;

describe("amountCents", () => {
  // by hand, in dollars times 100
  test.each([
    [{ kind: "lump-sum", price: "$18,500" }, 1_850_000],
    [{ kind: "lump-sum", price: "$4.35" }, 435],
    [{ kind: "per-area", price: "$4.85/ft²" }, 38_800_000],
    [{ kind: "per-unit", quantity: "4,000 lb", unitPrice: "$0.38/lb" }, 152_000],
    [{ kind: "per-unit", quantity: "2 short tons", unitPrice: "$0.38/lb" }, 152_000],
    [{ kind: "per-unit", quantity: "250 kgal", unitPrice: "$9/kgal" }, 225_000],
    [{ kind: "per-unit", quantity: "110 h", unitPrice: "$48/h" }, 528_000],
    [{ kind: "per-unit", quantity: "1,200 ft²", unitPrice: "$4/ft²" }, 480_000],
    [{ kind: "per-unit", quantity: "120", unitPrice: "$62.50" }, 750_000],
  ])("%j comes to %d cents", (text, cents) => expect(amountCents(amount(text), area)).toBe(cents));

  test("keeps every lump sum to the cent", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 99_999_999_999 }), (cents) => {
        const price = `$${Math.floor(cents / 100)}.${String(cents % 100).padStart(2, "0")}`;
        expect(amountCents(amount({ kind: "lump-sum", price }), area)).toBe(cents);
      }),
    );
  });
});

describe("amountText", () => {
  test("shows what is multiplied", () => {
    expect(amountText(amount({ kind: "lump-sum", price: "$18,500" }), area)).toBe("$18,500");
    expect(amountText(amount({ kind: "per-area", price: "$4.85/ft²" }), area)).toBe("$4.85/ft² × 80,000 ft²");
    const topUp = amount({ kind: "per-unit", quantity: "4,000 lb", unitPrice: "$0.38/lb" });
    expect(amountText(topUp, area)).toBe("4,000 lb × $0.38/lb");
  });
});
