import { cache } from "react";
import { evaluate, type Project } from "#lib/evaluation";
import { projectStore } from "./store";

/** A stored project read for one request; null if there is none of that id. */
export const loadProject = cache(async (id: string) => {
  const stored = await (await projectStore()).projects.load(id);
  if (stored === null) return null;
  const [brief] = stored.documents.brief;
  const [requirements] = stored.documents.requirements;
  if (brief === undefined || requirements === undefined)
    throw new Error(`project ${id} lacks its brief or requirements`);
  const project: Project = {
    brief: brief.model,
    requirements: requirements.model,
    bids: stored.documents.bid.map((bid) => ({ id: bid.id, ...bid.model })),
  };
  return { summary: stored.summary, project, documents: { brief, requirements, bids: stored.documents.bid } };
});

/** The evaluation of a stored project, worked out once a request. */
export const loadEvaluation = cache(async (id: string) => {
  const loaded = await loadProject(id);
  return loaded === null ? null : { ...loaded, evaluation: evaluate(loaded.project) };
});
