import { sameTotal } from "./model";

/** Bids by their one value on each criterion; a bid that is out is not listed. */
export type KnownBids = readonly Readonly<{ bid: string; values: readonly number[] }>[];

/** The part of all weights that one criterion may have, the others keeping their proportions, before the leader changes. */
export type CriterionRoom = Readonly<{ criterion: number; share: number; low: number; high: number }>;

export type LeadersRoom = Readonly<
  | { kind: "one-bid-or-none" }
  | { kind: "tied"; bids: readonly string[] }
  | { kind: "led"; leader: string; rooms: readonly CriterionRoom[] }
>;

const weighted = (values: readonly number[], shares: readonly number[]): number =>
  values.reduce((sum, value, at) => sum + value * (shares[at] ?? 0), 0);

/** Average value on all criteria but one, weighted by their shares. */
function restOf(values: readonly number[], shares: readonly number[], left: number): number {
  const rest = shares.map((share, at) => (at === left ? 0 : share));
  return weighted(values, rest) / rest.reduce((sum, share) => sum + share, 0);
}

/** A lead is a straight line over one share from 0 to 1; where it stays at or above 0, the leader leads. */
function roomAgainst(leader: readonly number[], rival: readonly number[], shares: readonly number[], at: number) {
  const leadAtNone = restOf(leader, shares, at) - restOf(rival, shares, at);
  const leadAtAll = (leader[at] ?? 0) - (rival[at] ?? 0);
  const crossing = leadAtNone / (leadAtNone - leadAtAll);
  return { low: leadAtNone < 0 ? crossing : 0, high: leadAtAll < 0 ? crossing : 1 };
}

/**
 * For each weighing criterion the exact room its weight has before one of the rivals passes the leader. A criterion that
 * carries all the weight is left out: nothing says how the others would share what it gives up.
 * @param shares the owner's weights, together 1
 * @source linear crossing of two weighted sums, derived
 */
export const weightRooms = (
  leader: readonly number[],
  rivals: readonly (readonly number[])[],
  shares: readonly number[],
): readonly CriterionRoom[] =>
  shares.flatMap((share, criterion) => {
    if (share === 0 || share === 1) return [];
    const against = rivals.map((rival) => roomAgainst(leader, rival, shares, criterion));
    const low = Math.max(...against.map((room) => room.low));
    return [{ criterion, share, low, high: Math.min(...against.map((room) => room.high)) }];
  });

/** Which bid leads at the owner's weights, and the room each weight has before another does. */
export function leadersRoom(bids: KnownBids, shares: readonly number[]): LeadersRoom {
  const placed = bids
    .map((bid) => ({ ...bid, total: weighted(bid.values, shares) }))
    .toSorted((one, other) => other.total - one.total);
  const [leader, ...rivals] = placed;
  if (leader === undefined || rivals.length === 0) return { kind: "one-bid-or-none" };
  const tied = rivals.filter(({ total }) => Math.abs(leader.total - total) <= sameTotal);
  if (tied.length > 0) return { kind: "tied", bids: [leader, ...tied].map(({ bid }) => bid) };
  const rooms = weightRooms(
    leader.values,
    rivals.map(({ values }) => values),
    shares,
  );
  return { kind: "led", leader: leader.bid, rooms };
}
