// Published examples of weights and agreement, as in the cost-and-decision reference, sections 3.2, 3.3 and 3.7. Ids in
// brackets are those of its machine-readable twin.
import { describe, expect, test } from "vitest";
import {
  agreement,
  directWeights,
  type PairJudgement,
  pairwiseWeights,
  randomIndex,
  rankWeights,
  swingWeights,
  type WeightShares,
} from "#lib/criteria";

const sharesOf = (shares: WeightShares) => shares.map(({ share }) => share);
const close = (found: readonly number[], expected: readonly number[], digits: number) => {
  expect(found).toHaveLength(expected.length);
  for (const [at, value] of expected.entries()) expect(found[at]).toBeCloseTo(value, digits);
};
const ranksTo = (count: number) => Array.from({ length: count }, (_, at) => ({ criterion: `c${at}`, rank: at + 1 }));

describe("weights from ranks", () => {
  // Barron and Barrett, Management Science 42, 1996
  test("rank order centroid [ROC-2, ROC-4, ROC-7, ROC-10]", () => {
    close(sharesOf(rankWeights(ranksTo(2))), [0.75, 0.25], 6);
    close(sharesOf(rankWeights(ranksTo(4))), [0.520833, 0.270833, 0.145833, 0.0625], 6);
    close(sharesOf(rankWeights(ranksTo(7))), [0.370408, 0.227551, 0.156122, 0.108503, 0.072789, 0.044218, 0.020408], 6);
    close(
      sharesOf(rankWeights(ranksTo(10))),
      [0.292897, 0.192897, 0.142897, 0.109563, 0.084563, 0.064563, 0.047897, 0.033611, 0.021111, 0.01],
      6,
    );
  });
  test("ranks that are shared take the mean of their places [ROC-ties]", () => {
    const ranks = [1, 2, 2, 4].map((rank, at) => ({ criterion: `c${at}`, rank }));
    close(sharesOf(rankWeights(ranks)), [0.520833, 0.208333, 0.208333, 0.0625], 6);
  });
  // Stillwell, Seaver and Edwards 1981
  test("rank sum and reciprocal [RS-5, RR-3, RR-5]", () => {
    close(sharesOf(rankWeights(ranksTo(5), "sum")), [0.333333, 0.266667, 0.2, 0.133333, 0.066667], 6);
    close(sharesOf(rankWeights(ranksTo(3), "reciprocal")), [0.545455, 0.272727, 0.181818], 6);
    close(sharesOf(rankWeights(ranksTo(5), "reciprocal")), [0.437956, 0.218978, 0.145985, 0.109489, 0.087591], 6);
  });
});

describe("swing weights [swing]", () => {
  test("are points over their sum", () => {
    const swings = [100, 80, 60, 90, 40].map((points, at) => ({ criterion: `c${at}`, points }));
    const weighed = swingWeights(swings);
    close(
      weighed.kind === "weighed" ? sharesOf(weighed.shares) : [],
      [0.27027, 0.216216, 0.162162, 0.243243, 0.108108],
      6,
    );
    expect(weighed.kind === "weighed" && weighed.shares).toEqual(directWeights(swings));
  });
});

/** Judgements of all pairs of a table, from its upper half. */
const judgementsOf = (names: readonly string[], table: readonly (readonly number[])[]): readonly PairJudgement[] =>
  names.flatMap((first, row) =>
    names.slice(row + 1).map((second, at) => ({ first, second, times: table[row]?.[row + 1 + at] ?? Number.NaN })),
  );

