import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { tell } from "#lib/figure";
import { expectSameInAnyOrder } from "../any-order";
import { checkedBid, claims, foundBy, type WrittenClaim } from "../checked-bid";

const rule = "system-drains-faster-than-its-layer";
const draining = (property: string, figure: string, differing: object = {}) => ({
  ...{ property, figure, method: "en-12616", condition: "new", ...differing },
});
const system = (figure: string, differing: object = {}) => draining("system-infiltration", figure, differing);
const bidWith = (...list: readonly WrittenClaim[]) => checkedBid({ claims: claims(...list) });
const found = (...list: readonly WrittenClaim[]) => foundBy(rule, bidWith(...list));

describe("the whole build against its layers", () => {
  test("fires where the build drains faster than the carpet", () => {
    const [finding] = found(system("60 in/h"), draining("carpet-infiltration", "40 in/h"));
    expect(finding?.severity).toBe("needs an answer");
    expect(finding && tell(finding.sentence, "us")).toBe(
      "The whole build is said to take 60.0 in/h, while the bid’s carpet infiltration rate is 40.0 in/h. Water that sinks through the build has to pass that layer too.",
    );
    expect(finding && tell(finding.question, "metric")).toBe(
      "Your bid states 1,524 mm/h for the whole build and 1,016 mm/h as carpet infiltration rate. How were both tested, and could water spread sideways under the ring?",
    );
  });

  test("fires for each layer that is slower", () =>
    expect(
      found(
        system("60 in/h"),
        draining("carpet-infiltration", "40 in/h"),
        draining("shock-layer-infiltration", "50 in/h"),
      ),
    ).toHaveLength(2));

  test("allows a tenth for scatter, and no more", () => {
    expect(found(system("44 in/h"), draining("carpet-infiltration", "40 in/h"))).toEqual([]);
    expect(found(system("44.1 in/h"), draining("carpet-infiltration", "40 in/h"))).toHaveLength(1);
  });

  test("is silent where one-sided figures leave room", () => {
    expect(found(system("60 in/h"), draining("carpet-infiltration", "over 30 in/hr"))).toEqual([]);
    expect(found(system("at most 60 in/h"), draining("carpet-infiltration", "40 in/h"))).toEqual([]);
  });

  test("is silent across unlike methods and conditions and where one is missing", () => {
    expect(found(system("60 in/h", { method: "f2898" }), draining("carpet-infiltration", "40 in/h"))).toEqual([]);
    expect(
      found(system("60 in/h", { method: "" }), draining("carpet-infiltration", "40 in/h", { method: "" })),
    ).toEqual([]);
    expect(found(system("60 in/h"), draining("carpet-infiltration", "40 in/h", { condition: "year 5" }))).toEqual([]);
    expect(found(system("60 in/h"))).toEqual([]);
  });

  // 1 in = 25.4 mm exactly (NIST SP 811)
  test("does not depend on the unit", () =>
    fc.assert(
      fc.property(fc.double({ min: 5, max: 100, noNaN: true }), (inches) => {
        const carpet = draining("carpet-infiltration", "40 in/h");
        const inInches = found(system(`${inches.toFixed(6)} in/h`), carpet);
        const inMillimetres = found(system(`${(inches * 25.4).toFixed(6)} mm/h`), carpet);
        fc.pre(Math.abs(inches - 44) > 1e-4); // apart from the very edge
        expect(inInches.length).toBe(inMillimetres.length);
      }),
    ));

  test("does not depend on the order of the claims", () =>
    expectSameInAnyOrder(
      rule,
      bidWith(
        system("60 in/h"),
        draining("carpet-infiltration", "40 in/h"),
        draining("shock-layer-infiltration", "50 in/h"),
      ),
    ));
});
