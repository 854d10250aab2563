import type { KnownSystem, LimitClause, LimitMove, StandingMatrix } from "./model";

/** Limits of one or two clauses moved, and the systems that are then no longer known to fail anything. */
export type Relaxation = Readonly<{ moves: readonly LimitMove[]; admits: readonly string[]; share: number }>;

/** Most clauses whose limits are moved at once. */
const mostClauses = 2;
/** How many ways are told of each kind. */
const told = 5;

type Barred = Readonly<{ id: string; moves: readonly LimitMove[] }>;

/** Systems that failed limits of at most two clauses keep out, with the moves that each needs. */
function barredSystems(matrix: StandingMatrix, systems: readonly KnownSystem[]): readonly Barred[] {
  return systems.flatMap(({ id }, column) => {
    const failed = matrix.flatMap((row) => {
      const cell = row[column];
      return cell?.kind === "fails" ? [cell.relaxation] : [];
    });
    const moves = failed.filter((move) => move !== null);
    return failed.length > 0 && failed.length <= mostClauses && moves.length === failed.length ? [{ id, moves }] : [];
  });
}

const farther = (one: LimitMove, other: LimitMove) => (one.share >= other.share ? one : other);

/** The moves that do for all: the farther one where two move the same end of a limit. */
function jointly(all: readonly LimitMove[]): readonly LimitMove[] {
  const byEnd = new Map<string, LimitMove>();
  for (const move of all) {
    const key = `${move.clause} ${move.end}`;
    const known = byEnd.get(key);
    byEnd.set(key, known === undefined ? move : farther(known, move));
  }
  return [...byEnd.values()];
}

const isEnough = (made: readonly LimitMove[], needed: LimitMove) =>
  made.some(({ clause, end, share }) => clause === needed.clause && end === needed.end && share >= needed.share);

function relaxationOf(moves: readonly LimitMove[], barred: readonly Barred[], order: readonly string[]): Relaxation {
  return {
    moves: moves.toSorted((one, other) => order.indexOf(one.clause) - order.indexOf(other.clause)),
    admits: barred.filter((system) => system.moves.every((needed) => isEnough(moves, needed))).map(({ id }) => id),
    share: moves.reduce((sum, { share }) => sum + share, 0),
  };
}

const clausesOf = (moves: readonly LimitMove[]) => new Set(moves.map(({ clause }) => clause)).size;

const keyOf = ({ moves }: Relaxation) => moves.map(({ clause, end, to }) => `${clause} ${end} ${to}`).join(", ");

const smallestFirst = (found: readonly Relaxation[]): readonly Relaxation[] =>
  [...new Map(found.map((relaxation) => [keyOf(relaxation), relaxation])).values()]
    .toSorted((one, other) => one.share - other.share || one.moves.length - other.moves.length)
    .slice(0, told);

/**
 * The smallest moves of the limits of one or two clauses that let at least one, and at least two, more systems in. Only
 * the systems' own figures can be new limits of a smallest move, and who is let in decides how far each limit has to go,
 * so trying every system and every pair of them is the whole search.
 */
export function relaxations(matrix: StandingMatrix, clauses: readonly LimitClause[], systems: readonly KnownSystem[]) {
  const order = clauses.map(({ id }) => id);
  const barred = barredSystems(matrix, systems);
  const single = barred.map(({ moves }) => relaxationOf(moves, barred, order));
  const double = barred.flatMap((one, index) =>
    barred.slice(index + 1).flatMap((other) => {
      const moves = jointly([...one.moves, ...other.moves]);
      return clausesOf(moves) <= mostClauses ? [relaxationOf(moves, barred, order)] : [];
    }),
  );
  return { oneMore: smallestFirst(single), twoMore: smallestFirst(double) };
}
