import { describe, expect, test } from "vitest";
import { bidSchema, startingBid } from "#lib/evaluation";
import { guaranteeClause, promisedLevels } from "../../../app/project/[id]/field-tests/_tests/promised-levels";

const claim = (id: string, property: string, figure: string, more: Record<string, string> = {}) => ({
  id,
  property,
  figure,
  method: "",
  condition: "",
  evidence: "guaranteed",
  document: "Warranty",
  page: "3",
  words: "",
  note: "",
  ...more,
});
const bidWith = (...claims: ReturnType<typeof claim>[]) => ({
  id: "bid-a",
  ...bidSchema.parse({ ...startingBid("A", "First bidder"), claims }),
});
const years = claim("years", "warranty-years", "8 years");

const limit = claim("limit", "warranty-hardness-limit", "175 g", { method: "f355-a", evidence: "stated" });

describe("promisedLevels", () => {
  test("takes the hardness limit of the warranty, whatever its proof, by a method that measures alike", () =>
    expect(promisedLevels(bidWith(limit, years), null, "f1936").guaranteed).toEqual({
      level: 175,
      years: expect.closeTo(8, 9),
    }));

  test("reads nothing for a location from a limit that holds for the average alone", () => {
    const basis = (figure: string) => claim("basis", "warranty-hardness-basis", figure);
    expect(promisedLevels(bidWith(limit, basis("average")), null, "f1936").guaranteed).toBeNull();
    expect(promisedLevels(bidWith(limit, basis("every-point")), null, "f1936").guaranteed?.level).toBe(175);
  });

  test("takes the guaranteed level and the years of the warranty", () =>
    expect(
      promisedLevels(bidWith(claim("level", "g-max", "165 g", { method: "f1936" }), years), null, "f1936"),
    ).toEqual({ method: "f1936", claimed: null, guaranteed: { level: 165, years: expect.closeTo(8, 9) } }));

  test("takes the stricter of two, and years that the guarantee states itself", () =>
    expect(
      promisedLevels(
        bidWith(
          claim("level", "g-max", "165 g", { method: "f1936" }),
          claim("point", "g-max-highest-point", "150 g", { method: "f1936", condition: "year 5" }),
          years,
        ),
        null,
        "f1936",
      ).guaranteed,
    ).toEqual({ level: 150, years: 5 }));

  test("passes over what is only stated, by a method that does not compare, or over less infill", () =>
    expect(
      promisedLevels(
        bidWith(
          claim("stated", "g-max", "165 g", { method: "f1936", evidence: "stated" }),
          claim("head", "g-max", "165 g", { method: "f355-e" }),
          claim("less", "g-max", "165 g", { method: "f1936", condition: "new, 0.5 in less infill" }),
        ),
        null,
        "f1936",
      ).guaranteed,
    ).toBeNull());
});

test("a clause has the words of the warranty, its place and its level", () =>
  expect(
    guaranteeClause(
      bidWith(claim("level", "g-max", "165 g", { method: "f1936", words: "Below 165 g at all times." })),
      "f1936",
    ),
  ).toEqual({ where: "Warranty, page 3", words: "Below 165 g at all times.", limit: 165 }));
