import { coversOfSize } from "./covers";
import type { LimitClause, StandingMatrix } from "./model";
import { type SystemSet, sizeOf, systemSet } from "./system-set";

/** A combination of clauses that leaves fewer systems than wanted, while no part of it does. */
export type TightCombination = Readonly<{ clauses: readonly string[]; leaves: number }>;

/**
 * Which combinations leave fewer systems than wanted, counting only what is known to fail. `smallest` is the exact size
 * of the smallest such combination; `between` where the search was broken off, with what is sure.
 */
export type ClauseLattice = Readonly<
  | { kind: "none" }
  | {
      kind: "found";
      smallest: number;
      /** Minimal combinations of up to three clauses, or else of the smallest size; smaller ones first. */
      combinations: readonly TightCombination[];
      /** Up to which size the list holds every minimal combination; below `smallest` where even those are too many to list. */
      completeUpTo: number;
    }
  | { kind: "between"; atLeast: number; atMost: number; combination: TightCombination }
>;

const mostClauses = 60;
/** Up to this size every minimal combination is listed. */
const listedSize = 3;
/** Longest list of combinations. */
const mostListed = 400;
/** Combinations of one size, minimal or not, after which the search for more of them ends. */
const mostFound = 40_000;

const union = (sets: readonly SystemSet[]): SystemSet =>
  sets.reduce((all, { first, second }) => ({ first: all.first | first, second: all.second | second }), {
    first: 0,
    second: 0,
  });

/** A cover found by taking what adds most each time: an upper bound where the exact search gives up. */
function greedyCover(sets: readonly SystemSet[], needed: number): readonly number[] {
  const chosen: number[] = [];
  let covered: SystemSet = { first: 0, second: 0 };
  while (sizeOf(covered) < needed) {
    let [best, most] = [-1, sizeOf(covered)];
    for (const [index, set] of sets.entries()) {
      const size = sizeOf(union([covered, set]));
      if (size > most) [best, most] = [index, size];
    }
    const added = sets[best];
    if (added === undefined) break;
    covered = union([covered, added]);
    chosen.push(best);
  }
  return chosen;
}

/** Whether every member is needed: without any one of them enough would be left. */
const isMinimal = (sets: readonly SystemSet[], members: readonly number[], needed: number): boolean =>
  members.every(
    (_, left) =>
      sizeOf(union(members.filter((_, at) => at !== left).map((index) => sets[index] ?? { first: 0, second: 0 }))) <
      needed,
  );

/**
 * The lattice of clauses, from below: the union of what the clauses of a combination exclude has to reach all systems
 * but `enough` − 1. The smallest size is searched size by size, which is exact; beyond it minimal combinations are
 * listed up to three clauses, because their number doubles with every further clause.
 * @throws RangeError for more than 60 clauses or 60 systems
 */
export function clauseLattice(matrix: StandingMatrix, clauses: readonly LimitClause[], enough = 3): ClauseLattice {
  if (clauses.length > mostClauses) throw new RangeError(`at most ${mostClauses} clauses, got ${clauses.length}`);
  const systems = matrix[0]?.length ?? 0;
  const sets = matrix.map((row) => systemSet(row.map(({ kind }) => kind === "fails")));
  const spare = enough - 1;
  const needed = systems - spare;
  if (needed <= 0 || sizeOf(union(sets)) < needed) return { kind: "none" };
  const named = (members: readonly number[]): TightCombination => ({
    clauses: members.map((index) => clauses[index]?.id ?? ""),
    leaves: systems - sizeOf(union(members.map((index) => sets[index] ?? { first: 0, second: 0 }))),
  });
  const greedy = greedyCover(sets, needed);
  for (let size = 1; size <= greedy.length; size++) {
    const one =
      size < greedy.length ? coversOfSize(sets, systems, spare, size, 1) : { found: [greedy], isComplete: true };
    if (one.found.length > 0) return listed(sets, { systems, spare, needed }, size, named);
    if (!one.isComplete) return { kind: "between", atLeast: size, atMost: greedy.length, combination: named(greedy) };
  }
  return { kind: "none" };
}

type Task = Readonly<{ systems: number; spare: number; needed: number }>;

function listed(
  sets: readonly SystemSet[],
  { systems, spare, needed }: Task,
  smallest: number,
  named: (members: readonly number[]) => TightCombination,
): ClauseLattice {
  const combinations: TightCombination[] = [];
  let completeUpTo = smallest - 1;
  for (let size = smallest; size <= Math.max(smallest, listedSize); size++) {
    const { found, isComplete } = coversOfSize(sets, systems, spare, size, mostFound);
    const minimal = found
      .filter((members) => members.length === size && isMinimal(sets, members, needed))
      .toSorted(compareInOrder);
    const room = mostListed - combinations.length;
    combinations.push(...minimal.slice(0, room).map(named));
    if (!isComplete || minimal.length > room) break;
    completeUpTo = size;
  }
  return { kind: "found", smallest, combinations, completeUpTo };
}

function compareInOrder(one: readonly number[], other: readonly number[]): number {
  const at = one.findIndex((value, index) => value !== other[index]);
  return at === -1 ? 0 : (one[at] ?? 0) - (other[at] ?? 0);
}
