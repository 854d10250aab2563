import { listed } from "#lib/figure";
import type { ClauseLattice } from "#lib/requirement";

/** Longest list of combinations that is shown. */
const mostShown = 20;

/** Which clauses together leave fewer than three known systems, while no part of them does. */
export function TightCombinations({ lattice, label }: { lattice: ClauseLattice; label: (clause: string) => string }) {
  const names = (clauses: readonly string[]) => listed(clauses.map((clause) => `“${label(clause)}”`));
  switch (lattice.kind) {
    case "none":
      return <p>No combination of clauses leaves fewer than three known systems.</p>;
    case "between":
      return (
        <p>
          Between {lattice.atLeast} and {lattice.atMost} clauses together leave fewer than three, for one{" "}
          {names(lattice.combination.clauses)}. The exact number was not searched to its end.
        </p>
      );
    case "found":
      return (
        <>
          <p>
            {lattice.smallest === 1
              ? "A single clause is enough to leave fewer than three:"
              : `It takes ${lattice.smallest} clauses together:`}
          </p>
          <ul>
            {lattice.combinations.slice(0, mostShown).map(({ clauses, leaves }) => (
              <li key={clauses.join()}>
                {names(clauses)}: {leaves === 0 ? "none is left" : `${leaves} ${leaves === 1 ? "is" : "are"} left`}
              </li>
            ))}
          </ul>
          {lattice.combinations.length > mostShown ? (
            <p className="soft">And {lattice.combinations.length - mostShown} more.</p>
          ) : null}
        </>
      );
  }
}
