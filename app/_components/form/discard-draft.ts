"use server";
import { z } from "zod";
import { documentKinds } from "#lib/store";
import { currentEditor } from "../../_data/editor";
import { projectStore } from "../../_data/store";

const address = z.strictObject({
  project: z.string(),
  kind: z.enum(documentKinds),
  id: z.string(),
  version: z.number().int().exactOptional(),
});

/** Lets go of this editor's draft of a document, once its text is in place or no longer wanted; with a version only of one typed over that. */
export async function discardDraft(where: unknown): Promise<void> {
  await (await projectStore()).drafts.clear(address.parse(where), await currentEditor());
}
