import type { OutlookYear } from "#lib/impact";

/** Years in a row that the bid's own levels reach, or that lie beyond them. */
export type OutlookRun<Year = OutlookYear> = Readonly<{ extrapolated: boolean; years: readonly Year[] }>;

/**
 * Cuts an outlook where it leaves the ages for which the bid gives levels. A stretch between two years counts as
 * extrapolated if either of them is; neighbouring runs share the year where they meet, so that no gap is drawn.
 */
export function outlookRuns<Year extends Readonly<{ extrapolated: boolean }>>(
  years: readonly Year[],
): readonly OutlookRun<Year>[] {
  const runs: { extrapolated: boolean; years: Year[] }[] = [];
  for (const [place, year] of years.entries()) {
    const before = years[place - 1];
    if (before === undefined) continue;
    const extrapolated = before.extrapolated || year.extrapolated;
    const last = runs.at(-1);
    if (last?.extrapolated === extrapolated) last.years.push(year);
    else runs.push({ extrapolated, years: [before, year] });
  }
  return runs;
}
