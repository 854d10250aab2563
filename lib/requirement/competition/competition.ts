import { type ClauseLattice, clauseLattice } from "./clause-lattice";
import type { KnownSystem, LimitClause, Standing, StandingMatrix } from "./model";
import { type Relaxation, relaxations } from "./relaxations";
import { standingMatrix } from "./standing";

/** Between how many systems could meet something: what is not known counts against them in `fewest` and for them in `most`. */
export type HowMany = Readonly<{ fewest: number; most: number }>;

/** One clause by itself. */
export type ClauseCompetition = Readonly<{
  clause: string;
  meets: HowMany;
  /** Systems that are known to fail it. */
  removes: readonly string[];
  /** Those of them that fail no other clause, so that this one alone keeps them out. */
  removesAlone: readonly string[];
  /** The one system that could meet it, where there is one only. */
  onlyOne: string | null;
}>;

/** What the clauses leave of the systems known. */
export type Competition = Readonly<{
  matrix: StandingMatrix;
  clauses: readonly ClauseCompetition[];
  together: HowMany;
  /** Systems that are known to fail nothing. */
  couldMeetAll: readonly string[];
  /** Clauses that remove the most systems; several where they remove as many. Empty where none removes any. */
  removesMost: readonly string[];
  /** Smallest moves that let at least one more in, and at least two more; smallest first. */
  oneMore: readonly Relaxation[];
  twoMore: readonly Relaxation[];
  lattice: ClauseLattice;
}>;

const fails = ({ kind }: Standing) => kind === "fails";
const meets = ({ kind }: Standing) => kind === "meets";

/**
 * Holds the clauses against the systems known to the project, each alone and all together. It speaks of these systems
 * only: the market may hold others, and a system that is not known to fail may still fail.
 * @param enough how many should be left; combinations that leave fewer are searched for
 * @throws RangeError for more than 60 clauses or 60 systems
 */
export function competition(clauses: readonly LimitClause[], systems: readonly KnownSystem[], enough = 3): Competition {
  const matrix = standingMatrix(clauses, systems);
  const failures = systems.map(
    (_, column) => matrix.filter((row) => row.some((cell, at) => at === column && fails(cell))).length,
  );
  const idsWhere = (wanted: (column: number) => boolean) =>
    systems.filter((_, column) => wanted(column)).map(({ id }) => id);
  const perClause = clauses.map(({ id }, index): ClauseCompetition => {
    const row = matrix[index] ?? [];
    const removed = (column: number) => row[column]?.kind === "fails";
    const couldMeet = idsWhere((column) => !removed(column));
    return {
      clause: id,
      meets: { fewest: row.filter(meets).length, most: couldMeet.length },
      removes: idsWhere(removed),
      removesAlone: idsWhere((column) => removed(column) && failures[column] === 1),
      onlyOne: couldMeet.length === 1 ? (couldMeet[0] ?? null) : null,
    };
  });
  const mostRemoved = Math.max(0, ...perClause.map(({ removes }) => removes.length));
  const couldMeetAll = idsWhere((column) => failures[column] === 0);
  return {
    matrix,
    clauses: perClause,
    together: {
      fewest: idsWhere((column) => matrix.every((row) => row[column]?.kind === "meets")).length,
      most: couldMeetAll.length,
    },
    couldMeetAll,
    removesMost: perClause
      .filter(({ removes }) => mostRemoved > 0 && removes.length === mostRemoved)
      .map(({ clause }) => clause),
    ...relaxations(matrix, clauses, systems),
    lattice: clauseLattice(matrix, clauses, enough),
  };
}
