import type { KnownBids } from "./weight-room";

/** The exact share of all weights that put a bid first, and the middle of those weights; null where there are none. */
export type ExactFirst = Readonly<{ bid: string; share: number; centralWeights: readonly number[] | null }>;

type Point = readonly [number, number];
/** At or above 0 on the side that is kept. */
type Side = (point: Point) => number;

/** Cuts a polygon along a straight line. @source Sutherland and Hodgman, Communications of the ACM 17(1), 1974 */
function cut(corners: readonly Point[], side: Side): readonly Point[] {
  return corners.flatMap((corner, at) => {
    const next = corners[(at + 1) % corners.length] ?? corner;
    const [here, there] = [side(corner), side(next)];
    const kept = here >= 0 ? [corner] : [];
    if (here >= 0 === there >= 0) return kept;
    const t = here / (here - there);
    const crossing: Point = [corner[0] + t * (next[0] - corner[0]), corner[1] + t * (next[1] - corner[1])];
    return [...kept, crossing];
  });
}

/** Area and centre of a polygon. @source shoelace formula */
function areaAndCentre(corners: readonly Point[]): Readonly<{ area: number; centre: Point }> {
  let [area, x, y] = [0, 0, 0];
  for (const [at, [x0, y0]] of corners.entries()) {
    const [x1, y1] = corners[(at + 1) % corners.length] ?? [x0, y0];
    const cross = x0 * y1 - x1 * y0;
    area += cross / 2;
    x += ((x0 + x1) * cross) / 6;
    y += ((y0 + y1) * cross) / 6;
  }
  return { area: Math.abs(area), centre: [x / area, y / area] };
}

const weightsAt = ([first, second]: Point): readonly [number, number, number] => [first, second, 1 - first - second];

/**
 * Without any drawing: the exact share of weights on two or three criteria that put each bid first, and their centre.
 * Bids that tie on a whole region are each given it; nothing is shared out.
 * @param order whether only weights count that fall from the first criterion to the last
 * @throws RangeError for another number of criteria
 * @source the weights that favour a bid are a piece of a line or of a triangle, cut by one straight side per rival
 */
export function exactAcceptability(bids: KnownBids, order: "any" | "falling" = "any"): readonly ExactFirst[] {
  const criteria = bids[0]?.values.length ?? 2;
  if (bids.some(({ values }) => values.length !== criteria) || (criteria !== 2 && criteria !== 3))
    throw new RangeError(`exact shares are known for 2 or 3 criteria, got ${criteria}`);
  return criteria === 2 ? onTwo(bids, order) : onThree(bids, order);
}

function onTwo(bids: KnownBids, order: "any" | "falling"): readonly ExactFirst[] {
  const least = order === "falling" ? 0.5 : 0;
  return bids.map(({ bid, values: [first = 0, second = 0] }) => {
    let [low, high] = [least, 1];
    for (const {
      values: [rivalFirst = 0, rivalSecond = 0],
    } of bids) {
      // lead over the first share w: atNone + w × slope
      const atNone = second - rivalSecond;
      const slope = first - rivalFirst - atNone;
      if (slope > 0) low = Math.max(low, -atNone / slope);
      else if (slope < 0) high = Math.min(high, -atNone / slope);
      else if (atNone < 0) high = low;
    }
    const share = Math.max(0, high - low) / (1 - least);
    const middle = (low + high) / 2;
    return { bid, share, centralWeights: share > 0 ? [middle, 1 - middle] : null };
  });
}

function onThree(bids: KnownBids, order: "any" | "falling"): readonly ExactFirst[] {
  const all: readonly Point[] =
    order === "falling"
      ? [
          [1, 0],
          [0.5, 0.5],
          [1 / 3, 1 / 3],
        ]
      : [
          [1, 0],
          [0, 1],
          [0, 0],
        ];
  const whole = areaAndCentre(all).area;
  return bids.map(({ bid, values }) => {
    const favouring = bids.reduce<readonly Point[]>((corners, { values: rival }) => {
      const leads = values.map((value, at) => value - (rival[at] ?? 0));
      return cut(corners, (point) => weightsAt(point).reduce((sum, weight, at) => sum + weight * (leads[at] ?? 0), 0));
    }, all);
    const { area, centre } = areaAndCentre(favouring);
    const share = favouring.length < 3 ? 0 : area / whole;
    return { bid, share, centralWeights: share > 0 ? weightsAt(centre) : null };
  });
}
