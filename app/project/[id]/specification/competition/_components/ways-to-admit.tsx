import Link from "next/link";
import type { CompetitionSetting } from "#lib/evaluation";
import { listed } from "#lib/figure";
import type { UnitSystem } from "#lib/quantity";
import { type Competition, type Relaxation, relaxationInWords } from "#lib/requirement";
import { capitalised } from "../../../../../_components/in-words";

type Ways = Readonly<{
  setting: CompetitionSetting;
  units: UnitSystem;
  /** Where the limit of a clause is changed. */
  limitAt: (clause: string) => string;
}>;

function WayList({ ways, setting, units, limitAt }: Ways & { ways: readonly Relaxation[] }) {
  const name = (id: string) => setting.systems.find((system) => system.id === id)?.label ?? id;
  const label = (id: string) => setting.clauses.find((clause) => clause.id === id)?.label ?? id;
  return (
    <ul>
      {ways.map((way) => {
        const words = relaxationInWords(way, setting.clauses, units);
        const clauses = [...new Set(way.moves.map(({ clause }) => clause))];
        return (
          <li key={words}>
            {capitalised(words)}. Lets in: {listed(way.admits.map(name))}.{" "}
            {clauses.map((clause) => (
              <span key={clause} className="screen-only">
                <Link href={limitAt(clause)} prefetch={false}>
                  Limit of {label(clause)}
                </Link>{" "}
              </span>
            ))}
          </li>
        );
      })}
    </ul>
  );
}

/** The smallest moves of limits that let one or two more systems in. A move is shown, never made. */
export function WaysToAdmit({ found, ...ways }: Ways & { found: Competition }) {
  const { oneMore, twoMore } = found;
  if (oneMore.length === 0)
    return <p>No move of one or two limits lets another known system in, or none is kept out by limits.</p>;
  return (
    <>
      <h3>One more system</h3>
      <WayList ways={oneMore} {...ways} />
      {twoMore.length === 0 ? null : (
        <>
          <h3>Two more systems</h3>
          <WayList ways={twoMore} {...ways} />
        </>
      )}
      <p className="soft">
        A move is given where it changes the limits of at most two clauses; smaller means a smaller share of the limit.
        Whether a limit can be moved is the owner’s to decide: where it stands for safety, competition is no reason.
      </p>
    </>
  );
}
