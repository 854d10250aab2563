import type { DocumentAddress } from "../_components/form/save-outcome";
import type { DocumentStart } from "../_components/form/start-of";
import { draftOf } from "./draft-of";

/**
 * A document for a form that edits part of it, with this editor's unsaved text.
 * @param filled fills in what the form has fields for and the text does not say yet
 */
export async function documentStart<Body, Values>(
  where: DocumentAddress,
  stored: Readonly<{ version: number; body: Body }> | null,
  empty: Body,
  filled: (body: Body) => Values,
): Promise<DocumentStart<Values>> {
  const draft = await draftOf<Body>(where);
  return {
    where,
    version: stored?.version ?? 0,
    values: filled(stored?.body ?? empty),
    draft: draft && { ...draft, values: filled(draft.values) },
  };
}
