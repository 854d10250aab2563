"use server";
import { revalidatePath } from "next/cache";
import { cookies } from "next/headers";
import { redirect } from "next/navigation";
import { z } from "zod";
import { cookieFromEditor, editorCookie, editorNamed, explainEditorName } from "#lib/access";
import {
  type AmendedText,
  amend,
  type BriefText,
  briefSchema,
  choosePrices,
  moveStage,
  type RequirementsText,
  requirementsSchema,
} from "#lib/evaluation";
import { explainRefusal } from "#lib/store";
import type { ActReply } from "../../../_components/act-form";
import type { SaveOutcome } from "../../../_components/form/save-outcome";
import { act } from "../../../_data/act";
import { currentEditor } from "../../../_data/editor";
import { projectStore } from "../../../_data/store";
import { withMoney } from "../brief/_components/with-money";
import { withOutlook } from "../requirements/_components/with-outlook";

const texts = (form: FormData): Readonly<Record<string, string>> =>
  Object.fromEntries(
    [...form.entries()].flatMap(([name, value]) => (typeof value === "string" ? [[name, value]] : [])),
  );

const stageMove = z.object({
  stage: z.enum(["frozen", "prices-open", "evaluated", "recommended", "awarded"]),
  note: z.string().trim().max(2000).default(""),
  bid: z.string().max(64).default(""),
});

/** Moves a project to the stage that a form names, and shows every page anew. */
export async function moveToStage(project: string, _before: ActReply, form: FormData): Promise<ActReply> {
  const typed = texts(form);
  const move = stageMove.parse(typed);
  const sentences = await act(z.string().parse(project), (editor) => moveStage(editor, move));
  if (sentences.length === 0) revalidatePath(`/project/${project}`, "layout");
  return { sentences, typed };
}

/** Settles whether prices are sealed until they are opened. */
export async function choosePricesAreSealed(project: string, _before: ActReply, form: FormData): Promise<ActReply> {
  const typed = texts(form);
  const { prices } = z.object({ prices: z.enum(["open", "sealed"]) }).parse(typed);
  const sentences = await act(z.string().parse(project), () => choosePrices(prices));
  if (sentences.length === 0) revalidatePath(`/project/${project}`, "layout");
  return { sentences, typed };
}

const amendable = z.enum(["requirements", "brief"]);
const address = z.object({ project: z.string(), kind: amendable, id: z.string(), version: z.number().int() });

const schemas = { requirements: requirementsSchema, brief: briefSchema } as const;

/** Keeps what an amendment shall say as this editor's draft; it changes nothing before it is recorded. */
export async function keepAmendment(where: unknown, draft: unknown): Promise<SaveOutcome> {
  const place = address.parse(where);
  const kept = await (await projectStore()).drafts.keep(place, draft, await currentEditor());
  if (kept.kind === "refused") return { kind: "refused", reason: explainRefusal(kept.because) };
  if (kept.kind === "gone") return { kind: "gone" };
  const read = schemas[place.kind].safeParse(draft);
  if (read.success) return { kind: "kept", at: kept.at };
  return {
    kind: "rejected",
    problems: read.error.issues.map(({ path, message }) => ({ field: path.join("."), message })),
  };
}

/** Records an amendment: what this editor's draft says, with the reason. */
export async function recordAmendment(
  where: Readonly<{ project: string; document: "requirements" | "brief"; version: number }>,
  _before: ActReply,
  form: FormData,
): Promise<ActReply> {
  const { project, document, version } = z
    .object({ project: z.string(), document: amendable, version: z.number().int() })
    .parse(where);
  const typed = texts(form);
  const reason = typed.note ?? "";
  const draft = await (await projectStore()).drafts.read(
    { project, kind: document, id: document },
    await currentEditor(),
  );
  if (draft === null) return { sentences: ["Change something above first."], typed };
  const read = schemas[document].safeParse(draft.body);
  if (!read.success) return { sentences: read.error.issues.map(({ message }) => message), typed };
  const amended = { document, version, body: draft.body } as AmendedText;
  const shown = (text: unknown) =>
    document === "brief" ? withMoney(text as BriefText) : withOutlook(text as RequirementsText);
  const sentences = await act(project, (editor) => amend(editor, amended, reason, shown));
  if (sentences.length > 0) return { sentences, typed };
  revalidatePath(`/project/${project}`, "layout");
  redirect(`/project/${project}/procedure#amendments`);
}

const aYear = 365 * 24 * 3600;

/** Remembers in a cookie who is at this keyboard. Nothing is proven by it: on one computer names are taken on trust. */
export async function sayWhoIsHere(_before: ActReply, form: FormData): Promise<ActReply> {
  const typed = texts(form);
  const listed = typed.listed ?? "";
  if (listed === "nobody") (await cookies()).delete(editorCookie);
  else {
    const named = editorNamed(listed === "other" ? (typed.name ?? "") : listed);
    if (!named.ok) return { sentences: [explainEditorName(named.problem)], typed };
    (await cookies()).set(editorCookie, cookieFromEditor(named.value), {
      ...{ httpOnly: true, sameSite: "strict", maxAge: aYear, path: "/" },
    });
  }
  revalidatePath("/", "layout");
  return { sentences: [], typed };
}
