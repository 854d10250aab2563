import type { CostSwings } from "#lib/cost";

/** What an uncertain figure does to a cost at its two ends, in cents more or less than as entered. */
export type SwingBar = Readonly<{ input: string; label: string; low: number; high: number }>;

/** The figures that move a bid's cost by a cent or more, the widest first. */
export const swingBars = ({ cents, swings }: CostSwings): readonly SwingBar[] =>
  swings
    .filter(({ swing }) => swing > 0.5)
    .map(({ input, label, low, high }) => ({ input, label, low: low.cents - cents, high: high.cents - cents }));

/** The most and the least that any figure does to any bid, so that the drawings of all bids share one scale. */
export function swingEnds(all: readonly CostSwings[]): readonly [number, number] {
  const ends = all.flatMap(swingBars).flatMap(({ low, high }) => [low, high]);
  return [Math.min(0, ...ends), Math.max(0, ...ends)];
}

/** What moves a bid most, in a sentence. */
export function swingWords(swings: CostSwings, letter: string, money: (cents: number) => string): string {
  const [first, second] = swingBars(swings);
  if (first === undefined) return `None of the figures above moves the cost of bid ${letter}.`;
  const span = ({ low, high }: SwingBar) => money(Math.abs(high - low));
  const next = second === undefined ? "" : `, then “${second.label}” by ${span(second)}`;
  return `“${first.label}” moves the cost of bid ${letter} most, by ${span(first)} between its two ends${next}.`;
}
