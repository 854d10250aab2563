import { describe, expect, test } from "vitest";
import { tell } from "#lib/figure";
import { expectSameInAnyOrder } from "../any-order";
import { checkedBid, claims, foundBy, type WrittenClaim } from "../checked-bid";

const rule = "edition-superseded";
const bidWith = (...list: readonly WrittenClaim[]) => checkedBid({ claims: claims(...list) });
const found = (...list: readonly WrittenClaim[]) => foundBy(rule, bidWith(...list));
const level = (edition: string, method = "f1936") => ({ property: "g-max", figure: "110 g", method, edition });
const lead = (edition: string) => ({ property: "lead-content", figure: "50 mg/kg", method: "en-71-3", edition });

describe("editions of methods", () => {
  // EN 71-3:2019+A1:2021 as quoted by a test laboratory: lead in category III is 23 mg/kg, before 160
  test("notes limits that changed since", () => {
    const [finding] = found(lead("EN 71-3:2013"));
    expect(finding?.severity).toBe("note");
    expect(finding && tell(finding.sentence, "us")).toBe(
      "For lead content: The lead limit of category III fell from 160 to 23 mg/kg, so a pass by an earlier edition is no pass by this one. The report names the edition of 2013.",
    );
    expect(finding && tell(finding.question, "us")).toBe(
      "Is there a result for lead content by the current edition of EN 71-3, and in which report?",
    );
  });

  // extract of ASTM F355-10a: missile E
  test("asks where the procedure changed since, and not from that edition on", () => {
    expect(found(level("F355-09", "f355-e"))[0]?.severity).toBe("needs an answer");
    expect(found(level("F355-10a", "f355-e"))[0]?.severity).toBe("note");
    expect(found(level("F355-16", "f355-e"))).toEqual([]);
  });

  test("is silent for the newest edition known and later ones", () => {
    expect(found(level("F1936-19"))).toEqual([]);
    expect(found(level("F1936-18"))).toHaveLength(1);
    expect(found(level("F1936-24"))).toEqual([]);
  });

  test("is silent where edition, method or register is missing", () => {
    expect(found(level(""))).toEqual([]);
    expect(found(level("1998", ""))).toEqual([]);
    expect(found(level("1998", "f3146"))).toEqual([]);
  });

  test("does not depend on the order of the claims", () =>
    expectSameInAnyOrder(rule, bidWith(level("F1936-10"), lead("2013"))));
});
