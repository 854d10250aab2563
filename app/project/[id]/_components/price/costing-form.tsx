"use client";
import { costingSchema } from "#lib/cost";
import type { CostingText } from "#lib/evaluation";
import { AutosaveForm } from "../../../../_components/form/autosave-form";
import { saveDocument } from "../../_actions/save-document";
import type { CostingStart } from "./costing-start";

/** A form over part of the owner's side of the money; the rest of the document travels with it untouched. */
export function CostingForm<Values extends CostingText>({
  start,
  label,
  children,
}: {
  start: CostingStart<Values>;
  label: string;
  children: React.ReactNode;
}) {
  return (
    <AutosaveForm schema={costingSchema} {...start} save={saveDocument} label={label}>
      {children}
    </AutosaveForm>
  );
}
