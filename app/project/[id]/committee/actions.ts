"use server";
import { revalidatePath } from "next/cache";
import { z } from "zod";
import { handInSheet, openSheets } from "#lib/evaluation";
import { explainRefusal } from "#lib/store";
import type { ActReply } from "../../../_components/act-form";
import type { SaveOutcome } from "../../../_components/form/save-outcome";
import { act } from "../../../_data/act";
import { currentEditor } from "../../../_data/editor";
import { projectStore } from "../../../_data/store";

const address = z.object({
  project: z.string(),
  kind: z.literal("scoresheet"),
  id: z.string(),
  version: z.number().int(),
});

/** Keeps a scoresheet as its evaluator's own draft: nobody else sees it, and no record holds it. */
export async function keepSheet(where: unknown, sheet: unknown): Promise<SaveOutcome> {
  const place = address.parse(where);
  const editor = await currentEditor();
  if (place.id !== editor.id) return { kind: "refused", reason: "This is somebody else’s scoresheet." };
  const kept = await (await projectStore()).drafts.keep(place, sheet, editor);
  switch (kept.kind) {
    case "kept":
      return { kind: "kept", at: kept.at };
    case "refused":
      return { kind: "refused", reason: explainRefusal(kept.because) };
    case "gone":
      return { kind: "gone" };
  }
}

/** Hands in the sheet of whoever is at the keyboard. What they typed stays theirs to read and to hand in again. */
export async function handIn(project: string, sheet: unknown): Promise<readonly string[]> {
  const id = z.string().parse(project);
  const sentences = await act(id, (editor) => handInSheet(editor, sheet));
  if (sentences.length > 0) return sentences;
  const editor = await currentEditor();
  const store = await projectStore();
  const place = { project: id, kind: "scoresheet", id: editor.id } as const;
  const handedIn = await store.documents.read(place);
  await store.drafts.keep({ ...place, version: handedIn?.version ?? 0 }, sheet, editor);
  revalidatePath(`/project/${id}`, "layout");
  return [];
}

/** Opens all scoresheets together. */
export async function openAllSheets(project: string, _before: ActReply, _form: FormData): Promise<ActReply> {
  const sentences = await act(z.string().parse(project), openSheets);
  if (sentences.length === 0) revalidatePath(`/project/${project}`, "layout");
  return { sentences, typed: {} };
}
