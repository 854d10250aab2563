"use server";
import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { z } from "zod";
import { startingBid } from "#lib/evaluation";
import { explainRefusal } from "#lib/store";
import { currentEditor } from "../../../_data/editor";
import { loadProject } from "../../../_data/load-project";
import { projectStore } from "../../../_data/store";
import { nextLetter } from "./_letters";

export type AddOutcome = Readonly<{ bidder: string; problem: string }>;

const mostBids = 40; // as many as a project file holds
const bidderName = z.string().trim().min(1, "Name the bidder.").max(200, "Expected at most 200 characters.");

/** Adds an empty bid under the next free letter and opens it. */
export async function addBid(project: string, _before: AddOutcome, form: FormData): Promise<AddOutcome> {
  const bidder = String(form.get("bidder") ?? "");
  const named = bidderName.safeParse(bidder);
  if (!named.success) return { bidder, problem: named.error.issues.map(({ message }) => message).join(" ") };
  const loaded = await loadProject(z.string().parse(project));
  if (loaded === null) return { bidder, problem: "This project is no longer here." };
  const letters = loaded.project.bids.map(({ letter }) => letter);
  if (letters.length >= mostBids) return { bidder, problem: `A project holds at most ${mostBids} bids.` };
  const outcome = await (await projectStore()).documents.create(
    { project, kind: "bid" },
    startingBid(nextLetter(letters), named.data),
    await currentEditor(),
  );
  switch (outcome.kind) {
    case "refused":
      return { bidder, problem: explainRefusal(outcome.because) };
    case "gone":
    case "conflict":
      return { bidder, problem: "The bid was not added, because the project was changed meanwhile. Send it again." };
    case "saved":
      redirect(`/project/${project}/bids/${outcome.id}`);
  }
}

const removal = z.object({ project: z.string(), bid: z.string(), version: z.coerce.number().int() });

/** Takes a bid out of the project and says how to bring it back. A bid that changed meanwhile stays. */
export async function removeBid(form: FormData): Promise<void> {
  const { project, bid, version } = removal.parse(Object.fromEntries(form));
  const place = { project, kind: "bid", id: bid } as const;
  const outcome = await (await projectStore()).documents.remove({ ...place, version }, await currentEditor());
  revalidatePath(`/project/${project}`, "layout");
  redirect(`/project/${project}/bids?${outcome.kind === "saved" ? "removed" : "kept"}=${encodeURIComponent(bid)}`);
}

const restoration = z.object({ project: z.string(), bid: z.string() });

/** Brings a removed bid back; if its letter was given to another bid meanwhile, it takes the next free one. */
export async function restoreBid(form: FormData): Promise<void> {
  const { project, bid } = restoration.parse(Object.fromEntries(form));
  const editor = await currentEditor();
  const { documents } = await projectStore();
  const place = { project, kind: "bid", id: bid } as const;
  const before = (await loadProject(project))?.project.bids.filter(({ id }) => id !== bid) ?? [];
  const letters = before.map(({ letter }) => letter);
  const restored = await documents.restore(place, editor);
  const standing = restored.kind === "saved" ? await documents.read(place) : null;
  if (standing !== null && letters.includes(standing.model.letter)) {
    const body = { ...standing.body, letter: nextLetter(letters) };
    await documents.replace({ ...place, version: standing.version }, body, editor);
  }
  revalidatePath(`/project/${project}`, "layout");
  redirect(`/project/${project}/bids${restored.kind === "saved" ? `#${bid}` : ""}`);
}
