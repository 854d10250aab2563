import { placingValue } from "#lib/criteria";
import type { BidEvaluation, Evaluation } from "../model";
import { weighingScores } from "./comparison";
import { isCostCriterion, type LevelledCost, levelledCost } from "./cost-criteria";

/**
 * How a bid stands to the efficient set: those bids of which none has at least as many points for no more money.
 * `not-settled` where a cost that is only known as "at least" would decide it; `out` where a gate is failed.
 */
export type EfficientStanding = "in" | "not-in" | "not-settled" | "out";

/** One bid in the plane of points and money. */
export type ValuedBid = Readonly<{
  bid: string;
  /** What it is worth without its cost, 0 to 1: the other criteria in their proportions. */
  points: number;
  /** The same with open figures at their worst and at their best. */
  least: number;
  most: number;
  cost: LevelledCost;
  efficient: EfficientStanding;
  /** A bid that has at least as many points for no more money, where one has. */
  beatenBy: string | null;
}>;

type Placed = Omit<ValuedBid, "efficient" | "beatenBy"> & Readonly<{ isOut: boolean }>;

const cents = ({ cost }: Placed): number | null => (cost.kind === "not-known" ? null : cost.cents);

/** Whether one has at least as many points for no more money, and more of either. Costs as given, "at least" as its least. */
function beats(one: Placed, other: Placed): boolean {
  const [mine, theirs] = [cents(one), cents(other)];
  if (mine === null || theirs === null || one.isOut) return false;
  return mine <= theirs && one.points >= other.points && (mine < theirs || one.points > other.points);
}

function placed({ id, score }: BidEvaluation, cost: LevelledCost): Placed | null {
  const others = weighingScores(score).filter(({ criterion }) => !isCostCriterion(criterion));
  const whole = others.reduce((sum, { share }) => sum + share, 0);
  if (!(whole > 0)) return null;
  const part = (read: (one: (typeof others)[number]) => number) =>
    others.reduce((sum, one) => sum + one.share * read(one), 0) / whole;
  return {
    ...{ bid: id, cost, isOut: score.standing === "fails a gate" },
    points: part(placingValue),
    least: part(({ value }) => value?.low ?? 0),
    most: part(({ value }) => value?.high ?? 0),
  };
}

/**
 * Points without cost beside levelled cost, bid by bid, and which of them are efficient. On the figures shown: open
 * figures may still move a bid up or down.
 * @returns an empty list where nothing but cost carries weight
 * @source Pareto efficiency; a cost known as "at least" excludes nobody for certain, derived
 */
export function valueForMoney({ bids }: Evaluation): readonly ValuedBid[] {
  const all = bids.flatMap((bid) => placed(bid, levelledCost(bid)) ?? []);
  return all.map((one) => {
    const { isOut, ...valued } = one;
    const beating = all.filter((other) => other !== one && beats(other, one));
    const certain = beating.find(({ cost }) => cost.kind === "known");
    const isOpen = one.cost.kind !== "known" || beating.length > 0;
    const efficient = isOut ? "out" : certain !== undefined ? "not-in" : isOpen ? "not-settled" : "in";
    return { ...valued, efficient, beatenBy: certain?.bid ?? beating[0]?.bid ?? null };
  });
}
