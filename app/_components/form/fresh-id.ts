/** An id for a new entry: the stem itself, or with the first number that makes it one of its own. */
export function freshId(stem: string, taken: readonly string[]): string {
  const used = new Set(taken);
  let number = 1;
  while (used.has(`${stem}-${number}`)) number += 1;
  return used.has(stem) ? `${stem}-${number}` : stem;
}
