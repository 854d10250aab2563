import { sharesOf, type WeightShares } from "./model";

/** How many times as important the first criterion is as the second, on Saaty's scale from 1/9 to 9. */
export type PairJudgement = Readonly<{ first: string; second: string; times: number }>;

/** Mean consistency index of random judgements for 1 to 10 criteria. @source Saaty 1980, from memory; later tables differ in the second place */
export const randomIndex = [0, 0, 0.58, 0.9, 1.12, 1.24, 1.32, 1.41, 1.45, 1.49] as const;

/** Above this the judgements contradict each other too much to be used as they are. @source Saaty 1980, from memory */
export const consistentUpTo = 0.1;

/** The judgement that is furthest from what all others together say, and what they say. */
export type LeastConsistent = Readonly<{ judgement: PairJudgement; othersSay: number }>;

export type PairwiseWeights = Readonly<
  | {
      kind: "weighed";
      shares: WeightShares;
      /** Greatest eigenvalue of the judgements; the number of criteria where nothing contradicts. */
      greatest: number;
      /** 0 where nothing contradicts; null below 3 criteria, where nothing can, and beyond 10, where no table goes. */
      consistencyRatio: number | null;
      /** null where no judgement differs from what the others say. */
      least: LeastConsistent | null;
    }
  | { kind: "missing"; pairs: readonly (readonly [string, string])[] }
>;

/** Turns of the power iteration: far more than any table of judgements takes. */
const mostTurns = 10_000;

/** @source power iteration; a table of positive numbers has one greatest eigenvalue with a positive vector (Perron) */
function greatestEigenvector(
  table: readonly (readonly number[])[],
): Readonly<{ vector: readonly number[]; value: number }> {
  let vector = table.map(() => 1 / table.length);
  let value = table.length;
  for (let turn = 0; turn < mostTurns; turn += 1) {
    const next = table.map((row) => row.reduce((sum, times, at) => sum + times * (vector[at] ?? 0), 0));
    value = next.reduce((sum, one) => sum + one, 0);
    const scaled = next.map((one) => one / value);
    const moved = Math.max(...scaled.map((one, at) => Math.abs(one - (vector[at] ?? 0))));
    vector = scaled;
    if (moved < 1e-15) break;
  }
  return { vector, value };
}

/**
 * Weights from judgements of pairs, with how far they contradict each other.
 * @param judgements one for each pair, in either direction; the last one counts where a pair comes twice
 * @source principal eigenvector and consistency ratio: Saaty, International Journal of Services Sciences 1(1), 2008
 */
export function pairwiseWeights(criteria: readonly string[], judgements: readonly PairJudgement[]): PairwiseWeights {
  const between = (one: string, other: string): number | undefined => {
    if (one === other) return 1;
    const found = judgements.findLast(
      ({ first, second }) => (first === one && second === other) || (first === other && second === one),
    );
    if (found === undefined) return undefined;
    return found.first === one ? found.times : 1 / found.times;
  };
  const missing = criteria.flatMap((one, at) =>
    criteria.slice(at + 1).flatMap((other) => (between(one, other) === undefined ? [[one, other] as const] : [])),
  );
  if (missing.length > 0) return { kind: "missing", pairs: missing };
  const table = criteria.map((one) => criteria.map((other) => between(one, other) ?? 1));
  const { vector, value } = greatestEigenvector(table);
  const count = criteria.length;
  const index = randomIndex[count - 1];
  const ratio = count < 3 || index === undefined ? null : Math.max(0, (value - count) / (count - 1)) / index;
  return {
    kind: "weighed",
    shares: sharesOf(criteria.map((criterion, at) => ({ criterion, weight: vector[at] ?? 0 }))),
    greatest: value,
    consistencyRatio: ratio,
    least: leastConsistent(criteria, table, judgements),
  };
}

/**
 * For each judgement, what the others say: the geometric mean of its ways round by each third criterion.
 * @source a consistent table has a(i,j) = a(i,k) × a(k,j), derived
 */
function leastConsistent(
  criteria: readonly string[],
  table: readonly (readonly number[])[],
  judgements: readonly PairJudgement[],
): LeastConsistent | null {
  const at = (one: number, other: number) => table[one]?.[other] ?? 1;
  let furthest: LeastConsistent | null = null;
  let most = 1e-9;
  for (const judgement of judgements) {
    const [one, other] = [criteria.indexOf(judgement.first), criteria.indexOf(judgement.second)];
    const thirds = criteria.flatMap((_, third) => (third === one || third === other ? [] : [third]));
    if (thirds.length === 0 || one < 0 || other < 0) continue;
    const logs = thirds.map((third) => Math.log(at(one, third) * at(third, other)));
    const othersSay = Math.exp(logs.reduce((sum, log) => sum + log, 0) / logs.length);
    const apart = Math.abs(Math.log(judgement.times / othersSay));
    if (apart > most + 1e-12) {
      most = apart;
      furthest = { judgement, othersSay };
    }
  }
  return furthest;
}

const timesText = (times: number): string => {
  const shown = Number((times >= 1 ? times : 1 / times).toPrecision(2));
  return `${shown} ${shown === 1 ? "time" : "times"}`;
};

/** Who is more important and by how much: "“Impact” is 3 times as important as “Heat”". */
function judgementText(first: string, second: string, times: number): string {
  if (Number(times.toPrecision(2)) === 1) return `“${first}” and “${second}” are equally important`;
  return times > 1
    ? `“${first}” is ${timesText(times)} as important as “${second}”`
    : `“${second}” is ${timesText(times)} as important as “${first}”`;
}

/** How well the judgements fit together, and which one to look at first, in plain words. */
export function explainConsistency(weighed: PairwiseWeights, nameOf: (criterion: string) => string): string {
  if (weighed.kind === "missing") {
    const [[one, other] = ["", ""]] = weighed.pairs;
    const more = weighed.pairs.length > 1 ? ` and ${weighed.pairs.length - 1} more` : "";
    return `Not every pair is judged yet: “${nameOf(one)}” against “${nameOf(other)}”${more}.`;
  }
  const { consistencyRatio, least } = weighed;
  if (consistencyRatio === null)
    return weighed.shares.length < 3
      ? "With fewer than three criteria judgements can’t contradict each other."
      : "For more than ten criteria no table says how much contradiction is too much. Judge them in groups.";
  if (least === null || consistencyRatio < 5e-4) return "The judgements fit together exactly.";
  const { judgement, othersSay } = least;
  const [first, second] = [nameOf(judgement.first), nameOf(judgement.second)];
  const said = `You said that ${judgementText(first, second, judgement.times)}; your other judgements together say that ${judgementText(first, second, othersSay)}.`;
  const ratio = Number(consistencyRatio.toPrecision(2));
  const isConsistent = consistencyRatio <= consistentUpTo;
  const fit = isConsistent ? "fit together well enough" : "contradict each other";
  return `The judgements ${fit} (ratio ${ratio}, at most ${consistentUpTo} is wanted). ${leadIn(weighed.shares.length, isConsistent)} ${said}`;
}

/** Three judgements of three criteria are all equally far from what the other two say, so none of them stands out. */
function leadIn(criteria: number, isConsistent: boolean): string {
  if (criteria === 3) return "Of three judgements each is equally far from the other two, this one for instance:";
  return isConsistent ? "The one that fits least:" : "Look at this one first:";
}
