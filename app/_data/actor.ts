import { cache } from "react";
import { type Closed, closedKinds, type ProjectKind } from "#lib/evaluation";
import { type Actor, actorOf } from "#lib/people";
import { currentEditor } from "./editor";
import { loadProject } from "./load-project";

/** Whoever is at the keyboard, with what they may do in a project. On one computer names are taken on trust. */
export const currentActor = cache(async (project: string): Promise<Actor> => {
  const loaded = await loadProject(project);
  return actorOf(loaded?.project.people ?? [], await currentEditor(), "everything-but-scoring");
});

/** What is closed to whoever is at the keyboard, by kind of document, with the sentence that says why. */
export const currentlyClosed = cache(
  async (project: string): Promise<Readonly<Partial<Record<ProjectKind, Closed>>>> => {
    const loaded = await loadProject(project);
    if (loaded === null) return {};
    return closedKinds(await currentActor(project), loaded.procedure);
  },
);
