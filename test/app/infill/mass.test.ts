import { describe, expect, test } from "vitest";
import { type Figure, figureFromInterval, unknown } from "#lib/figure";
import { measured } from "#lib/quantity";
import { massSummary, sectionSummary } from "../../../app/project/[id]/infill/_components/infill-summary";
import { massByClass } from "../../../app/project/[id]/infill/_components/mass-by-class";
import { formatTradeMass } from "../../../app/project/[id]/infill/_components/trade-mass";

const working = { formula: "", inputs: [], assumptions: [], source: "derived" };
const mass = (low: number, high = low): Figure<"mass"> =>
  figureFromInterval("mass", { low: measured("mass", low), high: measured("mass", high) }, working);
const noMass = unknown("mass", { kind: "not-claimed", what: "the components of the infill" });
const inches = (low: number, high = low): Figure<"length"> =>
  figureFromInterval("length", { low: measured("length", low, "in"), high: measured("length", high, "in") }, working);

describe("formatTradeMass", () => {
  const span = (low: number, high: number) => ({
    low: measured("mass", low, "lb"),
    high: measured("mass", high, "lb"),
  });

  test("gives short tons of 2,000 lb and tonnes of 1,000 kg", () => {
    expect(formatTradeMass(span(725_040, 725_040), "us")).toBe("363 short tons");
    // 725,040 lb × 0.45359237 kg (exact, NIST SP 811) = 328,872.6 kg
    expect(formatTradeMass(span(725_040, 725_040), "metric")).toBe("329 tonnes");
  });

  test("gives a range, a bound, and one decimal below 100", () => {
    expect(formatTradeMass(span(290_000, 330_000), "us")).toBe("145–165 short tons");
    expect(formatTradeMass(span(26_400, 26_400), "us")).toBe("13.2 short tons");
    expect(formatTradeMass(span(290_000, Number.POSITIVE_INFINITY), "us")).toBe("at least 145 short tons");
    expect(formatTradeMass(span(Number.NEGATIVE_INFINITY, 290_000), "us")).toBe("at most 145 short tons");
  });
});

describe("massByClass", () => {
  test("adds up each class and puts what stays down first", () => {
    const parts = massByClass([
      { class: "polymer", mass: mass(100) },
      { class: "mineral", mass: mass(150, 250) },
      { class: "polymer", mass: mass(50) },
    ]);
    expect(parts).toEqual([
      { class: "mineral", mass: 200 },
      { class: "polymer", mass: 150 },
    ]);
  });

  test("draws a bound at the bound and nothing of what is not known", () => {
    expect(massByClass([{ class: "organic", mass: mass(80, Number.POSITIVE_INFINITY) }])).toEqual([
      { class: "organic", mass: 80 },
    ]);
    expect(massByClass([{ class: "organic", mass: noMass }])).toEqual([]);
  });
});

describe("massSummary", () => {
  const short = (tons: number) => mass(measured("mass", tons, "short ton"));

  test("names who brings most and least", () => {
    expect(
      massSummary(
        [
          { letter: "A", figure: short(363) },
          { letter: "B", figure: short(129) },
          { letter: "C", figure: noMass },
        ],
        "us",
      ),
    ).toBe(
      "Bid A (363 short tons) puts most infill on the field, bid B (129 short tons) least. The mass of bid C is not known.",
    );
  });

  test("leaves open who brings most where ranges meet", () => {
    const range = (low: number, high: number) =>
      mass(measured("mass", low, "short ton"), measured("mass", high, "short ton"));
    expect(
      massSummary(
        [
          { letter: "A", figure: range(150, 200) },
          { letter: "B", figure: range(100, 160) },
        ],
        "us",
      ),
    ).toBe("Bid A (150–200 short tons) may put most infill on the field, bid B (100–160 short tons) least.");
  });

  test("says so where no mass is known, and does not compare one bid with itself", () => {
    expect(massSummary([{ letter: "A", figure: noMass }], "us")).toBe(
      "No bid states an infill whose mass can be worked out.",
    );
    expect(massSummary([{ letter: "A", figure: short(363) }], "us")).toBe(
      "On the whole field lies the infill of bid A (363 short tons).",
    );
  });
});

describe("sectionSummary", () => {
  test("names the shortest and the longest free pile", () => {
    expect(
      sectionSummary(
        [
          { letter: "A", figure: inches(0.13, 0.35) },
          { letter: "B", figure: inches(0.7, 0.93) },
        ],
        "us",
      ),
    ).toBe(
      "The fibre that stands free above the infill is shortest in bid A (0.13–0.35 in) and longest in bid B (0.70–0.93 in).",
    );
  });

  test("says where the infill buries the pile, or may", () => {
    const text = sectionSummary(
      [
        { letter: "A", figure: inches(-0.5, -0.2) },
        { letter: "B", figure: inches(-0.1, 0.1) },
        { letter: "C", figure: unknown("length", { kind: "not-claimed", what: "the pile height" }) },
      ],
      "us",
    );
    expect(text).toContain("In bid A the infill would stand above the pile.");
    expect(text).toContain("In bid B the infill may reach the top of the pile.");
    expect(text).toContain("The free pile of bid C is not known.");
  });
});
