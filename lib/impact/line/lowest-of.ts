/** Steps of the first look over the whole span, so that a second dip is not overlooked. */
const steps = 56;
const golden = (Math.sqrt(5) - 1) / 2;

/** Where a smooth function is lowest between two ends: a coarse look, then golden-section search in the best place. */
export function lowestOf(height: (at: number) => number, from: number, to: number): number {
  const step = (to - from) / steps;
  const places = Array.from({ length: steps + 1 }, (_, index) => from + index * step);
  const heights = places.map(height);
  const best = places[heights.indexOf(Math.min(...heights))] ?? from;
  let [low, high] = [Math.max(from, best - step), Math.min(to, best + step)];
  while (high - low > 1e-9) {
    const [left, right] = [high - golden * (high - low), low + golden * (high - low)];
    if (height(left) < height(right)) high = right;
    else low = left;
  }
  return (low + high) / 2;
}
