// Time for the clause lattice of 60 clauses and 60 systems: `npm run bench:competition`. Prints figures and judges nothing.
import { competition, type KnownSystem, type LimitClause } from "#lib/requirement";

/** The same draws in every run: a linear congruential generator. @source constants of Numerical Recipes, from memory */
function draws(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 1_664_525 + 1_013_904_223) % 2 ** 32;
    return state / 2 ** 32;
  };
}

const count = 60;
const ids = Array.from({ length: count }, (_, at) => String(at));
const clauses = ids.map((id): LimitClause => ({ id, label: id, dimension: "count", limit: null }));

/** Systems of which each clause removes a share, drawn at random; `strictest` clauses remove three times as many. */
function randomSystems(share: number, seed: number): readonly KnownSystem[] {
  const draw = draws(seed);
  return ids.map((id) => ({
    id,
    label: id,
    figures: Object.fromEntries(ids.map((clause) => [clause, { kind: "answer", meets: draw() >= share } as const])),
  }));
}

/** A ladder: clause n removes the systems from n on, as limits of one property at rising levels do. */
const ladder: readonly KnownSystem[] = ids.map((id, system) => ({
  id,
  label: id,
  figures: Object.fromEntries(
    ids.map((clause, level) => [clause, { kind: "answer", meets: system < 60 - level } as const]),
  ),
}));

/** Each clause removes a system of its own, so that only 58 together leave two. */
const oneEach: readonly KnownSystem[] = ids.map((id, system) => ({
  id,
  label: id,
  figures: Object.fromEntries(ids.map((clause, at) => [clause, { kind: "answer", meets: at !== system } as const])),
}));

const cases: readonly (readonly [string, readonly KnownSystem[]])[] = [
  ...[0.02, 0.05, 0.1, 0.15, 0.2, 0.3, 0.4, 0.5, 0.7].flatMap((share) =>
    [1, 2, 3].map((seed) => [`each removes ${share * 100} %, draw ${seed}`, randomSystems(share, seed)] as const),
  ),
  ["a ladder of limits", ladder],
  ["one system each", oneEach],
];

console.log(`Competition check of ${count} clauses and ${count} systems, slowest of 5 runs`);
for (const [name, systems] of cases) {
  const times = Array.from({ length: 5 }, () => {
    const start = performance.now();
    competition(clauses, systems);
    return performance.now() - start;
  });
  const { lattice } = competition(clauses, systems);
  const outcome =
    lattice.kind === "found"
      ? `smallest ${lattice.smallest}, ${lattice.combinations.length} listed, whole up to ${lattice.completeUpTo}`
      : lattice.kind === "between"
        ? `between ${lattice.atLeast} and ${lattice.atMost}`
        : "none";
  console.log(
    `  ${name.padEnd(28)} ${Math.max(...times)
      .toFixed(0)
      .padStart(6)} ms   ${outcome}`,
  );
}
