"use server";
import { z } from "zod";
import { documentSchemas } from "#lib/evaluation";
import { documentKinds, explainRefusal, isGivenOut } from "#lib/store";
import type { SaveOutcome } from "../../../_components/form/save-outcome";
import { bodyOfVersion } from "../../../_data/draft-of";
import { currentEditor } from "../../../_data/editor";
import { projectStore } from "../../../_data/store";
import { whoSaved } from "../../../_data/who-saved";

const address = z.strictObject({
  project: z.string(),
  kind: z.enum(documentKinds),
  id: z.string(),
  version: z.number().int(),
});

/** Where, who, what was sent, what was stored. Text that does not read yet is kept as a draft; a stale one as well. */
export async function saveDocument(where: unknown, draft: unknown): Promise<SaveOutcome> {
  const place = address.parse(where);
  if (isGivenOut(place.kind)) return { kind: "refused", reason: explainRefusal({ kind: "given-out" }) };
  const editor = await currentEditor();
  const store = await projectStore();
  const parsed = documentSchemas[place.kind].safeParse(draft);
  if (!parsed.success) {
    const kept = await store.drafts.keep(place, draft, editor);
    if (kept.kind === "refused") return { kind: "refused", reason: explainRefusal(kept.because) };
    if (kept.kind === "gone") return { kind: "gone" };
    const problems = parsed.error.issues.map(({ path, message }) => ({ field: path.join("."), message }));
    return { kind: "rejected", problems };
  }
  const body = draft as z.input<(typeof documentSchemas)[typeof place.kind]>;
  // version 0 stands for a document that nobody has written yet
  const outcome = await (place.version === 0
    ? store.documents.create(place, body, editor)
    : store.documents.replace(place, body, editor));
  switch (outcome.kind) {
    case "saved":
      return { kind: "saved", version: outcome.version, at: outcome.at };
    case "conflict": {
      const { version, savedBy, savedAt, current } = outcome;
      const base = await bodyOfVersion(place);
      return { kind: "conflict", version, savedBy: whoSaved(savedBy), savedAt, theirs: current.body, base };
    }
    case "refused":
      return { kind: "refused", reason: explainRefusal(outcome.because) };
    case "gone":
      return { kind: "gone" };
  }
}
