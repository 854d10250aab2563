"use server";
import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { z } from "zod";
import { isPlainDate } from "#lib/quantity";
import { explainRefusal } from "#lib/store";
import { type SubmittalText, submittalSchema } from "#lib/submittal";
import type { ActReply } from "../../../_components/act-form";
import { currentEditor } from "../../../_data/editor";
import { loadProject } from "../../../_data/load-project";
import { projectStore } from "../../../_data/store";
import { lackingLines } from "./_register/lacking-lines";

const mostLines = 400; // as many as a project file holds
const gone = "This project is no longer here.";

const reply = (typed: ActReply["typed"], ...sentences: readonly string[]): ActReply => ({ sentences, typed });

/** Adds one line; null where it is there, else the sentence that says why not. */
async function addedLine(project: string, body: SubmittalText): Promise<string | null> {
  const outcome = await (await projectStore()).documents.create(
    { project, kind: "submittal" },
    body,
    await currentEditor(),
  );
  if (outcome.kind === "saved") return null;
  return outcome.kind === "refused" ? explainRefusal(outcome.because) : gone;
}

/** Adds every line that the specification asks for and that is not here yet. */
export async function makeRegister(project: string, _before: ActReply, form: FormData): Promise<ActReply> {
  const id = z.string().parse(project);
  const due = String(form.get("due") ?? "").trim();
  if (due !== "" && !isPlainDate(due))
    return reply({ due }, `“${due}” is not a day of the calendar. Expected year, month and day, such as 2027-04-01.`);
  const loaded = await loadProject(id);
  if (loaded === null) return reply({ due }, gone);
  const lacking = lackingLines(loaded.project);
  if (lacking.length + loaded.documents.submittals.length > mostLines)
    return reply({ due }, `A register holds at most ${mostLines} lines. Remove lines that nobody needs.`);
  for (const { item, kind, from, clauses } of lacking) {
    const problem = await addedLine(id, { item, kind, from, clauses: [...clauses], due });
    if (problem !== null) return reply({ due }, problem);
  }
  revalidatePath(`/project/${id}`, "layout");
  return reply({});
}

/** Adds a line by hand. */
export async function addLine(project: string, _before: ActReply, form: FormData): Promise<ActReply> {
  const id = z.string().parse(project);
  const typed = { item: String(form.get("item") ?? ""), kind: String(form.get("kind") ?? "") };
  const read = submittalSchema.safeParse(typed);
  if (!read.success) return reply(typed, ...read.error.issues.map(({ message }) => message));
  const loaded = await loadProject(id);
  if ((loaded?.documents.submittals.length ?? 0) >= mostLines)
    return reply(typed, `A register holds at most ${mostLines} lines. Remove lines that nobody needs.`);
  const problem = await addedLine(id, { ...typed, kind: read.data.kind });
  if (problem !== null) return reply(typed, problem);
  revalidatePath(`/project/${id}`, "layout");
  return reply({});
}

const removal = z.object({ project: z.string(), line: z.string(), version: z.coerce.number().int() });

/** Takes a line out of the register and says how to bring it back. One that changed meanwhile stays. */
export async function removeLine(form: FormData): Promise<void> {
  const { project, line, version } = removal.parse(Object.fromEntries(form));
  const place = { project, kind: "submittal", id: line } as const;
  const outcome = await (await projectStore()).documents.remove({ ...place, version }, await currentEditor());
  revalidatePath(`/project/${project}`, "layout");
  redirect(
    `/project/${project}/submittals?${outcome.kind === "saved" ? "removed" : "kept"}=${encodeURIComponent(line)}`,
  );
}

const restoration = z.object({ project: z.string(), line: z.string() });

/** Brings a removed line back. */
export async function restoreLine(form: FormData): Promise<void> {
  const { project, line } = restoration.parse(Object.fromEntries(form));
  const place = { project, kind: "submittal", id: line } as const;
  await (await projectStore()).documents.restore(place, await currentEditor());
  revalidatePath(`/project/${project}`, "layout");
  redirect(`/project/${project}/submittals#${line}`);
}
