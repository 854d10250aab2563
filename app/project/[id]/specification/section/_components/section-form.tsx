"use client";
import { type BlankId, type ChoiceId, sectionBlanks, sectionChoices } from "#lib/requirement";
import { CheckField } from "../../../../../_components/form/check-field";
import type { SharedDocument } from "../../../../../_components/form/shared-document";
import type { DocumentStart } from "../../../../../_components/form/start-of";
import { TextField } from "../../../../../_components/form/text-field";
import { TextListField } from "../../../../../_components/form/text-list-field";
import { SpecificationForm } from "../../_components/specification-form";
import { filledSpecification, type SpecificationValues } from "../../_components/specification-values";
import styles from "./section-form.module.css";

const shared: SharedDocument<SpecificationValues> = {
  parts: ["number", "related", "choices", "filledIn"],
  filled: (body) => filledSpecification(body as SpecificationValues),
};

const choices = Object.entries(sectionChoices) as [ChoiceId, (typeof sectionChoices)[ChoiceId]][];
const blanks = Object.entries(sectionBlanks) as [BlankId, (typeof sectionBlanks)[BlankId]][];

/** The owner’s choices for the section, and what the text leaves to the owner. */
export function SectionForm({
  start,
  openBlanks,
}: {
  start: DocumentStart<SpecificationValues>;
  /** Blanks that stand in the text as it is now. */
  openBlanks: readonly BlankId[];
}) {
  return (
    <SpecificationForm start={start} shared={shared} label="Choices and blanks">
      <section aria-labelledby="choices">
        <h2 id="choices">Clauses switched on or off</h2>
        <p>Each stands ready in the text. What is ticked is given out; every choice says what speaks for it.</p>
        <div className={styles.choices}>
          {choices.map(([id, { label, why }]) => (
            <CheckField key={id} name={`choices.${id}`} label={label} hint={why} />
          ))}
        </div>
      </section>
      <section aria-labelledby="blanks">
        <h2 id="blanks">Blanks</h2>
        <p>
          What is empty here stands in the text as “to be filled in”. Write it as it is to be read, with its unit. What
          is usual is common practice without a source.
        </p>
        <div className={styles.blanks}>
          {blanks.map(([id, { label, usual }]) => (
            <TextField key={id} name={`filledIn.${id}`} label={label} hint={hintOf(usual, openBlanks.includes(id))} />
          ))}
        </div>
      </section>
      <section aria-labelledby="place">
        <h2 id="place">Place in the project manual</h2>
        <TextField
          name="number"
          label="Number of the section"
          hint="Check it against the edition of the numbering format that the project uses."
          className={styles.short}
        />
        <TextListField
          name="related"
          label="Sections in which neighbouring work stands"
          hint="Each as it is to be read. Only those that the project manual has."
          entry={(index) => `Related section ${index + 1}`}
        />
      </section>
    </SpecificationForm>
  );
}

function hintOf(usual: string, isOpen: boolean): string {
  const parts = [usual === "" ? "" : `Usual: ${usual}.`, isOpen ? "Open in the text as last saved." : ""];
  return parts.filter((part) => part !== "").join(" ");
}
