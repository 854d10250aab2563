import { cache } from "react";
import { startingCosting } from "#lib/cost";
import { evaluate, type Project, withoutNames } from "#lib/evaluation";
import { nothingWritten } from "#lib/recommendation";
import { readersNames } from "../_names";
import { projectStore } from "./store";

/**
 * A stored project read for one request; null if there is none of that id. Where the reader hides names, the model holds
 * none, so that no page can show one; the documents keep their text for the forms that edit it.
 */
export const loadProject = cache(async (id: string) => {
  const stored = await (await projectStore()).projects.load(id);
  if (stored === null) return null;
  const [brief] = stored.documents.brief;
  const [requirements] = stored.documents.requirements;
  const [costing] = stored.documents.costing;
  const [recommendation] = stored.documents.recommendation;
  if (brief === undefined || requirements === undefined)
    throw new Error(`project ${id} lacks its brief or requirements`);
  const project: Project = {
    brief: brief.model,
    requirements: requirements.model,
    bids: stored.documents.bid.map((bid) => ({ id: bid.id, ...bid.model })),
    costing: costing?.model ?? startingCosting,
    campaigns: stored.documents.campaign.map((campaign) => ({ id: campaign.id, ...campaign.model })),
  };
  const { bid: bids, campaign: campaigns } = stored.documents;
  const documents = {
    brief,
    requirements,
    bids,
    campaigns,
    costing: costing ?? null,
    recommendation: recommendation ?? null,
  };
  const shown = (await readersNames()) === "hidden" ? withoutNames(project) : project;
  return { summary: stored.summary, project: shown, documents, ownersWords: recommendation?.model ?? nothingWritten };
});

/** The evaluation of a stored project, worked out once a request. */
export const loadEvaluation = cache(async (id: string) => {
  const loaded = await loadProject(id);
  return loaded === null ? null : { ...loaded, evaluation: evaluate(loaded.project) };
});
