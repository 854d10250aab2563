import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { tell } from "#lib/figure";
import { checkedBid, foundBy, infill } from "../checked-bid";
import { expectSameFindings } from "../laws";

const rule = "bulk-density-implausible";
const sand = (loose?: string) =>
  checkedBid({
    infill: infill("layered", loose === undefined ? ["silica-sand", "6 lb/ft²"] : ["silica-sand", "6 lb/ft²", loose]),
  });
const found = (loose: string) => foundBy(rule, sand(loose));

describe("stated loose density", () => {
  // from memory: rounded silica sand 1450–1600 kg/m³ loose; 10 % beyond is 1305–1760 kg/m³
  test("allows a tenth beyond the band, and no more, on both sides", () => {
    expect(found("1305 kg/m³")).toEqual([]);
    expect(found("1760 kg/m³")).toEqual([]);
    expect(found("1304 kg/m³").map(({ severity }) => severity)).toEqual(["needs an answer"]);
    expect(found("1761 kg/m³")).toHaveLength(1);
  });

  // density of quartz: 2650 kg/m³
  test("can't reach the density of its grains", () => {
    const [finding] = found("2650 kg/m³");
    if (finding === undefined) throw new Error("expected a finding");
    expect(finding.severity).toBe("can't be true");
    expect(tell(finding.sentence, "metric")).toBe(
      "The bid states a loose density of 2,650 kg/m³ for “Silica sand, rounded”, whose grains have 2,650 kg/m³. A bed holds voids, so it is lighter than its grains.",
    );
    expect(found("2649 kg/m³").map(({ severity }) => severity)).toEqual(["needs an answer"]);
    expect(found("3000 kg/m³").map(({ severity }) => severity)).toEqual(["can't be true"]);
  });

  test("is silent where a range reaches the band or nothing is stated", () => {
    expect(found("1000–1400 kg/m³")).toEqual([]);
    expect(found("at least 1000 kg/m³")).toEqual([]);
    expect(foundBy(rule, sand())).toEqual([]);
    expect(foundBy(rule, checkedBid())).toEqual([]);
  });

  test("tells each component apart, whatever their order", () => {
    const [one, two] = [
      ["silica-sand", "6 lb/ft²", "15 lb/ft³"],
      ["rubber-ambient", "3 lb/ft²", "90 lb/ft³"],
    ] as const;
    const keys = foundBy(rule, checkedBid({ infill: infill("layered", one, two) })).map(({ key }) => key);
    expect(new Set(keys).size).toBe(2);
    const build = infill("layered", one, two);
    const reversed = { ...build, components: build.components.toReversed() };
    expect(foundBy(rule, checkedBid({ infill: reversed })).map(({ key }) => key)).toEqual(keys);
  });

  test("does not depend on the unit", () =>
    fc.assert(
      fc.property(fc.integer({ min: 300, max: 3000 }), (density) => {
        fc.pre(![1305, 1760, 2650].includes(density));
        // 1 lb/ft³ is 16.018463 kg/m³ (NIST SP 811)
        expectSameFindings(rule, sand(`${density} kg/m³`), sand(`${(density / 16.01846337).toFixed(7)} lb/ft³`));
      }),
    ));
});
