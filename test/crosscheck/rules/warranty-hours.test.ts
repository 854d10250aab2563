import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { tell } from "#lib/figure";
import { measured } from "#lib/quantity";
import { expectSameInAnyOrder } from "../any-order";
import { checkedBid, claims, foundBy, type WrittenClaim } from "../checked-bid";

const rule = "warranty-hours";
const limit = (figure: string) => ({ property: "warranty-hours-limit", figure });
const years = { property: "warranty-years", figure: "8 years" };
const bidWith = (hours: number, ...list: readonly WrittenClaim[]) =>
  checkedBid({ hoursPerYear: measured("yearlyUse", hours, "h/year"), claims: claims(...list) });
const found = (...given: Parameters<typeof bidWith>) => foundBy(rule, bidWith(...given));

describe("hours allowed and hours planned", () => {
  test("fires where more is planned", () => {
    const [finding] = found(1800, limit("1500 h/year"), years);
    expect(finding?.severity).toBe("needs an answer");
    // arithmetic: 8 · 1,500 = 12,000 and 8 · 1,800 = 14,400
    expect(finding && tell(finding.sentence, "us")).toBe(
      "The warranty allows 1,500 h/year; 1,800 h/year are planned. Over 8.0 years that is 12,000 h allowed and 14,400 h planned.",
    );
    expect(finding && tell(finding.question, "us")).toBe(
      "The field is planned for 1,800 h/year, and your warranty allows 1,500 h/year. Does the warranty hold at the planned use, and at what price?",
    );
  });

  test("gives no hours over the warranty where its length is missing or open", () => {
    const [finding] = found(1800, limit("1500 h/year"));
    expect(finding && tell(finding.sentence, "us")).toBe("The warranty allows 1,500 h/year; 1,800 h/year are planned.");
    const open = found(1800, limit("1500 h/year"), { ...years, figure: "at least 8 years" });
    expect(open[0] && tell(open[0].sentence, "us")).not.toContain("Over");
  });

  test("is silent from the planned hours on", () => {
    expect(found(1800, limit("1800 h/year"))).toEqual([]);
    expect(found(1800, limit("1799 h/year"))).toHaveLength(1);
    expect(found(1800, limit("at least 1500 h/year"))).toEqual([]);
    expect(found(1800, limit("at most 1500 h/year"))).toHaveLength(1);
  });

  test("is silent where no limit is stated", () => expect(found(1800, years)).toEqual([]));

  // a year of 365 days has 365/7 weeks (NIST SP 811)
  test("does not depend on the unit", () =>
    fc.assert(
      fc.property(fc.double({ min: 10, max: 90, noNaN: true }), (aWeek) => {
        const inWeeks = found(1800, limit(`${aWeek.toFixed(6)} h/week`));
        const inYears = found(1800, limit(`${((aWeek * 365) / 7).toFixed(5)} h/year`));
        expect(inWeeks.length).toBe(inYears.length);
      }),
    ));

  test("does not depend on the order of the claims", () =>
    expectSameInAnyOrder(rule, bidWith(1800, limit("1500 h/year"), years, limit("1200 h/year"))));
});
