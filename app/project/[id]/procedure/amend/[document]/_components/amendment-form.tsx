"use client";
import type { FieldChange } from "#lib/procedure";
import { ActForm, ActNote } from "../../../../../../_components/act-form";
import { Scroller } from "../../../../../../_components/scroller";
import { recordAmendment } from "../../../actions";

/** What would change of what is frozen, and the reason that it is recorded with. */
export function AmendmentForm({
  project,
  document,
  version,
  changes,
}: {
  project: string;
  document: "requirements" | "brief";
  version: number;
  changes: readonly FieldChange[];
}) {
  return (
    <section aria-labelledby="amendment">
      <h2 id="amendment">The amendment</h2>
      {changes.length === 0 ? (
        <p>Nothing of what is frozen differs yet. Change something above; what changes is then listed here.</p>
      ) : (
        <Scroller label="What the amendment changes">
          <table>
            <caption className="visually-hidden">What the amendment changes</caption>
            <thead>
              <tr>
                <th scope="col">Entry</th>
                <th scope="col">Frozen</th>
                <th scope="col">Amended</th>
              </tr>
            </thead>
            <tbody>
              {changes.map(({ field, from, to }) => (
                <tr key={field}>
                  <th scope="row">{field}</th>
                  <td>{from}</td>
                  <td>{to}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </Scroller>
      )}
      <ActForm
        action={recordAmendment.bind(null, { project, document, version })}
        button="Record the amendment"
        label="Record the amendment"
        isPrimary
      >
        {(typed) => (
          <ActNote
            id="amendment-reason"
            label="Reason"
            hint="It stands beside the change on every later page and document, for bidders and the public to read."
            typed={typed.note}
            isRequired
          />
        )}
      </ActForm>
    </section>
  );
}
