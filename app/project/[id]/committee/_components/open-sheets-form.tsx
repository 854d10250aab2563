"use client";
import { ActForm } from "../../../../_components/act-form";
import { openAllSheets } from "../actions";

/** Opens the sheets, once and together. */
export function OpenSheetsForm({ project }: { project: string }) {
  return (
    <ActForm
      action={openAllSheets.bind(null, project)}
      button="Open the scoresheets"
      label="Open the scoresheets"
      isPrimary
    >
      {() => <p>All of them are opened at once, for everybody to read. None can be changed afterwards.</p>}
    </ActForm>
  );
}
