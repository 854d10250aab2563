import { describe, expect, test } from "vitest";
import { costConventionsSchema, countedLines, priceLinesSchema, priceRoles, standingOf } from "#lib/cost";
import { conventionsText } from "../checks/cost-example";
import { costsOf, price } from "./costing";

const conventions = costConventionsSchema.parse(conventionsText);
const standing = (role: object, changes: object = {}) => {
  const [line] = priceLinesSchema.parse([price("line", "$100", { role, ...changes })]);
  if (line === undefined) throw new Error("no line");
  return standingOf(line, conventions);
};
const reason = (role: object, changes: object = {}) => {
  const found = standing(role, changes);
  return found.kind === "counts" ? "counts" : found.because;
};

describe("the place of a price in its bid", () => {
  test("has a label and a rule for every role", () => {
    for (const { label, rule } of Object.values(priceRoles)) {
      expect(label).toMatch(/^[A-Z]/);
      expect(rule).toMatch(/\.$/);
    }
  });

  test.each(["base-bid", "allowance", "bond", "tax", "freight"])("%s always counts", (kind) =>
    expect(standing({ kind })).toEqual({ kind: "counts" }),
  );

  test("counts an alternate only where the owner accepts it", () => {
    expect(reason({ kind: "alternate-add", accepted: "yes" })).toBe("counts");
    expect(reason({ kind: "alternate-add" })).toBe("The owner has not accepted this alternate.");
    expect(reason({ kind: "alternate-deduct", accepted: "no" })).toBe("The owner has not accepted this alternate.");
  });

  test("counts an option that is taken and paid before it expires", () => {
    const option = (expires: string, taken = "yes") => ({ kind: "option", expires, taken });
    expect(reason(option("2026-07-01"))).toBe("counts");
    expect(reason(option("2027-01-01", "no"))).toBe(
      "The owner has not taken this option; it stays open until 2027-01-01.",
    );
    expect(reason(option("2026-06-30"))).toBe(
      "This option expires on 2026-06-30, before it would first be paid on 2026-07-01.",
    );
    expect(reason(option("2028-06-30"), { kind: "in-year", year: "2" })).toBe(
      "This option expires on 2028-06-30, before it would first be paid on 2028-07-01.",
    );
    expect(reason(option("2028-07-01"), { kind: "in-year", year: "2" })).toBe("counts");
  });

  test("lists what does not count, with the reason, and leaves it out of every sum", () => {
    const bid = [price("base", "$1,000"), price("extra", "$200", { role: { kind: "alternate-add", accepted: "no" } })];
    const [cost] = costsOf([bid]).bids;
    expect(cost?.priceAsBid).toMatchObject({ value: 100_000 });
    expect(cost?.leftOut.map(({ line, because }) => [line.id, because])).toEqual([
      ["extra", "The owner has not accepted this alternate."],
    ]);
  });

  test.each(["$200", "-$200"])("takes an accepted deduction off, written as %s", (written) => {
    const deduct = price("less", written, { role: { kind: "alternate-deduct", accepted: "yes" } });
    const [cost] = costsOf([[price("base", "$1,000"), deduct]]).bids;
    expect(cost?.priceAsBid).toMatchObject({ value: 80_000 });
  });

  test("counts a unit price with the quantity that the owner accepts, not the one in the form", () => {
    const extra = (acceptedQuantity: string) =>
      price(
        "dig",
        { kind: "per-unit", quantity: "50 yd³", unitPrice: "$60/yd³" },
        { role: { kind: "unit-price", acceptedQuantity } },
      );
    const priced = (acceptedQuantity: string) => costsOf([[price("base", "$1,000"), extra(acceptedQuantity)]]).bids[0];
    expect(priced("10 yd³")?.priceAsBid).toMatchObject({ value: 160_000 });
    expect(priced("")?.priceAsBid).toMatchObject({ value: 100_000 });
    expect(priced("")?.leftOut.map(({ because }) => because)).toEqual([
      "A unit price counts only with a quantity that the owner accepts.",
    ]);
  });

  test("keeps what the owner buys out of the bidder's price and in the levelled one", () => {
    const own = price("goals", "$300", { role: { kind: "owner-furnished" }, givenBy: "owner-estimate" });
    const [cost] = costsOf([[price("base", "$1,000"), own]]).bids;
    expect(cost?.priceAsBid).toMatchObject({ value: 100_000 });
    expect(cost?.priceAtBaseDate).toMatchObject({ value: 130_000 });
  });

  test.each([
    [
      price("line", "$1", { role: { kind: "owner-furnished" } }),
      "0.givenBy: What the owner buys is not the bidder’s price; mark it as the owner’s estimate.",
    ],
    [
      price("line", "$1", { role: { kind: "unit-price" } }),
      "0.amount.kind: A unit price is given as a quantity and the price of one unit: choose per-unit.",
    ],
    [
      price(
        "line",
        { kind: "per-unit", quantity: "50 yd³", unitPrice: "$60/yd³" },
        { role: { kind: "unit-price", acceptedQuantity: "10 h" } },
      ),
      "0.role.acceptedQuantity: “10 h” is accepted of what is priced by “50 yd³”; expected the same kind of quantity.",
    ],
    [
      price("line", { kind: "share", share: "2 %", of: "base-bid" }),
      "0.amount.kind: A part of the base bid can’t be a share of the sum that it belongs to; give it another place in the bid, such as bond or tax.",
    ],
    [
      price("line", { kind: "share", share: "150 %", of: "base-bid" }, { role: { kind: "bond" } }),
      "0.amount.share: “150 %” was read for a share of a sum; expected −50 % to 100 % of the sum.",
    ],
    [
      price("line", "$1", { role: { kind: "option", expires: "soon" } }),
      "0.role.expires: “soon” is not a day of the calendar. Expected year-month-day, for instance 2026-11-25.",
    ],
    [
      price("line", "$1", { role: { kind: "gift" } }),
      "0.role.kind: Choose the place of the price in the bid: base-bid, alternate-add, alternate-deduct, allowance, unit-price, bond, tax, freight, owner-furnished or option.",
    ],
  ])("says what it expected of a place that can't be", (line, sentence) => {
    const parsed = priceLinesSchema.safeParse([line]);
    expect(parsed.error?.issues.map(({ path, message }) => `${path.join(".")}: ${message}`)).toEqual([sentence]);
  });
});

