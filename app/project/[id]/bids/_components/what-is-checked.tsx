import { rules } from "#lib/crosscheck";
import { Scroller } from "../../../../_components/scroller";

/** Every rule that each bid is held against, so that anyone can see that all bids are read alike. */
export function WhatIsChecked() {
  return (
    <section aria-labelledby="checked">
      <h2 id="checked">What every bid is held against</h2>
      <p>
        The same {rules.length} checks run over every bid, by letter and not by name. A check speaks only where both
        sides of it are given, and a finding is a question, not a verdict.
      </p>
      <details>
        <summary>The checks, with their tolerances</summary>
        <Scroller label="Checks of a bid against itself">
          <table>
            <caption className="visually-hidden">Checks of a bid against itself</caption>
            <thead>
              <tr>
                <th scope="col">What would be found</th>
                <th scope="col">What is held against what</th>
                <th scope="col">Tolerance</th>
              </tr>
            </thead>
            <tbody>
              {rules.map(({ id, title, holds, tolerance }) => (
                <tr key={id}>
                  <th scope="row">{title}</th>
                  <td>{holds}</td>
                  <td>{tolerance}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </Scroller>
      </details>
    </section>
  );
}
