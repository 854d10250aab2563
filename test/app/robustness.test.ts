import { describe, expect, test } from "vitest";
import { type Evaluation, evaluate, projectFileSchema, singleChanges, valueForMoney } from "#lib/evaluation";
import { type Comparison, rankAcceptability } from "#lib/robustness";
import { type DrawingProgress, drawnToEnd } from "#lib/sampling";
import demonstration from "../../app/_demo/demonstration-project.json";
import {
  changeWords,
  nearestWords,
  sortedChanges,
} from "../../app/project/[id]/evaluation/robustness/_components/change-words";
import { choiceWords, ofHundred, rankWords } from "../../app/project/[id]/evaluation/robustness/_components/rank-words";
import { dominanceWords, leadWords } from "../../app/project/[id]/evaluation/robustness/_components/sure-words";
import { valueWords } from "../../app/project/[id]/evaluation/robustness/_components/value-words";
import { drawnRanks } from "../../app/project/[id]/evaluation/robustness/_drawing/drawn-ranks";
import {
  answerRankOrder,
  type RankDrawingOrder,
} from "../../app/project/[id]/evaluation/robustness/_drawing/rank-order";

const letterOf = (bid: string) => bid.toUpperCase();
const known = (value: number) => ({ kind: "known", value }) as const;
// cost-and-decision reference, 3.5: a comes first over 3/7 of all weights, b over 4/7
const comparison: Comparison = {
  criteria: ["one", "two"],
  shares: [0.5, 0.5],
  bids: [
    { bid: "a", standing: "in", values: [known(1), known(0)] },
    { bid: "b", standing: "in", values: [known(0.4), known(0.8)] },
    { bid: "c", standing: "in", values: [known(0), known(0)] },
  ],
};
const order: RankDrawingOrder = {
  comparison,
  questions: [
    { weights: { kind: "any" }, seed: 1, draws: 20_000 },
    { weights: { kind: "near-owners", concentration: 40 }, seed: 1, draws: 20_000 },
  ],
};
const directly = order.questions.map((question) => drawnToEnd(rankAcceptability(comparison, question)));

/** A worker that does its work here, over copies of what is sent, as a browser's worker does. */
class WorkerHere extends EventTarget {
  ended = false;
  #tell(data: unknown): void {
    if (!this.ended) this.dispatchEvent(Object.assign(new Event("message"), { data: structuredClone(data) }));
  }
  postMessage(sent: unknown): void {
    answerRankOrder(structuredClone(sent) as RankDrawingOrder, (progress) =>
      this.#tell({ kind: "progress", progress }),
    ).then(
      (outcome) => this.#tell({ kind: "done", outcome }),
      (problem: Error) => this.#tell({ kind: "failed", message: problem.message }),
    );
  }
  terminate(): void {
    this.ended = true;
  }
}
const asWorker = (worker: WorkerHere) => () => worker as unknown as Worker;

describe("drawnRanks", () => {
  test("gives the same without a worker, with one, and by a script, and tells how far it is", async () => {
    const worker = new WorkerHere();
    const told: DrawingProgress[] = [];
    const tell = (progress: DrawingProgress) => told.push(progress);
    expect(await drawnRanks(order, { tell, signal: null }, asWorker(worker))).toEqual(directly);
    expect(worker.ended).toBe(true);
    expect(told.at(-1)).toEqual({ done: 40_000, of: 40_000 });
    expect(told.every(({ done }, at) => done > (told[at - 1]?.done ?? 0))).toBe(true);
    expect(await drawnRanks(order, { tell: () => {}, signal: null }, null)).toEqual(directly);
  });

  test("ends the worker where it is cancelled, and where it fails", async () => {
    const worker = new WorkerHere();
    const control = new AbortController();
    const tell = () => control.abort(new Error("enough"));
    await expect(drawnRanks(order, { tell, signal: control.signal }, asWorker(worker))).rejects.toThrow("enough");
    expect(worker.ended).toBe(true);
    await expect(drawnRanks(order, { tell, signal: control.signal }, null)).rejects.toThrow("enough");
    const amiss = { ...order, comparison: { ...comparison, shares: [1] } };
    const failing = new WorkerHere();
    await expect(drawnRanks(amiss, { tell: () => {}, signal: null }, asWorker(failing))).rejects.toThrow(/2 shares/);
    expect(failing.ended).toBe(true);
  });
});

