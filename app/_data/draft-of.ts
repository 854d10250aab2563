import type { DocumentAddress } from "../_components/form/save-outcome";
import type { Draft } from "../_components/form/start-of";
import { currentEditor } from "./editor";
import { projectStore } from "./store";

/** This editor's unsaved text of a document. The form that wrote it is the one that reads it, so its shape is the form's. */
export async function draftOf<Values>(where: DocumentAddress): Promise<Draft<Values> | null> {
  const draft = await (await projectStore()).drafts.read(where, await currentEditor());
  return draft && { basedOn: draft.basedOnVersion, values: draft.body as Values };
}
