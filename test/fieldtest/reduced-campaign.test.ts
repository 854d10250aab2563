import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  explainLocationNote,
  fieldVerdict,
  locationLevel,
  locationVerdict,
  locationVerdicts,
  noteOnDrops,
  noteOnLevel,
  pooledRepeatability,
  reducedCampaign,
  statedRepeatability,
} from "#lib/fieldtest";
import { explainShortfall, formatFigure } from "#lib/figure";
import { impactCaution } from "#lib/impact";
import { below200, campaignInput, campaignOf, dropsOn, eightLocations, grams, nothingKnown } from "./campaigns";

const level = fc.double({ min: 40, max: 320, noNaN: true });
const guard = fc.double({ min: 0, max: 40, noNaN: true });

describe("locationLevel", () => {
  test("takes no account of the first drop", () =>
    expect(locationLevel(dropsOn(20, 130, 131))).toBe(locationLevel(dropsOn(190, 130, 131))));
});

describe("locationVerdict", () => {
  test.each([
    [180, "meets"],
    [195, "meets-within-uncertainty"],
    [200, "does-not-meet-within-uncertainty"],
    [205, "does-not-meet-within-uncertainty"],
    [210, "does-not-meet"],
  ] as const)("of %i g against 200 g, sure to 10 g", (measured, verdict) =>
    expect(locationVerdict(grams(measured), grams(200), grams(10))).toBe(verdict),
  );

  test("says meets exactly below the limit, however sure", () => {
    fc.assert(
      fc.property(level, level, guard, (measured, limit, band) => {
        const words = locationVerdicts[locationVerdict(grams(measured), grams(limit), grams(band))];
        expect(words.startsWith("meets")).toBe(measured < limit);
      }),
    );
  });
  test("never gets better with a higher level", () => {
    const order = Object.keys(locationVerdicts);
    fc.assert(
      fc.property(level, fc.double({ min: 0, max: 60, noNaN: true }), level, guard, (measured, more, limit, band) => {
        const one = order.indexOf(locationVerdict(grams(measured), grams(limit), grams(band)));
        const higher = order.indexOf(locationVerdict(grams(measured + more), grams(limit), grams(band)));
        expect(higher).toBeGreaterThanOrEqual(one);
      }),
    );
  });
});

test("a field is as good as its worst location", () => {
  expect(fieldVerdict(["meets", "does-not-meet-within-uncertainty", "meets"])).toBe("does-not-meet-within-uncertainty");
  expect(fieldVerdict([])).toBe("nothing-tested");
});

describe("notes on a location", () => {
  const usual = statedRepeatability(grams(2));
  test("drops far apart", () =>
    expect(noteOnDrops(dropsOn(120, 130, 140), usual).map(explainLocationNote)).toEqual([
      "Drops 2 and 3 gave 130 g and 140 g, farther apart than the 5.6 g that drops on one spot usually keep to. Test the spot again.",
    ]));
  test("a level that goes on rising", () =>
    expect(noteOnDrops(dropsOn(120, 125, 130), usual).map(explainLocationNote)).toEqual([
      "The level rose from drop to drop, from 120 g to 130 g: the spot was still settling.",
    ]));
  test("nothing where drops agree, or where nobody knows how far they usually scatter", () => {
    expect(noteOnDrops(dropsOn(128, 130, 131), usual)).toEqual([]);
    expect(noteOnDrops(dropsOn(120, 130, 180), null)).toEqual([]);
  });
  test("a location that stands out", () => {
    const levels = [130, 131, 133, 129, 132, 171].map(grams);
    expect(levels.map((one) => noteOnLevel(one, levels)?.kind ?? "none")).toEqual([
      ...Array<string>(5).fill("none"),
      "far-from-others",
    ]);
    const note = noteOnLevel(grams(171), levels);
    expect(note === null ? "" : explainLocationNote(note)).toBe(
      "171 g is far higher than the other locations, whose median is 131.5 g. It counts all the same; look at the spot and at the infill depth there.",
    );
  });
  test("none of four locations, and none where all agree", () => {
    expect(noteOnLevel(grams(171), [130, 131, 133, 171].map(grams))).toBeNull();
    expect(noteOnLevel(grams(171), [130, 130, 130, 130, 130, 171].map(grams))).toBeNull();
  });
});

