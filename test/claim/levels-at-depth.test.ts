import { describe, expect, test } from "vitest";
import { bestClaim, type Claim, type ClaimInput, levelsAtLesserDepth } from "#lib/claim";
import { claimed } from "./bid-claims";

const level = (id: string, figure: string, condition: string, differing: Partial<ClaimInput> = {}): Claim =>
  claimed({ id, property: "g-max", figure, method: "f355-a", condition, ...differing });
const idsOf = (claims: readonly Claim[]) => levelsAtLesserDepth(claims, "g-max", "f355-a").map(({ claim }) => claim.id);

describe("levelsAtLesserDepth", () => {
  test("finds nothing where every level is at the full depth", () =>
    expect(idsOf([level("new", "110 g", "new"), level("five", "130 g", "year 5")])).toEqual([]));

  test("holds lesser depths against the full one, of the new surface and by methods that compare", () =>
    expect(
      idsOf([
        level("new", "110 g", "new"),
        level("half", "150 g", "new, 0.5 in less infill"),
        level("bare", "160 g", "infill 0.75 in deep"),
        level("old", "170 g", "year 5, 0.5 in less infill"),
        level("clegg", "90 g", "new, 0.5 in less infill", { method: "f1702-clegg" }),
      ]),
    ).toEqual(["new", "half", "bare"]));

  test("prefers the full depth of the same document", () =>
    expect(
      idsOf([
        level("other", "118 g", "new", { document: "Data sheet" }),
        level("same", "110 g", "new", { document: "Report 4" }),
        level("half", "150 g", "new, 0.5 in less infill", { document: "Report 4" }),
      ]),
    ).toEqual(["same", "half"]));

  test("leaves out another weather", () =>
    expect(idsOf([level("wet", "100 g", "new, wet"), level("half", "150 g", "new, dry, 0.5 in less infill")])).toEqual([
      "half",
    ]));

  test("a level at a lesser depth never stands for the bid where one at full depth does", () => {
    const claims = [
      level("half", "150 g", "new, 0.5 in less infill", { evidence: "guaranteed" }),
      level("new", "110 g", "new"),
    ];
    const best = bestClaim(claims, { property: "g-max", method: "f355-a" });
    expect(best.ok && best.value.claim.id).toBe("new");
  });
});
