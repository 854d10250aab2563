/** A top-up or grooming that takes back part of the change. */
export type Reset = Readonly<{
  /** Done at the end of this year, so the figure of the year itself is the one just before. */
  year: number;
  /** Share of the change gathered so far that it takes back: 0 nothing, 1 all of it. */
  undone: number;
}>;

/**
 * Years of change that are left after resets: the age at which a surface without resets is as far changed.
 * From `since` on the years count, and each reset in between takes its share off what has gathered until then; before
 * `since` the years count backwards, without resets.
 * @throws RangeError if a share does not lie between 0 and 1
 */
export function effectiveYears(year: number, resets: readonly Reset[], since = 0): number {
  let gathered = 0;
  let reached = since;
  for (const { year: at, undone } of inOrder(resets)) {
    if (!(undone >= 0 && undone <= 1)) throw new RangeError(`a reset undoes a share from 0 to 1, got ${undone}`);
    if (at <= since || at >= year) continue;
    gathered = (gathered + at - reached) * (1 - undone);
    reached = at;
  }
  return gathered + year - reached;
}

/** The same just after what is done at the end of that year; null where nothing is done then. */
export function effectiveYearsAfterReset(year: number, resets: readonly Reset[], since = 0): number | null {
  const done = resets.filter((reset) => reset.year === year && year > since);
  if (done.length === 0) return null;
  return done.reduce((left, { undone }) => left * (1 - undone), effectiveYears(year, resets, since));
}

const inOrder = (resets: readonly Reset[]): readonly Reset[] => resets.toSorted((one, other) => one.year - other.year);
