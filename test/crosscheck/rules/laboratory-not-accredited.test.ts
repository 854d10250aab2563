import { describe, expect, test } from "vitest";
import { tell } from "#lib/figure";
import { expectSameInAnyOrder } from "../any-order";
import { checkedBid, claims, foundBy, type WrittenClaim } from "../checked-bid";

const rule = "laboratory-not-accredited";
const tested = (accreditation: string, differing: object = {}) => ({
  ...{ property: "g-max", figure: "110 g", method: "f1936", evidence: "accredited-laboratory", accreditation },
  ...differing,
});
const bidWith = (...list: readonly WrittenClaim[]) => checkedBid({ claims: claims(...list) });
const found = (...list: readonly WrittenClaim[]) => foundBy(rule, bidWith(...list));

describe("accredited laboratories", () => {
  test("asks where the accreditation is missing", () => {
    const [finding] = found(tested("not-accredited"));
    expect(finding).toMatchObject({ severity: "needs an answer", claims: ["claim-0"] });
    expect(finding && tell(finding.sentence, "us")).toBe(
      "For G-max the evidence is given as an accredited laboratory, while the laboratory is not accredited for the method.",
    );
    expect(finding && tell(finding.question, "us")).toBe(
      "Which laboratory accredited to ISO/IEC 17025 for the method tested G-max, and can you send its report?",
    );
  });

  test("notes once where it is not shown", () => {
    const list = found(tested(""), tested("", { property: "tuft-bind", figure: "9 lbf" }));
    expect(list).toMatchObject([{ severity: "note", claims: ["claim-0", "claim-1"] }]);
    expect(list[0] && tell(list[0].sentence, "us")).toBe(
      "For G-max and tuft bind the evidence is given as an accredited laboratory; an accreditation for the method is not shown.",
    );
    expect(list[0] && tell(list[0].question, "us")).toBe(
      "Please send the certificate and scope of accreditation to ISO/IEC 17025 of the laboratory that tested G-max and tuft bind.",
    );
  });

  test("is silent where it is shown, and for other evidence", () => {
    expect(found(tested("accredited"))).toEqual([]);
    expect(found(tested("not-accredited", { evidence: "own-test" }))).toEqual([]);
    expect(found(tested("", { evidence: "field-tested" }))).toEqual([]);
    expect(found()).toEqual([]);
  });

  test("keeps its key when another claim joins", () => {
    const [one] = found(tested(""));
    const [two] = found(tested(""), tested("", { property: "tuft-bind", figure: "9 lbf" }));
    expect(two?.key).toBe(one?.key);
  });

  test("does not depend on the order of the claims", () =>
    expectSameInAnyOrder(rule, bidWith(tested("not-accredited"), tested(""), tested(""))));
});