describe("a share of a sum", () => {
  const bond = price("bond", { kind: "share", share: "2 %", of: "base-bid" }, { role: { kind: "bond" } });
  const tax = price("tax", { kind: "share", share: "10 %", of: "accepted-bid" }, { role: { kind: "tax" } });
  const extra = price("extra", "$500", { role: { kind: "alternate-add", accepted: "yes" } });

  test("is taken of the sum it names, and never of another share", () => {
    const [cost] = costsOf([[price("base", "$1,000"), extra, bond, tax]]).bids;
    // by hand: 1,000 + 500 + 2 % of 1,000 + 10 % of 1,500
    expect(cost?.priceAsBid).toMatchObject({ value: 167_000 });
  });

  test("is shown with the sum it is taken of", () => {
    const [cost] = costsOf([[price("base", "$1,000"), bond]]).bids;
    const working = cost?.priceAtBaseDate.kind === "known" ? cost.priceAtBaseDate.working : null;
    expect(working?.inputs.map(({ text }) => text)).toContain("2 % × $1,000.00, the base bid, once, at the base date");
  });

  test("comes back unresolved from what counts, so that nobody can count it as nothing", () => {
    const { counted } = countedLines(priceLinesSchema.parse([bond]), conventions);
    expect(counted[0]?.amount).toMatchObject({ kind: "share", sum: null });
  });
});
