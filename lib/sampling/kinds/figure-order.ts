import type { WrittenFigure } from "../model";

const numbers = ["no figure", "one figure", "two figures", "three figures"] as const;

const read = (figures: readonly WrittenFigure[]) => `“${figures.map(({ text }) => text).join(" / ")}”`;

/** Says that there are too few or too many figures. */
export function countProblem(
  figures: readonly WrittenFigure[],
  expected: 1 | 2 | 3,
  { written, example }: Readonly<{ written: string; example: string }>,
): string {
  const found = numbers[figures.length] ?? `${figures.length} figures`;
  const asked = expected === 1 ? written : `${numbers[expected]}: ${written}`;
  return `${read(figures)} has ${found}; expected ${asked}, for example “${example}”.`;
}

/** Says which two neighbours stand in the wrong order; null where all rise or stay. */
export function orderProblem(figures: readonly WrittenFigure[], names: readonly [string, ...string[]]): string | null {
  for (const [index, figure] of figures.entries()) {
    const next = figures[index + 1];
    if (next === undefined || figure.value <= next.value) continue;
    return `The ${names[index]} reads “${figure.text}”, the ${names[index + 1]} “${next.text}”; expected the ${names[index + 1]} to be at least as high.`;
  }
  return null;
}
