// Tables of the cost-and-decision reference, sections 3.2 and 3.7. Ids in brackets are those of its machine-readable twin.
import { describe, expect, test } from "vitest";
import { agreement, rankWeights } from "#lib/criteria";

/** Rank order centroid (Barron and Barrett 1996) and rank sum (Stillwell, Seaver and Edwards 1981), as printed. */
const printed: Readonly<Record<number, readonly [centroid: readonly number[], sum: readonly number[]]>> = {
  2: [
    [0.75, 0.25],
    [0.6667, 0.3333],
  ],
  3: [
    [0.6111, 0.2778, 0.1111],
    [0.5, 0.3333, 0.1667],
  ],
  4: [
    [0.5208, 0.2708, 0.1458, 0.0625],
    [0.4, 0.3, 0.2, 0.1],
  ],
  5: [
    [0.4567, 0.2567, 0.1567, 0.09, 0.04],
    [0.3333, 0.2667, 0.2, 0.1333, 0.0667],
  ],
  6: [
    [0.4083, 0.2417, 0.1583, 0.1028, 0.0611, 0.0278],
    [0.2857, 0.2381, 0.1905, 0.1429, 0.0952, 0.0476],
  ],
  7: [
    [0.3704, 0.2276, 0.1561, 0.1085, 0.0728, 0.0442, 0.0204],
    [0.25, 0.2143, 0.1786, 0.1429, 0.1071, 0.0714, 0.0357],
  ],
  8: [
    [0.3397, 0.2147, 0.1522, 0.1106, 0.0793, 0.0543, 0.0335, 0.0156],
    [0.2222, 0.1944, 0.1667, 0.1389, 0.1111, 0.0833, 0.0556, 0.0278],
  ],
  9: [
    [0.3143, 0.2032, 0.1477, 0.1106, 0.0828, 0.0606, 0.0421, 0.0262, 0.0123],
    [0.2, 0.1778, 0.1556, 0.1333, 0.1111, 0.0889, 0.0667, 0.0444, 0.0222],
  ],
  10: [
    [0.2929, 0.1929, 0.1429, 0.1096, 0.0846, 0.0646, 0.0479, 0.0336, 0.0211, 0.01],
    [0.1818, 0.1636, 0.1455, 0.1273, 0.1091, 0.0909, 0.0727, 0.0545, 0.0364, 0.0182],
  ],
};

describe("weights from ranks [ROC-2 to ROC-10, RS-2 to RS-10]", () => {
  test.each(Object.entries(printed))("of %s criteria", (count, [centroid, sum]) => {
    const ranks = Array.from({ length: Number(count) }, (_, at) => ({ criterion: `c${at}`, rank: at + 1 }));
    for (const [method, expected] of [
      ["centroid", centroid],
      ["sum", sum],
    ] as const) {
      const found = rankWeights(ranks, method).map(({ share }) => share);
      expect(found).toHaveLength(expected.length);
      for (const [at, weight] of expected.entries()) expect(found[at], `${method} ${at + 1}`).toBeCloseTo(weight, 4);
    }
  });
});

describe("rank correlation of two evaluators", () => {
  const correlation = (...rows: readonly (readonly number[])[]) => {
    const measured = agreement(rows.map((ranks, at) => ({ evaluator: `e${at}`, scores: ranks.map((rank) => -rank) })));
    return measured.kind === "measured" ? measured.meanCorrelation : null;
  };
  test("without ties [spearman-12, spearman-23]", () => {
    expect(correlation([1, 2, 3, 4], [1, 3, 2, 4])).toBeCloseTo(0.8, 6);
    expect(correlation([1, 3, 2, 4], [2, 1, 4, 3])).toBeCloseTo(0, 6);
  });
});
