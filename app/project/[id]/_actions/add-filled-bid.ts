"use server";
import { z } from "zod";
import { type BidText, bidSchema, startingBid } from "#lib/evaluation";
import { explainRefusal } from "#lib/store";
import { currentEditor } from "../../../_data/editor";
import { loadProject } from "../../../_data/load-project";
import { projectStore } from "../../../_data/store";
import { nextLetter } from "../bids/_letters";

export type AddedBid = Readonly<{ kind: "added"; bid: string } | { kind: "not-added"; problem: string }>;

const mostBids = 40; // as many as a project file holds
const notAdded = (problem: string) => ({ kind: "not-added", problem }) as const;

/**
 * Adds a bid as a filled form gives it. Where some of it does not read yet, the bid starts empty and the whole text
 * stands in this editor's draft of it, as everything typed does.
 */
export async function addFilledBid(project: unknown, sent: unknown): Promise<AddedBid> {
  const id = z.string().parse(project);
  const { bidder } = z.looseObject({ bidder: z.string() }).parse(sent);
  const loaded = await loadProject(id);
  if (loaded === null) return notAdded("This project is no longer here.");
  const letters = loaded.project.bids.map(({ letter }) => letter);
  if (letters.length >= mostBids) return notAdded(`A project holds at most ${mostBids} bids.`);
  const text = { ...(sent as BidText), letter: nextLetter(letters) };
  const reads = bidSchema.safeParse(text).success;
  const start = startingBid(text.letter, bidder.trim().slice(0, 200) || "Bidder not named");
  const store = await projectStore();
  const editor = await currentEditor();
  const outcome = await store.documents.create({ project: id, kind: "bid" }, reads ? text : start, editor);
  if (outcome.kind === "refused") return notAdded(explainRefusal(outcome.because));
  if (outcome.kind !== "saved")
    return notAdded("The bid was not added, because the project was changed meanwhile. Send the form again.");
  if (reads) return { kind: "added", bid: outcome.id };
  const kept = await store.drafts.keep(
    { project: id, kind: "bid", id: outcome.id, version: outcome.version },
    text,
    editor,
  );
  return kept.kind === "kept"
    ? { kind: "added", bid: outcome.id }
    : notAdded(kept.kind === "refused" ? explainRefusal(kept.because) : "This project is no longer here.");
}
