"use server";
import { z } from "zod";
import { currentEditor } from "../../_data/editor";
import { projectStore } from "../../_data/store";

const address = z.strictObject({ project: z.string(), kind: z.enum(["brief", "requirements", "bid"]), id: z.string() });

/** Lets go of this editor's draft of a document, once its text is in place or no longer wanted. */
export async function discardDraft(where: unknown): Promise<void> {
  await (await projectStore()).drafts.clear(address.parse(where), await currentEditor());
}
