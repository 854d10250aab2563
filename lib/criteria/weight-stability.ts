import { weightRooms } from "#lib/robustness";
import type { BidScore, Criterion } from "./model";
import { inContention, isTied, placingValue } from "./ranking";

/** The part of all weights that a criterion may have, the others keeping their proportions, before the leader changes. */
export type WeightRoom = Readonly<{ criterion: Criterion; share: number; low: number; high: number }>;

export type WeightStability = Readonly<
  | { kind: "one-bid-or-none" }
  | { kind: "tied"; bids: readonly string[] }
  | { kind: "led"; leader: string; rooms: readonly WeightRoom[] }
>;

/**
 * For each weighing criterion the exact room its weight has before another bid comes first. A criterion that carries
 * all the weight is left out: nothing says how the others would share what it gives up.
 * @param scores all bids on the same criteria in the same order; those failing a gate are left aside
 * @source linear crossing of two weighted sums, derived
 */
export function weightStability(scores: readonly BidScore[]): WeightStability {
  const [leader, ...rivals] = inContention(scores);
  if (leader === undefined || rivals.length === 0) return { kind: "one-bid-or-none" };
  const tied = rivals.filter((rival) => isTied(leader, rival));
  if (tied.length > 0) return { kind: "tied", bids: [leader, ...tied].map(({ bid }) => bid) };
  const valuesOf = ({ criteria }: BidScore) => leader.criteria.map((_, index) => placingValue(criteria[index]));
  const shares = leader.criteria.map(({ share }) => share);
  const rooms = weightRooms(valuesOf(leader), rivals.map(valuesOf), shares).flatMap(({ criterion: at, ...room }) => {
    const criterion = leader.criteria[at]?.criterion;
    return criterion === undefined ? [] : [{ criterion, ...room }];
  });
  return { kind: "led", leader: leader.bid, rooms };
}

const percent = (share: number) => `${Number((share * 100).toPrecision(3))} %`;

/** The nearest way to lose the lead: how far which weight would have to move. */
function nearestTurn(rooms: readonly WeightRoom[]) {
  const turns = rooms.flatMap(({ criterion, share, low, high }) => [
    ...(low > 0 ? [{ criterion, share, to: low, move: "falls" }] : []),
    ...(high < 1 ? [{ criterion, share, to: high, move: "rises" }] : []),
  ]);
  return turns.sort((a, b) => Math.abs(a.to - a.share) - Math.abs(b.to - b.share))[0];
}

/** One sentence on how firm the lead is as far as the weights go. `nameOf` gives a bid's name for people. */
export function explainStability(stability: WeightStability, nameOf: (bid: string) => string): string {
  switch (stability.kind) {
    case "one-bid-or-none":
      return "There are not two bids to compare, so the weights decide nothing.";
    case "tied":
      return `${stability.bids.map(nameOf).join(" and ")} are tied on the figures shown, so any change of a weight may put one of them first.`;
    case "led": {
      const name = nameOf(stability.leader);
      if (stability.rooms.length === 0)
        return `On the figures shown, ${name} comes first on the one criterion that carries weight.`;
      const turn = nearestTurn(stability.rooms);
      if (turn === undefined) return `On the figures shown, ${name} stays first however far any one weight is moved.`;
      return `On the figures shown, ${name} stays first until the weight of “${turn.criterion.label}” ${turn.move} from ${percent(turn.share)} to ${percent(turn.to)} of all weights.`;
    }
  }
}
