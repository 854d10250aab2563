"use client";
import { useState } from "react";
import type { SharedDocument } from "../../../../../_components/form/shared-document";
import type { DocumentStart } from "../../../../../_components/form/start-of";
import { SpecificationForm } from "../../_components/specification-form";
import { filledSpecification, type SpecificationValues } from "../../_components/specification-values";
import { askedOf, type SystemQuestions } from "./asked-of";
import { BidAnswers } from "./bid-answers";
import type { OtherProjects } from "./other-projects";
import { SystemFields } from "./system-fields";

/** Systems that the owner knows of beside the bids, and what bids answer to clauses in words. */
export function SystemsForm({
  start,
  questions,
  others,
  project,
}: {
  start: DocumentStart<SpecificationValues>;
  questions: SystemQuestions;
  others: OtherProjects;
  project: string;
}) {
  const [shared] = useState(
    (): SharedDocument<SpecificationValues> => ({
      parts: ["systems", "bidAnswers"],
      filled: (body) => filledSpecification(body as SpecificationValues, askedOf(questions)),
    }),
  );
  return (
    <SpecificationForm start={start} shared={shared} label="Systems known">
      <section aria-labelledby="systems">
        <h2 id="systems">Systems known beside the bids</h2>
        <p>
          Before bids are in, the check is worth as much as the systems it knows. Enter what earlier bids and data open
          to the public say, each with its source. Give neutral labels, such as “Sand and cork, 20 mm shock layer”.
        </p>
        <SystemFields questions={questions} others={others} project={project} />
      </section>
      {questions.clauses.length === 0 || questions.bids.length === 0 ? null : (
        <section aria-labelledby="answers">
          <h2 id="answers">Bids on clauses in words</h2>
          <p>No figure tells whether a bid does what a clause asks in words. Say so where you know.</p>
          <BidAnswers questions={questions} />
        </section>
      )}
    </SpecificationForm>
  );
}
