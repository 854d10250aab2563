import { describe, expect, test } from "vitest";
import { tell } from "#lib/figure";
import { expectSameInAnyOrder } from "../any-order";
import { checkedBid, claims, foundBy, type WrittenClaim } from "../checked-bid";

const rule = "report-too-old";
// the base date of the bids here is 2027-06-01
const tested = (date: string, differing: object = {}) => ({
  ...{ property: "g-max", figure: "110 g", method: "f1936", document: "Report 7", laboratory: "Northern Lab", date },
  ...differing,
});
const bidWith = (...list: readonly WrittenClaim[]) => checkedBid({ claims: claims(...list) });
const found = (...list: readonly WrittenClaim[]) => foundBy(rule, bidWith(...list));

describe("the age of reports", () => {
  test("fires the day after five years, and not on the day", () => {
    expect(found(tested("2022-06-01"))).toEqual([]);
    expect(found(tested("2022-05-31"))).toHaveLength(1);
  });

  test("takes the last day of a month or year that is given alone", () => {
    expect(found(tested("June 2022"))).toEqual([]);
    expect(found(tested("May 2022"))).toHaveLength(1);
    expect(found(tested("2022"))).toEqual([]);
    expect(found(tested("2021"))).toHaveLength(1);
  });

  test("gathers what rests on one report", () => {
    const list = found(
      tested("2020-03-02"),
      tested("2020-03-02", { property: "tuft-bind", figure: "9 lbf", method: "d1335", document: "report  7" }),
      tested("2019", { document: "Report 8" }),
    );
    expect(list.map((finding) => finding.claims)).toEqual([["claim-0", "claim-1"], ["claim-2"]]);
    const [finding] = list;
    expect(finding?.severity).toBe("needs an answer");
    expect(finding?.key).toBe("report-too-old:report-7-northern-lab-2020-03-02");
    expect(finding && tell(finding.sentence, "us")).toBe(
      "The report “Report 7, Northern Lab, 2020-03-02” is more than five years old on 2027-06-01; on it rest G-max and tuft bind (five years: common practice, no source).",
    );
    expect(finding && tell(finding.question, "us")).toBe(
      "Is there a later report than “Report 7, Northern Lab, 2020-03-02” for G-max and tuft bind, and is what is offered now still what was tested then?",
    );
  });

  test("is silent where no date is given", () => expect(found(tested(""))).toEqual([]));

  test("does not depend on the order of the claims", () =>
    expectSameInAnyOrder(
      rule,
      bidWith(tested("2020"), tested("2020", { property: "tuft-bind", figure: "9 lbf" }), tested("2019")),
    ));
});
