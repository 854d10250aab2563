"use server";
import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { z } from "zod";
import { currentEditor } from "../../../_data/editor";
import { projectStore } from "../../../_data/store";

const removal = z.object({ project: z.string(), attachment: z.string(), version: z.coerce.number().int() });

/** Takes an attachment out of the project and says how to bring it back. The file stays; one that changed meanwhile stays too. */
export async function removeAttachment(form: FormData): Promise<void> {
  const { project, attachment, version } = removal.parse(Object.fromEntries(form));
  const place = { project, kind: "attachment", id: attachment } as const;
  const outcome = await (await projectStore()).documents.remove({ ...place, version }, await currentEditor());
  revalidatePath(`/project/${project}`, "layout");
  const became = outcome.kind === "saved" ? "removed" : "kept";
  redirect(`/project/${project}/attachments?${became}=${encodeURIComponent(attachment)}`);
}

const restoration = z.object({ project: z.string(), attachment: z.string() });

/** Brings a removed attachment back. */
export async function restoreAttachment(form: FormData): Promise<void> {
  const { project, attachment } = restoration.parse(Object.fromEntries(form));
  const place = { project, kind: "attachment", id: attachment } as const;
  await (await projectStore()).documents.restore(place, await currentEditor());
  revalidatePath(`/project/${project}`, "layout");
  redirect(`/project/${project}/attachments#${attachment}`);
}
