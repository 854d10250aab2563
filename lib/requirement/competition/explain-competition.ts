import { listed } from "#lib/figure";
import { type DimensionName, formatValue, measured, type UnitSystem } from "#lib/quantity";
import type { Competition, HowMany } from "./competition";
import type { KnownSystem, LimitClause, LimitMove } from "./model";
import type { Relaxation } from "./relaxations";

type Named = Readonly<{ clauses: readonly LimitClause[]; systems: readonly KnownSystem[] }>;

/** “3”, or “1 to 4” where not everything is known. */
export const howMany = ({ fewest, most }: HowMany): string => (fewest === most ? String(most) : `${fewest} to ${most}`);

const shown = (dimension: DimensionName, si: number, units: UnitSystem) =>
  formatValue(dimension, measured(dimension, si), units);

/** “moving the lower limit of pile height from 2.00 in to 1.75 in”. */
function moveInWords(move: LimitMove, clauses: readonly LimitClause[], units: UnitSystem): string {
  const clause = clauses.find(({ id }) => id === move.clause);
  if (clause === undefined) return "";
  const { label, dimension } = clause;
  const end = move.end === "low" ? "lower" : "upper";
  const past = move.past ? "just above " : "";
  return `moving the ${end} limit of “${label}” from ${shown(dimension, move.from, units)} to ${past}${shown(dimension, move.to, units)}`;
}

/** The moves of a relaxation in one phrase: “moving the lower limit of … from … to …”. */
export const relaxationInWords = ({ moves }: Relaxation, clauses: readonly LimitClause[], units: UnitSystem): string =>
  listed(moves.map((move) => moveInWords(move, clauses, units)));

function relaxationSentence(relaxation: Relaxation | undefined, named: Named, units: UnitSystem): readonly string[] {
  if (relaxation === undefined) return [];
  const moves = relaxationInWords(relaxation, named.clauses, units);
  const more = relaxation.admits.length === 1 ? "one more system" : `${relaxation.admits.length} more systems`;
  return [`The smallest move that lets ${more} in: ${moves}.`];
}

/** What the check says of the clauses, a sentence each, the most telling first. It speaks of the systems known only. */
export function competitionSentences(found: Competition, named: Named, units: UnitSystem): readonly string[] {
  const { clauses, systems } = named;
  if (systems.length === 0) return ["No system is known yet, so nothing can be said of competition."];
  const label = (id: string) => `“${clauses.find((clause) => clause.id === id)?.label ?? id}”`;
  const together = `Of ${systems.length} known systems, ${howMany(found.together)} could meet all clauses together.`;
  const most = found.clauses.find(({ clause }) => clause === found.removesMost[0]);
  const removes =
    most === undefined
      ? "No clause by itself removes a known system."
      : `${listed(found.removesMost.map(label))} ${found.removesMost.length === 1 ? "removes" : "each remove"} the most: ${most.removes.length}.`;
  const onlyOne = found.clauses
    .filter((clause) => clause.onlyOne !== null && systems.length > 1)
    .map(({ clause }) => `${label(clause)} leaves one known system. Give the reason for it in writing or widen it.`);
  return [
    together,
    removes,
    ...onlyOne,
    ...latticeSentence(found, label),
    ...relaxationSentence(found.oneMore[0], named, units),
    ...relaxationSentence(
      found.twoMore.find(({ admits }) => admits.join() !== found.oneMore[0]?.admits.join()),
      named,
      units,
    ),
  ];
}

function latticeSentence({ lattice }: Competition, label: (id: string) => string): readonly string[] {
  switch (lattice.kind) {
    case "none":
      return [];
    case "found": {
      const [first] = lattice.combinations;
      if (first === undefined) return [];
      if (lattice.smallest === 1)
        return [`${label(first.clauses[0] ?? "")} alone leaves fewer than three known systems.`];
      return [
        `It takes ${lattice.smallest} clauses together to leave fewer than three: for one, ${listed(first.clauses.map(label))}.`,
      ];
    }
    case "between":
      return [
        `Between ${lattice.atLeast} and ${lattice.atMost} clauses together leave fewer than three known systems.`,
      ];
  }
}
