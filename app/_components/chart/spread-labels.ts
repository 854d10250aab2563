/**
 * Moves labels apart so that none covers another, keeping their order and moving each as little as a single pass can.
 * @param wanted positions along one axis
 * @param gap least distance between two labels
 * @returns positions in the order of `wanted`
 */
export function spreadLabels(wanted: readonly number[], gap: number): readonly number[] {
  const order = wanted.map((position, index) => ({ position, index })).sort((a, b) => a.position - b.position);
  const placed: number[] = [];
  let last = Number.NEGATIVE_INFINITY;
  for (const { position, index } of order) {
    last = Math.max(position, last + gap);
    placed[index] = last;
  }
  return placed;
}
