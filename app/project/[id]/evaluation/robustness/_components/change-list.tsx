import type { SingleChange } from "#lib/evaluation";
import { changeWords, nearestWords, type Shown, sortedChanges } from "./change-words";

/** What would have to be otherwise, any one of these alone; the smallest of each kind first. */
export function ChangeList({
  changes,
  shown,
  level,
  of,
}: {
  changes: readonly SingleChange[];
  shown: Shown;
  /** What a change makes level, for the sentence above the list. */
  level: string;
  of: string;
}) {
  const { smallest, others } = sortedChanges(changes);
  if (smallest.length === 0) return <p>{nearestWords(changes)}</p>;
  return (
    <>
      <p>Any one of these alone would make {level}:</p>
      <ul>
        {smallest.map(({ changed, need }) => (
          <li key={need.lever.id}>{changeWords(changed, need, shown)}</li>
        ))}
      </ul>
      {others.length === 0 ? null : (
        <details>
          <summary>
            {others.length} more {others.length === 1 ? "change" : "changes"} that would be enough alone
            <span className="visually-hidden"> for {of}</span>
          </summary>
          <ul>
            {others.map(({ changed, need }) => (
              <li key={`${need.lever.id} ${need.lever.furthest}`}>{changeWords(changed, need, shown)}</li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}
