import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { tell } from "#lib/figure";
import { expectSameInAnyOrder } from "../any-order";
import { checkedBid, claims, foundBy, type WrittenClaim } from "../checked-bid";

const rule = "carpet-figure-as-system";
const system = (figure: string, method: string) => ({ property: "system-infiltration", figure, method });
const carpet = (figure: string, method = "d4491") => ({ property: "carpet-infiltration", figure, method });
const bidWith = (...list: readonly WrittenClaim[]) => checkedBid({ claims: claims(...list) });
const found = (...list: readonly WrittenClaim[]) => foundBy(rule, bidWith(...list));

describe("figures of one part given for the whole build", () => {
  // ASTM D4491 is the permittivity of geotextiles (title)
  test("fires for a method that tests the carpet alone", () => {
    const [finding] = found(system("40 in/h", "d4491"));
    expect(finding?.severity).toBe("needs an answer");
    expect(finding && tell(finding.sentence, "us")).toBe(
      "The 40.0 in/h given for the whole build rests on ASTM D4491, which passes water through a piece of the carpet alone in a laboratory cell. Infill, shock layer and base can let through less.",
    );
    expect(finding && tell(finding.question, "us")).toBe(
      "What infiltration rate does the whole build show, with infill, shock layer and base, by which method and in which report?",
    );
  });

  test("fires for a method that tests the shock layer alone", () =>
    expect(found(system("40 in/h", "en-15330-4"))).toHaveLength(1));

  test.each(["f2898", "en-12616"])("is silent for %s, which tests the build", (method) =>
    expect(found(system("40 in/h", method), carpet("40 in/h"))).toEqual([]),
  );

  test("without a method fires for the very figure of the carpet, and for no other", () => {
    expect(found(system("40 in/h", ""), carpet("40 in/h"))[0]?.claims).toEqual(["claim-0", "claim-1"]);
    expect(found(system("40 in/h", ""), carpet("40.1 in/h"))).toEqual([]);
    expect(found(system("at least 40 in/h", ""), carpet("40 in/h"))).toEqual([]);
  });

  test("is silent where nothing shows what was tested", () => {
    expect(found(system("40 in/h", ""))).toEqual([]);
    expect(found(system("40 in/h", ""), carpet("40 in/h", ""))).toEqual([]);
    expect(found(carpet("40 in/h"))).toEqual([]);
  });

  // 1 in = 25.4 mm exactly (NIST SP 811)
  test("does not depend on the unit", () =>
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 300 }), (inches) => {
        expect(found(system(`${inches} in/h`, ""), carpet(`${(inches * 25.4).toFixed(1)} mm/h`))).toHaveLength(1);
      }),
    ));

  test("does not depend on the order of the claims", () =>
    expectSameInAnyOrder(rule, bidWith(system("40 in/h", ""), carpet("40 in/h"), carpet("40 in/h"))));
});
