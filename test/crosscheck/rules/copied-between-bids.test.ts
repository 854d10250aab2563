import { describe, expect, test } from "vitest";
import { tell } from "#lib/figure";
import { expectSameInAnyOrder } from "../any-order";
import { checkedBid, claims, foundBy, type WrittenClaim } from "../checked-bid";

const rule = "copied-between-bids";
const figures = [
  { property: "pile-mass", figure: "47.3 oz/yd²", method: "d5848" },
  { property: "tuft-bind", figure: "9.87 lbf", method: "d1335" },
  { property: "yarn-linear-density", figure: "11,740 denier", method: "d1577" },
] as const;
type Texts = readonly WrittenClaim[];
const bidWith = (...list: Texts) => checkedBid({ claims: claims(...list) });
const otherWith = (...list: Texts) => checkedBid({ id: "bid-b", letter: "B", claims: claims(...list) });
const found = (one: Texts, other: Texts) => foundBy(rule, bidWith(...one), [otherWith(...other)]);

describe("figures that agree to the last digit", () => {
  test("notes three of them, and does not tell the bidder of another bid", () => {
    const [finding] = found([...figures], [...figures]);
    expect(finding).toMatchObject({ severity: "note", claims: ["claim-0", "claim-1", "claim-2"] });
    expect(finding?.key).toBe("copied-between-bids:other-bids");
    expect(finding && tell(finding.sentence, "us")).toBe(
      "For pile mass, tuft bind and yarn linear density this bid and bid B give the same figures to the last digit. They may offer one product, or rest on one source (rule of thumb: common practice, no source).",
    );
    expect(finding && tell(finding.question, "us")).toBe(
      "Where do your figures for pile mass, tuft bind and yarn linear density come from, and were they measured on the very build that you offer?",
    );
  });

  test("names several bids in one note", () => {
    const others = ["C", "B"].map((letter) => ({ ...otherWith(...figures), id: `bid-${letter}`, letter }));
    const notes = foundBy(rule, bidWith(...figures), others);
    expect(notes).toHaveLength(1);
    expect(notes[0] && tell(notes[0].sentence, "us")).toContain("this bid and bids B and C give the same figures");
  });

  test("is silent for two of them", () => expect(found([...figures], figures.slice(0, 2))).toEqual([]));

  test("does not count one property twice", () => {
    const [pile, tuft] = figures;
    const twice = [pile, tuft, { ...tuft, figure: "9.13 lbf" }];
    expect(found(twice, twice)).toEqual([]);
  });

  test("does not count round figures, choices and words", () => {
    const round = [
      { property: "pile-mass", figure: "45 oz/yd²" },
      { property: "tuft-bind", figure: "8.0 lbf" },
      { property: "yarn-linear-density", figure: "12,000 denier" },
      { property: "fibre-polymer", figure: "polyethylene" },
      { property: "warranty-terms", figure: "8 years and 1234 words" },
    ];
    expect(found(round, round)).toEqual([]);
  });

  test("is silent where a digit, a method or a condition differs", () => {
    const [pile, tuft, yarn] = figures;
    expect(found([...figures], [{ ...pile, figure: "47.4 oz/yd²" }, tuft, yarn])).toEqual([]);
    expect(found([...figures], [{ ...pile, method: "" }, tuft, yarn])).toEqual([]);
    expect(found([...figures], [{ ...pile, condition: "year 5" }, tuft, yarn])).toEqual([]);
  });

  test("is silent without another bid", () => expect(foundBy(rule, bidWith(...figures))).toEqual([]));

  test("does not depend on the order of the claims", () =>
    expectSameInAnyOrder(rule, bidWith(...figures), [otherWith(...figures)]));
});
