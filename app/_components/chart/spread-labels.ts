/** Where labels may stand along one axis. */
export type Room = Readonly<{ from: number; to: number }>;

const everywhere: Room = { from: Number.NEGATIVE_INFINITY, to: Number.POSITIVE_INFINITY };

type Block = { sum: number; count: number };

const meanOf = ({ sum, count }: Block) => sum / count;

/** The rising numbers nearest to the given ones: neighbours that fall are pooled to their mean. */
function risingFit(numbers: readonly number[]): readonly number[] {
  const blocks: Block[] = [];
  for (const number of numbers) {
    let block: Block = { sum: number, count: 1 };
    for (let before = blocks.at(-1); before !== undefined && meanOf(before) > meanOf(block); before = blocks.at(-1)) {
      blocks.pop();
      block = { sum: before.sum + block.sum, count: before.count + block.count };
    }
    blocks.push(block);
  }
  return blocks.flatMap((block) => Array.from({ length: block.count }, () => meanOf(block)));
}

/**
 * Moves labels apart so that none covers another, keeping their order and the sum of squared moves least.
 * @param wanted middles of the labels along one axis
 * @param size of a label along that axis, one for all or one each
 * @param room for the first and the last middle; where it is too small the labels run over its end
 * @returns middles in the order of `wanted`
 */
export function spreadLabels(
  wanted: readonly number[],
  size: number | readonly number[],
  room: Room = everywhere,
): readonly number[] {
  const order = wanted.map((position, index) => ({ position, index })).sort((a, b) => a.position - b.position);
  const sizeOf = (index: number) => (typeof size === "number" ? size : (size[index] ?? 0));
  const offsets: number[] = [];
  for (const [place, { index }] of order.entries()) {
    const before = order[place - 1];
    offsets.push(before === undefined ? 0 : (offsets[place - 1] ?? 0) + (sizeOf(before.index) + sizeOf(index)) / 2);
  }
  const fit = risingFit(order.map(({ position }, place) => position - (offsets[place] ?? 0)));
  const latest = room.to - (offsets.at(-1) ?? 0);
  const placed: number[] = [];
  for (const [place, { index }] of order.entries()) {
    placed[index] = Math.max(room.from, Math.min(latest, fit[place] ?? 0)) + (offsets[place] ?? 0);
  }
  return placed;
}
