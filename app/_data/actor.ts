import { cache } from "react";
import { unlistedIn } from "#lib/access";
import { type Closed, closedKinds, type ProjectKind } from "#lib/evaluation";
import { type Actor, actorOf } from "#lib/people";
import { askingEditor } from "./asker";
import { loadProject } from "./load-project";

/** Whoever is at the keyboard, with what they may do in a project. */
export const currentActor = cache(async (project: string): Promise<Actor> => {
  const loaded = await loadProject(project);
  const editor = await askingEditor();
  if (editor === null) return { id: "public", name: "Whoever has the link", roles: [], acts: [] };
  const unlisted = loaded === null ? "nothing" : unlistedIn(editor, loaded.summary.organisation);
  return actorOf(loaded?.project.people ?? [], { id: editor.id, name: editor.name, unlisted });
});

/** What is closed to whoever is at the keyboard, by kind of document, with the sentence that says why. */
export const currentlyClosed = cache(
  async (project: string): Promise<Readonly<Partial<Record<ProjectKind, Closed>>>> => {
    const loaded = await loadProject(project);
    if (loaded === null) return {};
    return closedKinds(await currentActor(project), loaded.procedure);
  },
);
