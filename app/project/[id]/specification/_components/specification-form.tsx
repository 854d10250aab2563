"use client";
import { sectionSettingsSchema } from "#lib/evaluation";
import { AutosaveForm } from "../../../../_components/form/autosave-form";
import type { SharedDocument } from "../../../../_components/form/shared-document";
import type { DocumentStart } from "../../../../_components/form/start-of";
import { saveDocument } from "../../_actions/save-document";
import type { SpecificationValues } from "./specification-values";

/** A form over part of what the owner decides about the section; other pages edit the rest. */
export function SpecificationForm({
  start,
  shared,
  label,
  children,
}: {
  start: DocumentStart<SpecificationValues>;
  /** It must not change while the page is open. */
  shared: SharedDocument<SpecificationValues>;
  label: string;
  children: React.ReactNode;
}) {
  return (
    <AutosaveForm schema={sectionSettingsSchema} {...start} save={saveDocument} label={label} shared={shared}>
      {children}
    </AutosaveForm>
  );
}
