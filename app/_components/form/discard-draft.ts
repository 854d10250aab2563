"use server";
import { z } from "zod";
import { documentKinds } from "#lib/store";
import { currentEditor } from "../../_data/editor";
import { projectStore } from "../../_data/store";

const address = z.strictObject({ project: z.string(), kind: z.enum(documentKinds), id: z.string() });

/** Lets go of this editor's draft of a document, once its text is in place or no longer wanted. */
export async function discardDraft(where: unknown): Promise<void> {
  await (await projectStore()).drafts.clear(address.parse(where), await currentEditor());
}