describe("pooledRepeatability", () => {
  test("takes out what all locations share", () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(level, level), { minLength: 4, maxLength: 12 }), level, (pairs, shift) => {
        const deviationOf = (by: number) =>
          pooledRepeatability(pairs.map(([second, third]) => dropsOn(100, second, third + by)))?.deviation ?? -1;
        expect(deviationOf(shift)).toBeCloseTo(deviationOf(0), 8);
      }),
    );
  });
  test("needs four locations", () =>
    expect(pooledRepeatability([1, 2, 3].map((by) => dropsOn(100, 120 + by, 121)))).toBeNull());
});

describe("reducedCampaign", () => {
  const reduced = reducedCampaign(campaignOf(eightLocations), below200, nothingKnown);

  test("gives every location its level, and the field mean, worst and verdict", () => {
    expect(reduced.locations.map((result) => formatFigure(result.level, "us"))).toEqual(
      ["133", "130", "134", "129", "130", "133", "129", "136"].map((one) => `${one} g`),
    );
    expect([reduced.mean, reduced.worst].map((figure) => formatFigure(figure, "us"))).toEqual(["132 g", "136 g"]);
    expect(reduced.verdict).toBe("meets");
  });

  test("says what the verdict rests on", () =>
    expect(reduced.statements).toEqual([
      "The field meets: of 8 locations tested on 2029-05-14, none is at or above 200.0 g (the contract, clause 7).",
      "A level is sure to 1.8 g on the side of the limit (95 %), by the scatter between drops 2 and 3 of 8 locations.",
      impactCaution,
    ]));

  test("is not saved by its mean from one hard location", () => {
    const hard = reducedCampaign(campaignOf([...eightLocations, ["190", "204", "206"]]), below200, {
      repeatability: statedRepeatability(grams(1)),
      equipment: null,
    });
    expect(hard.verdict).toBe("does-not-meet");
    expect(hard.statements[0]).toBe(
      "The field does not meet: of 9 locations tested on 2029-05-14, 1 is at or above 200.0 g (the contract, clause 7).",
    );
  });

  test("counts only locations with three drops", () => {
    const short = reducedCampaign(
      campaignOf([["118", "131", ""], ...eightLocations.slice(0, 2)]),
      below200,
      nothingKnown,
    );
    expect(short.locations[0]?.verdict).toBe("no-level");
    expect(short.locations[0]?.notes.map(explainLocationNote)).toEqual([
      "Fewer than three drops are noted, so the location has no level.",
    ]);
    const figure = short.locations[0]?.level;
    expect(figure?.kind === "unknown" ? explainShortfall(figure.because) : "").toBe(
      "This figure needs three drops on the location.",
    );
    expect(short.statements.slice(1, 3)).toEqual([
      "8 locations are asked for; 2 have a level.",
      "The measuring uncertainty is not known: fewer than 4 locations have three drops, and no repeatability is stated.",
    ]);
  });

  test("says so where nothing was tested", () => {
    const empty = reducedCampaign(campaignOf([]), below200, nothingKnown);
    expect(empty.verdict).toBe("nothing-tested");
    expect(empty.statements[0]).toBe(
      "The test of 2029-05-14 has no location with three drops, so nothing can be said.",
    );
  });

  const row = fc.tuple(level, level, level).map((drops) => drops.map((drop) => drop.toFixed(1)));
  const rows = fc.array(row, { minLength: 1, maxLength: 12 }) as fc.Arbitrary<[string, string, string][]>;

  test("does not depend on the order of the locations", () => {
    fc.assert(
      fc.property(rows, fc.infiniteStream(fc.nat()), (drops, keys) => {
        const input = campaignInput(drops);
        const order = [...input.locations].map((location) => ({ location, key: keys.next().value }));
        const shuffled = {
          ...input,
          locations: order.toSorted((a, b) => a.key - b.key).map(({ location }) => location),
        };
        const facts = (of: typeof input) => {
          const found = reducedCampaign(campaignOf([], { locations: of.locations }), below200, nothingKnown);
          const byId = found.locations.map(
            ({ location, verdict, notes }) => `${location.id} ${verdict} ${notes.length}`,
          );
          return { verdict: found.verdict, byId: byId.toSorted(), worst: formatFigure(found.worst, "us") };
        };
        expect(facts(shuffled)).toEqual(facts(input));
      }),
    );
  });

  test("does not depend on how the unit is written", () => {
    fc.assert(
      fc.property(rows, (drops) => {
        const verdicts = (unit: string) =>
          reducedCampaign(
            campaignOf(drops.map(([one, two, three]) => [one + unit, two + unit, three + unit] as const)),
            below200,
            nothingKnown,
          ).locations.map(({ verdict }) => verdict);
        expect(verdicts(" g")).toEqual(verdicts(""));
        expect(verdicts(" Gmax")).toEqual(verdicts(""));
      }),
    );
  });
});
