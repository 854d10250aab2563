import { dayOf, hasReached, type Procedure, stageOf, stages } from "#lib/procedure";
import { capitalised } from "../../../../_components/in-words";
import { Scroller } from "../../../../_components/scroller";
import styles from "./stage-table.module.css";

type NamedBid = Readonly<{ id: string; words: string }>;

/** The stages in their order: what each fixes, and when and by whom it was reached. */
export function StageTable({ procedure, bids }: { procedure: Procedure; bids: readonly NamedBid[] }) {
  const now = stageOf(procedure);
  const bidOf = (id: string) => bids.find((bid) => bid.id === id)?.words ?? "";
  return (
    <Scroller label="Stages">
      <table className={styles.stages}>
        <caption className="visually-hidden">Stages of the project</caption>
        <thead>
          <tr>
            <th scope="col">Stage</th>
            <th scope="col">What it means</th>
            <th scope="col">Reached</th>
          </tr>
        </thead>
        <tbody>
          {stages.map(({ id, label, meaning }) => {
            const steps = procedure.steps.filter(({ stage }) => stage === id);
            return (
              <tr key={id} {...(id === now ? { "aria-current": "step" as const, className: styles.now } : {})}>
                <th scope="row">
                  {capitalised(label)}
                  {id === now ? <span className={styles.here}>the project is here</span> : null}
                </th>
                <td>{meaning}</td>
                <td>
                  {steps.length === 0 ? (hasReached(now, id) ? "from the start" : "not yet") : null}
                  {steps.map(({ at, by, note, accepted, bid }) => (
                    <div key={at}>
                      {dayOf(at)}, by {by.name}
                      {bid === "" ? null : <p>{bidOf(bid)}</p>}
                      {note === "" ? null : <p>{note}</p>}
                      {accepted.length === 0 ? null : (
                        <details className="printed-open">
                          <summary>What was seen then</summary>
                          <ul>
                            {accepted.map((sentence) => (
                              <li key={sentence}>{sentence}</li>
                            ))}
                          </ul>
                        </details>
                      )}
                    </div>
                  ))}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </Scroller>
  );
}