describe("words of ranks", () => {
  test("say how often which bid comes first and how far chance may move that", () => {
    const [any, near] = directly;
    if (any === undefined || near === undefined) throw new RangeError("two outcomes");
    // 4/7 are 57 of 100; √(4/7 × 3/7 ÷ 20,000) is 0.35 of 100
    expect(rankWords(any, letterOf)).toBe(
      "In 57 of 100 sets of weights bid B comes first (standard error 0.35 of 100); bid A in 43 of 100 and bid C in none.",
    );
    expect(ofHundred(0.999)).toBe("more than 99 of 100");
    expect(ofHundred(0.001)).toBe("fewer than 1 of 100");
    expect([ofHundred(0), ofHundred(1)]).toEqual(["none", "all"]);
  });

  test("say in plain figures how near the owner's weights are tried", () => {
    // √(0.25 × 0.75 ÷ 41) is 0.068
    expect(choiceWords({ kind: "near-owners", concentration: 40 }, { label: "Heat", share: 0.25 })).toBe(
      "Weights near the owner’s own: in two of three sets “Heat”, now 25 %, weighs from 18 % to 32 %, and the others move likewise (concentration 40).",
    );
  });

  test("say what holds without any drawing", () => {
    expect(leadWords(comparison, letterOf)).toBe(
      "With the owner’s weights, bid B stays first whatever the open claims and the ranges turn out to be.",
    );
    expect(dominanceWords(comparison, letterOf)).toEqual([
      "Bid A is at least as good as bid C on every criterion, so no weights can turn that.",
      "Bid B is at least as good as bid C on every criterion, so no weights can turn that.",
    ]);
  });
});

describe("words of changes and of money in the demonstration", () => {
  const project = projectFileSchema.parse(demonstration);
  const evaluation: Evaluation = evaluate(project);
  const shown = { units: "us", currency: "USD" } as const;
  const others = (id: string) => evaluation.ranking.places.map(({ bid }) => bid).filter((bid) => bid !== id);
  const letter = (id: string) => evaluation.bids.find((bid) => bid.id === id)?.letter ?? id;

  test("name the figure, the price and the weight that would make a bid level with the first", () => {
    const { smallest } = sortedChanges(singleChanges(project, evaluation, "bid-a", others("bid-a")));
    expect(smallest.map(({ changed, need }) => changeWords(changed, need, shown))).toEqual([
      "“Critical fall height” would have to be at least about 4.1 ft, with the proof asked for; nothing that counts is shown now.",
      "The weight of “Infill mass per area” would have to rise from 10 % to 18.5 % of all weights, the others keeping their proportions.",
    ]);
  });

  test("say how near a bid gets where nothing is enough alone", () => {
    expect(nearestWords(singleChanges(project, evaluation, "bid-b", others("bid-b")))).toMatch(
      /^No single change of a figure, the price or a weight is enough\. .+ would still leave it [\d.]+ points behind\.$/,
    );
  });

  test("state the price by what it would have to come down", () => {
    const lever = { id: "price", label: "", kind: "price", from: 100_000_000, furthest: 0, leadAt: () => 0 } as const;
    expect(
      changeWords({ kind: "price", cents: 100_000_000 }, { lever, kind: "takes", at: 91_500_000, part: 0.085 }, shown),
    ).toBe("The price at the base date would have to be about $85,000 lower: $915,000, not $1,000,000.");
  });

  test("say which bids give the most for their money, and name none as the right one", () => {
    const words = valueWords(valueForMoney(evaluation), letter);
    expect(words).toContain(
      "Bid A and bid C: no other bid has as many points for as little money on the figures shown.",
    );
    expect(words).not.toMatch(/\b(best|winner|recommend|should)\b/i);
  });
});
