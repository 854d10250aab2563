import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { tell } from "#lib/figure";
import { expectSameInAnyOrder } from "../any-order";
import { checkedBid, claims, foundBy } from "../checked-bid";
import { criterionOf, fallOnto, peakOf, sampled } from "../falls";

const rule = "g-max-and-hic";
const rugby = { method: "f3146", condition: "new", document: "Report 7" };
const both = (level: string, criterion: string, differing: object = {}) =>
  checkedBid({
    claims: claims(
      { property: "g-max", figure: level, ...rugby },
      { property: "head-injury-criterion", figure: criterion, ...rugby, ...differing },
    ),
  });
const found = (...figures: Parameters<typeof both>) => foundBy(rule, both(...figures));
const foundForRecord = (level: number, criterion: number) => found(`${level.toFixed(3)} g`, criterion.toFixed(3));

// speed after a fall from 1.3 m: √(2 · 9.80665 · 1.3) = 5.0494 m/s, so v/g = 0.514898 s
const speedOverGravity = 0.514898;

describe("the brute-force criterion", () => {
  // derived: K·A^2.5·T with K from the window whose ends are at 0.6 of its mean
  test.each([
    ["half-sine", (at: number) => Math.sin(Math.PI * at), 100, 0.01, 414.646],
    ["triangle", (at: number) => 1 - Math.abs(2 * at - 1), 150, 0.01, 679.0],
    ["rectangle", () => 1, 200, 0.008, 4525.48],
  ])("of a %s is that of the closed form", (_shape, shape, peak, duration, expected) => {
    expect(criterionOf(sampled(shape, peak, duration, 1000)) / expected).toBeCloseTo(1, 3);
  });

  // derived: a lossless linear spring at 1.3 m gives 0.67074·A^1.5, and 1000 at 130.5 g
  test("of a fall on a spring is that of half a sine", () => {
    const pulse = fallOnto({ stiffness: 4000, exponent: 1, givenBack: 1 }, 1.3);
    expect(criterionOf(pulse) / (0.67074 * peakOf(pulse) ** 1.5)).toBeCloseTo(1, 1);
  });
});

