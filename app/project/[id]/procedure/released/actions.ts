"use server";
import { revalidatePath } from "next/cache";
import { z } from "zod";
import { releaseForm } from "#lib/release";
import { explainRefusal, newToken, tokenHash } from "#lib/store";
import type { Reply } from "../../../../_components/reply-form";
import { currentEditor } from "../../../../_data/editor";
import { installation } from "../../../../_data/installation";
import { log } from "../../../../_data/log";
import { done, notDone, problemsOf, textIn } from "../../../../_data/reply";
import { projectStore } from "../../../../_data/store";

/** Makes a link for the public. The token is shown now and never again: only its hash is kept. */
export async function releaseToPublic(project: string, _before: Reply, form: FormData): Promise<Reply> {
  const installed = installation();
  if (installed.mode === "local") return notDone("Links for the public need a server on which people sign in.", form);
  const parts = form.getAll("part").filter((part) => typeof part === "string");
  const read = releaseForm.safeParse({ label: textIn(form, "label"), parts, lastDay: textIn(form, "lastDay") });
  if (!read.success) return notDone(problemsOf(read.error), form);
  const { lastDay, ...facts } = read.data;
  const endsAt = new Date(Date.parse(`${lastDay}T00:00:00.000Z`) + 24 * 3600 * 1000).toISOString();
  if (Date.parse(endsAt) <= Date.now())
    return notDone(`${lastDay} is over. Choose a last day that is still to come.`, form);
  const token = newToken();
  const outcome = await (await projectStore()).documents.create(
    { project: z.string().parse(project), kind: "release" },
    { ...facts, endsAt, tokenHash: tokenHash(token), takenBackAt: null },
    await currentEditor(),
  );
  revalidatePath(`/project/${project}`, "layout");
  switch (outcome.kind) {
    case "saved":
      log("released-to-public");
      return done(
        "The link is made. It is shown this once; whoever has it reads what was released, until its last day or until it is taken back:",
        `${installed.address}/released/${project}/${outcome.id}/${token}`,
      );
    case "refused":
      return notDone(explainRefusal(outcome.because), form);
    case "conflict":
    case "gone":
      return notDone("The project was changed meanwhile. Send it again.", form);
  }
}

/** Takes a link back at once; that it was given out stays in the record. */
export async function takeBackRelease(project: string, id: string, _before: Reply, form: FormData): Promise<Reply> {
  const { documents } = await projectStore();
  const place = { project: z.string().parse(project), kind: "release", id: z.string().parse(id) } as const;
  const held = await documents.read(place);
  if (held === null) return notDone("There is no such link any more.", form);
  const body = { ...held.body, takenBackAt: new Date().toISOString() };
  const outcome = await documents.replace({ ...place, version: held.version }, body, await currentEditor());
  revalidatePath(`/project/${project}`, "layout");
  if (outcome.kind === "saved") return done("Taken back.");
  if (outcome.kind === "refused") return notDone(explainRefusal(outcome.because), form);
  return notDone("The link was changed meanwhile. Send it again.", form);
}
