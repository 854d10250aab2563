"use client";
import { requirementsSchema } from "#lib/evaluation";
import { AutosaveForm } from "../../../../../_components/form/autosave-form";
import type { SharedDocument } from "../../../../../_components/form/shared-document";
import type { DocumentStart } from "../../../../../_components/form/start-of";
import { saveDocument } from "../../../_actions/save-document";
import { ClauseList } from "./clause-list";
import { type ClausesValues, filledClauses } from "./clause-values";
import { SubmittalFields } from "./submittal-fields";

/** Criteria, impact and weights of the same document are edited under Requirements. */
const shared: SharedDocument<ClausesValues> = {
  parts: ["clauses", "submittals"],
  filled: (body) => filledClauses(body as ClausesValues),
};

export function ClausesForm({
  project,
  start,
  previews,
  notes,
}: {
  project: string;
  start: DocumentStart<ClausesValues>;
  /** How each clause reads in the text as last saved, by criterion or else by clause. */
  previews: Readonly<Record<string, React.ReactNode>>;
  /** What the text leaves out, by criterion or else by clause. */
  notes: Readonly<Record<string, readonly string[]>>;
}) {
  return (
    <AutosaveForm schema={requirementsSchema} {...start} save={saveDocument} label="Clauses" shared={shared}>
      <section aria-labelledby="clauses">
        <h2 id="clauses">Clauses</h2>
        <p>
          Criteria and clauses are one set. What a criterion says, its limit above all, is changed under Requirements;
          here stands what a specification adds to it: method and edition, condition, tolerance, tests, remedy. Clauses
          that no criterion uses follow behind.
        </p>
        <ClauseList project={project} previews={previews} notes={notes} />
      </section>
      <section aria-labelledby="submittals">
        <h2 id="submittals">What else is to be handed in</h2>
        <p>
          Each clause says which reports and samples it wants. Ask for more only where a clause uses it: paper that
          nobody reads costs every bidder time.
        </p>
        <SubmittalFields />
      </section>
    </AutosaveForm>
  );
}
