"use client";
import type { SharedDocument } from "../../../../../_components/form/shared-document";
import type { DocumentStart } from "../../../../../_components/form/start-of";
import { TextListField } from "../../../../../_components/form/text-list-field";
import { SpecificationForm } from "../../_components/specification-form";
import { filledSpecification, type SpecificationValues } from "../../_components/specification-values";

const shared: SharedDocument<SpecificationValues> = {
  parts: ["names"],
  filled: (body) => filledSpecification(body as SpecificationValues),
};

/** The owner’s own list of names. */
export function NamesForm({ start }: { start: DocumentStart<SpecificationValues> }) {
  return (
    <SpecificationForm start={start} shared={shared} label="The owner’s list of names">
      <TextListField
        name="names"
        label="Names that no text may hold"
        hint="Makers, products, slogans and persons, however they are written. Several lines can be pasted at once."
        entry={(index) => `Name ${index + 1}`}
      />
    </SpecificationForm>
  );
}
