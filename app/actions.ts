"use server";
import { redirect } from "next/navigation";
import { z } from "zod";
import { explainProjectFile, type ReadProjectFile, readProjectFile } from "#lib/document";
import { importRefusal, type ProjectFile, startingProject } from "#lib/evaluation";
import { plainDate } from "#lib/quantity";
import { issueId } from "#lib/requirement";
import { explainRefusal, type ProjectOrigin } from "#lib/store";
import { ownOrganisations } from "./_data/asker";
import { currentEditor } from "./_data/editor";
import { loadProject } from "./_data/load-project";
import { projectStore } from "./_data/store";
import demonstration from "./_demo/demonstration-project.json";

/**
 * Stores a file as a new project and returns its address, or the sentence that says why not.
 * @param wanted the organisation that it shall belong to; where several could be meant and none is named, the first
 */
async function keep(
  file: ProjectFile,
  origin: ProjectOrigin,
  wanted: string,
): Promise<{ address: string } | { problem: string }> {
  const organisation = (await ownOrganisations()).find(({ id }) => wanted === "" || id === wanted);
  if (organisation === undefined)
    return { problem: "Only an administrator of an organisation may begin a project in it." };
  const store = await projectStore(organisation.id);
  const { brief, requirements, bids, campaigns = [], costing } = file;
  const { recommendation, attachments = [], specification, issues = [], people, procedure, committee } = file;
  const { contract, submittals = [], delivery, substitutions = [] } = file;
  const outcome = await store.projects.import(
    {
      name: brief.name,
      owner: brief.owner,
      origin,
      documents: [
        { kind: "brief", body: brief },
        { kind: "requirements", body: requirements },
        ...bids.map(({ id, ...body }) => ({ kind: "bid", id, body }) as const),
        ...campaigns.map(({ id, ...body }) => ({ kind: "campaign", id, body }) as const),
        ...(costing === undefined ? [] : [{ kind: "costing", body: costing } as const]),
        ...(recommendation === undefined ? [] : [{ kind: "recommendation", body: recommendation } as const]),
        ...attachments.map(({ id, ...body }) => ({ kind: "attachment", id, body }) as const),
        ...(specification === undefined ? [] : [{ kind: "specification", body: specification } as const]),
        ...issues.map((body) => ({ kind: "issue", id: issueId(body.sequence), body }) as const),
        ...(people === undefined ? [] : [{ kind: "people", body: { people } } as const]),
        ...(procedure === undefined ? [] : [{ kind: "procedure", body: procedure } as const]),
        ...(committee === undefined ? [] : committeeDocuments(committee)),
        ...(contract === undefined ? [] : [{ kind: "contract", body: contract } as const]),
        ...(delivery === undefined ? [] : [{ kind: "delivery", body: delivery } as const]),
        ...substitutions.map(({ id, ...body }) => ({ kind: "substitution", id, body }) as const),
        ...submittals.map(({ id, ...body }) => ({ kind: "submittal", id, body }) as const),
      ],
    },
    await currentEditor(),
  );
  if (outcome.kind === "refused") return { problem: explainRefusal(outcome.because) };
  if (outcome.kind === "gone") return { problem: "You no longer administer this organisation." };
  return { address: `/project/${outcome.id}` };
}

/** A committee in a file is one document there; sheets are stored each by itself. */
function committeeDocuments({ sheets = [], ...committee }: NonNullable<ProjectFile["committee"]>) {
  return [
    { kind: "committee", body: committee } as const,
    ...sheets.map(({ sheet, ...facts }) => {
      const contents = { kind: "open", sheet } as const;
      return { kind: "scoresheet", id: facts.evaluator.id, body: { ...facts, contents } } as const;
    }),
  ];
}

const organisationIn = (form: FormData): string => String(form.get("organisation") ?? "");

export async function openDemo(form: FormData): Promise<void> {
  // in a JSON file a list may have any length, where the format has three drops
  const kept = await keep(demonstration as unknown as ProjectFile, "demo", organisationIn(form));
  if ("problem" in kept) throw new Error(kept.problem);
  redirect(`${kept.address}/side-by-side`);
}

const newProject = z.object({
  name: z.string().trim().min(1, "Name the project.").max(200, "Expected a name of at most 200 characters."),
  owner: z.string().trim().min(1, "Name the owner.").max(200, "Expected an owner of at most 200 characters."),
});

export type StartOutcome = Readonly<{ name: string; owner: string; organisation: string; problem: string }>;

export async function startProject(_before: StartOutcome, form: FormData): Promise<StartOutcome> {
  const organisation = organisationIn(form);
  const typed = { name: String(form.get("name") ?? ""), owner: String(form.get("owner") ?? ""), organisation };
  const parsed = newProject.safeParse(typed);
  if (!parsed.success) return { ...typed, problem: parsed.error.issues.map(({ message }) => message).join(" ") };
  const baseDate = plainDate(new Date().toISOString().slice(0, 10));
  const kept = await keep(startingProject({ ...parsed.data, baseDate }), "own", organisation);
  if ("problem" in kept) return { ...typed, problem: kept.problem };
  redirect(`${kept.address}/brief`);
}

/** Why a file that was saved from a project here is not opened beside it; the record of that project says so. */
async function untrueOfStanding({ file, project }: ReadProjectFile): Promise<string | null> {
  const standing = file.savedFrom === undefined ? null : await loadProject(file.savedFrom);
  if (standing === null) return null;
  const breach = importRefusal({ text: file, project }, standing.standing);
  if (breach === null) return null;
  const documents = (["requirements", "brief"] as const).map((kind) => ({
    attempted: "import" as const,
    kind,
    id: kind,
  }));
  await (await projectStore()).documents.refuse(standing.summary.id, breach, documents, await currentEditor());
  return breach.sentence;
}

export type ImportOutcome = Readonly<{ problem: string }>;

export async function importProject(_before: ImportOutcome, form: FormData): Promise<ImportOutcome> {
  const file = form.get("file");
  if (!(file instanceof File) || file.size === 0) return { problem: "Choose a project file first." };
  const read = readProjectFile(await file.text());
  if (!read.ok) return { problem: explainProjectFile(read.problem) };
  const untrue = await untrueOfStanding(read.value);
  if (untrue !== null) return { problem: untrue };
  const kept = await keep(read.value.file, "own", organisationIn(form));
  if ("problem" in kept) return kept;
  redirect(kept.address);
}
