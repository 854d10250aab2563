"use server";
import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { z } from "zod";
import { substitutionSchema } from "#lib/evaluation";
import { explainRefusal } from "#lib/store";
import type { ActReply } from "../../../../_components/act-form";
import { currentEditor } from "../../../../_data/editor";
import { projectStore } from "../../../../_data/store";

/** Adds a request for substitution and opens it. */
export async function addSubstitution(project: string, _before: ActReply, form: FormData): Promise<ActReply> {
  const id = z.string().parse(project);
  const typed = { item: String(form.get("item") ?? "") };
  const read = substitutionSchema.safeParse(typed);
  if (!read.success) return { sentences: read.error.issues.map(({ message }) => message), typed };
  const outcome = await (await projectStore()).documents.create(
    { project: id, kind: "substitution" },
    typed,
    await currentEditor(),
  );
  if (outcome.kind === "refused") return { sentences: [explainRefusal(outcome.because)], typed };
  if (outcome.kind !== "saved") return { sentences: ["This project is no longer here."], typed };
  redirect(`/project/${id}/submittals/substitutions/${outcome.id}`);
}

const removal = z.object({ project: z.string(), request: z.string(), version: z.coerce.number().int() });

/** Takes a request out and says how to bring it back. One that changed meanwhile stays. */
export async function removeSubstitution(form: FormData): Promise<void> {
  const { project, request, version } = removal.parse(Object.fromEntries(form));
  const place = { project, kind: "substitution", id: request } as const;
  const outcome = await (await projectStore()).documents.remove({ ...place, version }, await currentEditor());
  revalidatePath(`/project/${project}`, "layout");
  const became = outcome.kind === "saved" ? "removed" : "kept";
  redirect(`/project/${project}/submittals/substitutions?${became}=${encodeURIComponent(request)}`);
}

const restoration = z.object({ project: z.string(), request: z.string() });

/** Brings a removed request back. */
export async function restoreSubstitution(form: FormData): Promise<void> {
  const { project, request } = restoration.parse(Object.fromEntries(form));
  const place = { project, kind: "substitution", id: request } as const;
  await (await projectStore()).documents.restore(place, await currentEditor());
  revalidatePath(`/project/${project}`, "layout");
  redirect(`/project/${project}/submittals/substitutions`);
}
