/** Pairs of neighbouring letters or digits in lower case. */
function letterPairs(text: string): ReadonlySet<string> {
  const letters = text.toLowerCase().replace(/[^\p{L}\p{N}]/gu, "");
  return new Set(Array.from({ length: Math.max(0, letters.length - 1) }, (_, at) => letters.slice(at, at + 2)));
}

/** Shared letter pairs over all letter pairs, 0…1. @source Dice coefficient */
function likeness(left: ReadonlySet<string>, right: ReadonlySet<string>): number {
  if (left.size + right.size === 0) return 0;
  const shared = [...left].filter((pair) => right.has(pair)).length;
  return (2 * shared) / (left.size + right.size);
}

/** Up to three candidates that are written like the text, the most alike first; none where nothing comes near. */
export function nearest(text: string, candidates: readonly string[]): readonly string[] {
  const pairs = letterPairs(text.slice(0, 200));
  return candidates
    .map((candidate) => ({ candidate, alike: likeness(pairs, letterPairs(candidate)) }))
    .filter(({ alike }) => alike >= 0.3)
    .sort((one, other) => other.alike - one.alike)
    .slice(0, 3)
    .map(({ candidate }) => candidate);
}
