"use server";
import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { z } from "zod";
import { testPlan } from "#lib/fieldtest";
import { isPlainDate } from "#lib/quantity";
import { explainRefusal } from "#lib/store";
import { currentEditor } from "../../../_data/editor";
import { loadProject } from "../../../_data/load-project";
import { projectStore } from "../../../_data/store";
import { readersUnits } from "../../../_units";
import { planChoice, planStart, planWish } from "./_tests/plan-choice";
import { requiredMethod } from "./_tests/read-campaigns";
import { plannedLocations, startingCampaign } from "./_tests/starting-campaign";

export type AddOutcome = Readonly<{ date: string; problem: string }>;

const mostCampaigns = 60; // as many as a project file holds
const sent = z.object({
  date: z.string(),
  kind: z.enum(["acceptance", "yearly", "other"]),
  installed: z.string().max(64),
  start: z.enum(["plan", "empty"]),
  plan: z.string().max(4000),
});

/** Adds a campaign, with the locations of the plan where that is asked, and opens it. */
export async function addCampaign(project: string, _before: AddOutcome, form: FormData): Promise<AddOutcome> {
  const { date: typed, kind, installed, start, plan } = sent.parse(Object.fromEntries(form));
  const date = typed.trim();
  const notAdded = (problem: string) => ({ date, problem });
  if (!isPlainDate(date))
    return notAdded(`“${date}” is not a day of the calendar. Expected year, month and day, for instance 2027-06-01.`);
  const loaded = await loadProject(z.string().parse(project));
  if (loaded === null) return notAdded("This project is no longer here.");
  if (loaded.documents.campaigns.length >= mostCampaigns)
    return notAdded(`A project holds at most ${mostCampaigns} test campaigns.`);
  const planned = start === "plan" ? await locationsOfPlan(loaded.project, plan) : { locations: [], origin: "" };
  const outcome = await (await projectStore()).documents.create(
    { project, kind: "campaign" },
    startingCampaign({ kind, date, installed, method: requiredMethod(loaded.project), ...planned }),
    await currentEditor(),
  );
  switch (outcome.kind) {
    case "refused":
      return notAdded(explainRefusal(outcome.because));
    case "gone":
    case "conflict":
      return notAdded("The campaign was not added, because the project was changed meanwhile. Send it again.");
    case "saved":
      redirect(`/project/${project}/field-tests/${outcome.id}`);
  }
}

type Loaded = NonNullable<Awaited<ReturnType<typeof loadProject>>>["project"];

async function locationsOfPlan(project: Loaded, address: string) {
  const asked = new URLSearchParams(address);
  const choice = planChoice(
    Object.fromEntries([...asked.keys()].map((name) => [name, asked.getAll(name)])),
    planStart(project),
  );
  const wish = planWish(choice);
  const plan = wish.ok ? testPlan(project.brief.field, wish.value) : wish;
  return plan.ok
    ? { locations: plannedLocations(plan.value, await readersUnits()), origin: plan.value.outline.origin }
    : { locations: [], origin: "" };
}

const removal = z.object({ project: z.string(), campaign: z.string(), version: z.coerce.number().int() });

/** Takes a campaign out of the project and says how to bring it back. One that changed meanwhile stays. */
export async function removeCampaign(form: FormData): Promise<void> {
  const { project, campaign, version } = removal.parse(Object.fromEntries(form));
  const place = { project, kind: "campaign", id: campaign } as const;
  const outcome = await (await projectStore()).documents.remove({ ...place, version }, await currentEditor());
  revalidatePath(`/project/${project}`, "layout");
  const became = outcome.kind === "saved" ? "removed" : "kept";
  redirect(`/project/${project}/field-tests?${became}=${encodeURIComponent(campaign)}#campaigns`);
}

const restoration = z.object({ project: z.string(), campaign: z.string() });

/** Brings a removed campaign back. */
export async function restoreCampaign(form: FormData): Promise<void> {
  const { project, campaign } = restoration.parse(Object.fromEntries(form));
  const place = { project, kind: "campaign", id: campaign } as const;
  const restored = await (await projectStore()).documents.restore(place, await currentEditor());
  revalidatePath(`/project/${project}`, "layout");
  redirect(`/project/${project}/field-tests#${restored.kind === "saved" ? campaign : "campaigns"}`);
}
