import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { tell } from "#lib/figure";
import { checkedBid, claims, foundBy } from "../checked-bid";
import { expectSameFindings, orderNeverMatters } from "../laws";

const rule = "pile-mass-from-yarn";
type Build = Readonly<{ gauge: string; stitches: string; pile: string; yarn: string }>;
const stated = ({ gauge, stitches, pile, yarn }: Build, mass: string) =>
  claims(
    { property: "gauge", figure: gauge },
    { property: "stitch-rate", figure: stitches },
    { property: "pile-height", figure: pile },
    { property: "yarn-linear-density", figure: yarn },
    { property: "pile-mass", figure: mass },
  );
const found = (build: Build, mass: string) => foundBy(rule, checkedBid({ claims: stated(build, mass) }));

/** Read from a published specification sheet of a carpet. */
const published: Build = { gauge: "3/8 in", stitches: "17.5 stitches/10 cm", pile: "1.25 in", yarn: "14,600 dtex" };
const sports: Build = { gauge: "1/2 in", stitches: "4", pile: "2.25 in", yarn: "10,800 denier" };

describe("pile mass from gauge, stitch rate, pile height and yarn", () => {
  // the same sheet prints 50 oz/yd²; the relation gives 1703.3 g/m² or 50.24 oz/yd²
  test("agrees with a published sheet", () => expect(found(published, "50 oz/yd²")).toEqual([]));

  // derived by hand: 12,400 tufts per m² × 0.1143 m × 1.2 g/m = 1700.8 g/m² or 50.16 oz/yd²; 5 % below is 47.65, 20 % above 60.19
  test("fires 5 % below and 20 % above what the yarn gives, and not before", () => {
    expect(found(sports, "47.7 oz/yd²")).toEqual([]);
    expect(found(sports, "60.1 oz/yd²")).toEqual([]);
    expect(found(sports, "47.6 oz/yd²").map(({ severity }) => severity)).toEqual(["needs an answer"]);
    expect(found(sports, "60.3 oz/yd²").map(({ severity }) => severity)).toEqual(["note"]);
  });

  test("fires at the ends of the tolerance of the published sheet as well", () => {
    // 1703.3 g/m² less 5 % is 1618.1, plus 20 % is 2044.0
    expect(found(published, "1619 g/m²")).toEqual([]);
    expect(found(published, "2043 g/m²")).toEqual([]);
    expect(found(published, "1617 g/m²")).toHaveLength(1);
    expect(found(published, "2045 g/m²")).toHaveLength(1);
  });

  test("says which figure the yarn gives", () => {
    const [finding] = found(sports, "40 oz/yd²");
    if (finding === undefined) throw new Error("expected a finding");
    expect(tell(finding.sentence, "us")).toBe(
      "Gauge, stitch rate, pile height and yarn give a pile of at least 50.2 oz/yd²; the bid states 40.0 oz/yd². So much yarn can’t weigh less.",
    );
  });

  test("is silent where ranges leave room or a figure is missing", () => {
    expect(found({ ...sports, yarn: "8,000–11,000 denier" }, "40 oz/yd²")).toEqual([]);
    expect(found({ ...sports, pile: "at most 2.25 in" }, "40 oz/yd²")).toEqual([]);
    const all = stated(sports, "40 oz/yd²");
    for (const [index] of all.entries())
      expect(foundBy(rule, checkedBid({ claims: all.filter((_claim, at) => at !== index) }))).toEqual([]);
  });

  test("does not depend on unit or order", () => {
    const metric: Build = { gauge: "12.7 mm", stitches: "15.748031 /10 cm", pile: "57.15 mm", yarn: "12,000 dtex" };
    fc.assert(
      fc.property(fc.integer({ min: 30, max: 80 }), (mass) => {
        expectSameFindings(
          rule,
          checkedBid({ claims: stated(sports, `${mass} oz/yd²`) }),
          checkedBid({ claims: stated(metric, `${(mass * 33.905747).toFixed(3)} g/m²`) }),
        );
      }),
    );
    orderNeverMatters(rule, checkedBid({ claims: stated(sports, "40 oz/yd²") }));
  });
});
