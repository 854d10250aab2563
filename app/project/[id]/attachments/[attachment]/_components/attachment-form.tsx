"use client";
import { type AttachmentText, documentSchemas } from "#lib/evaluation";
import { AutosaveForm } from "../../../../../_components/form/autosave-form";
import { LongTextField } from "../../../../../_components/form/long-text-field";
import type { DocumentAddress } from "../../../../../_components/form/save-outcome";
import type { Draft } from "../../../../../_components/form/start-of";
import { TextField } from "../../../../../_components/form/text-field";
import { saveDocument } from "../../../_actions/save-document";

/** What people say of a file; name, kind and hash are settled when it comes in. */
export function AttachmentForm({
  where,
  version,
  values,
  draft,
}: {
  where: DocumentAddress;
  version: number;
  values: AttachmentText;
  draft: Draft<AttachmentText> | null;
}) {
  return (
    <AutosaveForm
      schema={documentSchemas.attachment}
      where={where}
      version={version}
      values={values}
      draft={draft}
      save={saveDocument}
      label="Attachment"
    >
      <TextField
        name="title"
        label="What the document is called"
        hint="As bids, reports and submittals name it, such as “Test report 14”. What names it so opens this file."
      />
      <LongTextField name="note" label="Note" rows={2} />
    </AutosaveForm>
  );
}
