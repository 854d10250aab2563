import { describe, expect, test } from "vitest";
import {
  evaluate,
  type Project,
  type ProjectFile,
  projectFileSchema,
  type Substitution,
  substitutedBid,
  substitutionEffects,
  substitutionSchema,
} from "#lib/evaluation";
import demonstration from "../../app/_demo/demonstration-project.json";

const project: Project = projectFileSchema.parse(demonstration as unknown as ProjectFile);
const bid = project.bids.find(({ id }) => id === "bid-a");
if (bid === undefined) throw new Error("the demonstration has a bid A");
const request = (text: object): Substitution => ({
  id: "request",
  ...substitutionSchema.parse({ item: "Infill", ...text }),
});
const effectsOf = (text: object) => {
  const effects = substitutionEffects(project, request(text), "us");
  if (effects === null) throw new Error("the demonstration names the bid that was taken");
  return effects;
};
const lighter = {
  infill: {
    placement: "layered",
    components: [
      { id: "sand", material: "silica-sand", arealDensity: "5 lb/ft²", bulkDensity: "", evidence: "stated" },
      { id: "rubber", material: "rubber-ambient", arealDensity: "2 lb/ft²", bulkDensity: "", evidence: "stated" },
    ],
  },
};

describe("a request for substitution", () => {
  test("that changes nothing changes no figure", () => {
    expect(substitutedBid(bid, request({}))).toEqual(bid);
    expect(effectsOf({}).effects.filter(({ isSame }) => !isSame)).toEqual([]);
  });

  test("its claims stand in place of all that the bid says of their property, and no id stands twice", () => {
    const claims = [
      { id: "tuft-bind", property: "g-max", figure: "140 g", method: "f1936", condition: "new", evidence: "stated" },
    ];
    const substituted = substitutedBid(bid, request({ claims }));
    expect(substituted.claims.filter(({ property }) => property === "g-max")).toHaveLength(1);
    const ids = substituted.claims.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  test("mass follows by the same evaluation: 5 + 2 lb/ft² in place of 6.5 + 3", () => {
    const change = effectsOf(lighter).effects.find(({ what }) => what === "Infill mass per area");
    expect(change).toMatchObject({ asBid: "9.50 lb/ft²", substituted: "7.00 lb/ft²", isSame: false });
  });

  test("a credit lowers the present value, in cents, by itself: it is paid at the base date", () => {
    const worth = (from: Project) => {
      const figure = evaluate(from).bids.find(({ id }) => id === "bid-a")?.cost.presentValue;
      if (figure?.kind !== "known") throw new Error("the cost of bid A is known");
      return figure.value;
    };
    const bids = project.bids.map((each) =>
      each.id === bid.id ? substitutedBid(bid, request({ priceChange: "−$12,000" })) : each,
    );
    expect(worth(project) - worth({ ...project, bids })).toBeCloseTo(12_000 * 100, 2);
  });

  test("it is held against clause and bid, and what it leaves open is said", () => {
    const claims = [
      {
        id: "bind",
        property: "tuft-bind",
        figure: "7 lbf",
        method: "d1335",
        condition: "new",
        evidence: "accredited-laboratory",
      },
    ];
    const { rows, silent } = effectsOf({ claims });
    expect(rows.map(({ review }) => [review.specification.kind, review.bid.kind])).toEqual([["falls-short", "weaker"]]);
    expect(silent).toContain("pile height");
    expect(silent).not.toContain("tuft bind");
  });

  test("a price that does not read is told", () =>
    expect(substitutionSchema.safeParse({ item: "Infill", priceChange: "some" }).error?.issues[0]?.path).toEqual([
      "priceChange",
    ]));
});