describe("G-max and head injury criterion of one fall", () => {
  test("fires above what a full bounce allows", () => {
    // derived by hand: 100^2.5 · 2·√(2·9.80665·1.4)/9.80665 ÷ 99 = 1079.48; 5 % more is 1133.45
    expect(found("100 g", "1133")).toEqual([]);
    const [finding] = found("100 g", "1134");
    expect(finding?.severity).toBe("can't be true");
    expect(finding && tell(finding.sentence, "metric")).toBe(
      "A fall from 1.3 m that peaks at 100 g allows a head injury criterion of at most 1,080; the bid states 1,134.",
    );
  });

  test("asks below what the most pointed usual pulse gives", () => {
    // derived by hand: 0.4928014 · 100^1.5 · 0.514898 = 253.75; 5 % less is 241.06
    expect(found("100 g", "241.1")).toEqual([]);
    const [finding] = found("100 g", "241");
    expect(finding?.severity).toBe("needs an answer");
    expect(finding && tell(finding.question, "us")).toBe(
      "Your bid states a G-max of 100 g and a head injury criterion of 241 by ASTM F3146. Are both from the same drops, from which height, and can you send the record?",
    );
  });

  // derived: a lossless linear spring at 1.3 m reaches 1000 at 130.5 g
  test("is silent for a spring", () => expect(found("130.5 g", "1000")).toEqual([]));

  test("is silent for every fall that Newton's second law allows", () =>
    fc.assert(
      fc.property(
        fc.record({
          stiffness: fc.double({ min: 3, max: 5, noNaN: true }).map((power) => 10 ** power),
          exponent: fc.double({ min: 0.15, max: 1, noNaN: true }),
          givenBack: fc.double({ min: 0, max: 1, noNaN: true }),
        }),
        (surface) => {
          const pulse = fallOnto(surface, 1.3);
          fc.pre(peakOf(pulse) > 20 && peakOf(pulse) < 290);
          expect(foundForRecord(peakOf(pulse), criterionOf(pulse))).toEqual([]);
        },
      ),
      { numRuns: 60 },
    ));

  test("never says “can’t be true” of a surface that stiffens, however steeply", () =>
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 6, noNaN: true }),
        fc.double({ min: 60, max: 250, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (exponent, peak, givenBack) => {
          // energy: the stiffness for which the fall of 1.3 m ends about at the wanted peak
          const depth = (1.3 * (exponent + 1)) / peak;
          fc.pre(depth < 0.1);
          const pulse = fallOnto({ stiffness: peak / depth ** exponent, exponent, givenBack }, 1.3);
          const severities = foundForRecord(peakOf(pulse), criterionOf(pulse)).map(({ severity }) => severity);
          expect(severities).not.toContain("can't be true");
        },
      ),
      { numRuns: 60 },
    ));

  test("fires a tenth above the fall with a flat pulse and a full bounce, which nothing exceeds", () =>
    fc.assert(
      fc.property(fc.double({ min: 40, max: 200, noNaN: true }), (peak) => {
        const duration = (2 * speedOverGravity) / (peak - 1);
        const criterion = criterionOf(sampled(() => 1, peak, duration));
        expect(foundForRecord(peak, criterion)).toEqual([]);
        expect(foundForRecord(peak, criterion * 1.1)).toHaveLength(1);
      }),
    ));

  test("is silent for every pulse without a hollow that stops the missile", () =>
    fc.assert(
      fc.property(
        fc.double({ min: 40, max: 200, noNaN: true }),
        // the lowest of a few straight lines is a pulse without a hollow
        fc.array(
          fc.tuple(fc.double({ min: 0.05, max: 0.95, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true })),
          {
            minLength: 1,
            maxLength: 4,
          },
        ),
        (peak, lines) => {
          const raw = (at: number) =>
            Math.min(...lines.map(([top, lift]) => lift + (at < top ? at / top : (1 - at) / (1 - top))));
          const shape = sampled(raw, 1, 1);
          const highest = peakOf(shape);
          const area = shape.levels.reduce((sum, level) => sum + level / highest, 0) / (shape.levels.length - 1);
          const pulse = sampled((at) => raw(at) / highest, peak, speedOverGravity / (peak * area));
          expect(foundForRecord(peakOf(pulse), criterionOf(pulse))).toEqual([]);
        },
      ),
    ));

  test("is silent where one-sided figures leave room", () => {
    expect(found("at least 100 g", "3000")).toEqual([]);
    expect(found("at most 100 g", "100")).toEqual([]);
    expect(found("at most 100 g", "3000")).toHaveLength(1);
    expect(found("100 g", "at most 3000")).toEqual([]);
  });

  test("only asks where no document says that both are from one report", () => {
    expect(found("100 g", "2000", { document: "" })[0]?.severity).toBe("needs an answer");
    expect(found("100 g", "2000", { document: "Report 8" })).toEqual([]);
  });

  test("takes the drop height that the bid states where the method leaves it open", () => {
    const open = { ...rugby, method: "f355-e" };
    const withHeights = (...heights: readonly string[]) =>
      checkedBid({
        claims: claims(
          { property: "g-max", figure: "100 g", ...open },
          { property: "head-injury-criterion", figure: "1000", ...open },
          ...heights.map((figure) => ({ property: "hic-drop-height", figure, document: "report 7" })),
        ),
      });
    // derived by hand: 100^2.5 · 2·√(2·9.80665·(h + 0.1))/9.80665 ÷ 99 and 5 % more: 995.5 at 0.98 m, 1004.7 at 1 m
    expect(foundBy(rule, withHeights("0.98 m"))).toHaveLength(1);
    expect(foundBy(rule, withHeights("1 m"))).toEqual([]);
    expect(foundBy(rule, withHeights())).toEqual([]);
    expect(foundBy(rule, withHeights("0.98 m", "0.5 m"))).toEqual([]);
    expect(foundBy(rule, withHeights("0.9–0.98 m"))).toEqual([]);
  });

  test("is silent where the drop height, a method or a figure is missing", () => {
    const other = { ...rugby, method: "f1292" };
    const open = claims(
      { property: "g-max", figure: "100 g", ...other },
      { property: "head-injury-criterion", figure: "3000", ...other },
    );
    expect(foundBy(rule, checkedBid({ claims: open }))).toEqual([]);
    expect(found("100 g", "3000", { method: "" })).toEqual([]);
    expect(found("100 g", "3000", { condition: "year 5" })).toEqual([]);
    expect(foundBy(rule, checkedBid({ claims: claims({ property: "g-max", figure: "100 g", ...rugby }) }))).toEqual([]);
  });

  test("does not depend on the order of the claims", () => expectSameInAnyOrder(rule, both("100 g", "2000")));
});
