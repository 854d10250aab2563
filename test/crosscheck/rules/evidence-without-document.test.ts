import { describe, expect, test } from "vitest";
import { type EvidenceLevel, evidenceLevels } from "#lib/claim";
import { tell } from "#lib/figure";
import { expectSameInAnyOrder } from "../any-order";
import { checkedBid, claims, foundBy, type WrittenClaim } from "../checked-bid";

const rule = "evidence-without-document";
const shown = (evidence: EvidenceLevel, document = "", property = "g-max", figure = "110 g") => ({
  ...{ property, figure, evidence, document },
});
const bidWith = (...list: readonly WrittenClaim[]) => checkedBid({ claims: claims(...list) });
const found = (...list: readonly WrittenClaim[]) => foundBy(rule, bidWith(...list));

describe("evidence and documents", () => {
  test("gathers what names no document", () => {
    const list = found(
      shown("own-test"),
      shown("guaranteed", " ", "tuft-bind", "9 lbf"),
      shown("field-tested", "Report 7"),
    );
    expect(list).toMatchObject([{ severity: "needs an answer", claims: ["claim-0", "claim-1"] }]);
    expect(list[0] && tell(list[0].sentence, "us")).toBe(
      "For G-max and tuft bind a test, a report or a guarantee is given as evidence, and no document is named.",
    );
    expect(list[0] && tell(list[0].question, "us")).toBe(
      "Which document shows your figures for G-max and tuft bind, and on which page?",
    );
  });

  test.each(evidenceLevels.map(({ id }) => id))("fires above “stated” only: %s", (level) =>
    expect(found(shown(level))).toHaveLength(level === "stated" ? 0 : 1),
  );

  test("is silent where a document is named or nothing is claimed", () => {
    expect(found(shown("guaranteed", "Contract"))).toEqual([]);
    expect(found()).toEqual([]);
  });

  test("keeps its key when another claim joins", () =>
    expect(found(shown("own-test"))[0]?.key).toBe(found(shown("own-test"), shown("guaranteed"))[0]?.key));

  test("does not depend on the order of the claims", () =>
    expectSameInAnyOrder(rule, bidWith(shown("own-test"), shown("guaranteed", "", "tuft-bind", "9 lbf"))));
});