describe("weights from pairs", () => {
  // Saaty, International Journal of Services Sciences 1(1), 2008, 83–98: which drink is consumed more
  test("reproduce the published table of seven drinks [AHP-saaty7, AHP-saaty7-CR]", () => {
    const names = ["coffee", "wine", "tea", "beer", "sodas", "milk", "water"];
    const table = [
      [1, 9, 5, 2, 1, 1, 1 / 2],
      [1 / 9, 1, 1 / 3, 1 / 9, 1 / 9, 1 / 9, 1 / 9],
      [1 / 5, 3, 1, 1 / 3, 1 / 4, 1 / 3, 1 / 9],
      [1 / 2, 9, 3, 1, 1 / 2, 1, 1 / 3],
      [1, 9, 4, 2, 1, 2, 1 / 2],
      [1, 9, 3, 1, 1 / 2, 1, 1 / 3],
      [2, 9, 9, 3, 2, 3, 1],
    ];
    const weighed = pairwiseWeights(names, judgementsOf(names, table));
    if (weighed.kind !== "weighed") throw new RangeError("a judgement is missing");
    for (const [at, share] of [0.177, 0.019, 0.042, 0.116, 0.19, 0.129, 0.327].entries())
      expect(Math.abs((weighed.shares[at]?.share ?? 0) - share)).toBeLessThan(0.0006);
    expect(weighed.greatest).toBeCloseTo(7.176629, 6);
    expect(weighed.consistencyRatio).toBeCloseTo(0.022302, 5);
  });
  test("agree with the closed form of three [AHP-3x3, AHP-3x3-lambda]", () => {
    const names = ["a", "b", "c"];
    const weighed = pairwiseWeights(
      names,
      judgementsOf(names, [
        [1, 3, 5],
        [1 / 3, 1, 3],
      ]),
    );
    if (weighed.kind !== "weighed") throw new RangeError("a judgement is missing");
    close(sharesOf(weighed.shares), [0.636986, 0.258285, 0.104729], 6);
    const t = 1.8 ** (1 / 3);
    expect(weighed.greatest).toBeCloseTo(1 + t + 1 / t, 12);
    expect(weighed.consistencyRatio).toBeCloseTo(0.033199, 6);
  });
  test("find no contradiction where there is none [AHP-consistent]", () => {
    const names = ["a", "b", "c"];
    const weighed = pairwiseWeights(
      names,
      judgementsOf(names, [
        [1, 5 / 3, 5 / 2],
        [1, 1, 3 / 2],
      ]),
    );
    if (weighed.kind !== "weighed") throw new RangeError("a judgement is missing");
    close(sharesOf(weighed.shares), [0.5, 0.3, 0.2], 12);
    expect(weighed.consistencyRatio).toBeCloseTo(0, 12);
    expect(weighed.least).toBeNull();
  });
  test("use the table of Saaty 1980 [AHP-RI]", () => {
    expect(randomIndex).toEqual([0, 0, 0.58, 0.9, 1.12, 1.24, 1.32, 1.41, 1.45, 1.49]);
  });
});

describe("agreement of evaluators", () => {
  const byRanks = (...rows: readonly (readonly number[])[]) =>
    agreement(rows.map((ranks, at) => ({ evaluator: `e${at}`, scores: ranks.map((rank) => -rank) })));
  test("Kendall's W of three evaluators and four bids [kendallW]", () => {
    const measured = byRanks([1, 2, 3, 4], [1, 3, 2, 4], [2, 1, 4, 3]);
    expect(measured.kind === "measured" && measured.concordance).toBeCloseTo(0.644444, 6);
    expect(measured.kind === "measured" && measured.meanCorrelation).toBeCloseTo(0.466667, 6);
    expect(measured.kind === "measured" && measured.meanRanks.map((rank) => rank * 3)).toEqual([4, 6, 9, 11]);
  });
  test("rank correlation with ties [spearman-ties]", () => {
    const measured = byRanks([1, 2, 2, 4, 5], [2, 1, 3, 3, 5]);
    expect(measured.kind === "measured" && measured.meanCorrelation).toBeCloseTo(0.763158, 6);
  });
  // SciPy 1.17.1: friedmanchisquare ÷ (m (n − 1)), which corrects for ties, and the mean of spearmanr over all pairs
  test("Kendall's W with ties, as SciPy has it", () => {
    const scores = [
      [8, 6, 6, 3],
      [9, 7, 5, 5],
      [6, 6, 8, 2],
      [7, 4, 6, 1],
    ];
    const measured = agreement(scores.map((row, at) => ({ evaluator: `e${at}`, scores: row })));
    expect(measured.kind === "measured" && measured.concordance).toBeCloseTo(0.6959459459459455, 12);
    expect(measured.kind === "measured" && measured.meanCorrelation).toBeCloseTo(0.5911546159085332, 12);
  });
});
