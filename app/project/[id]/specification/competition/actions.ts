"use server";
import { z } from "zod";
import { earlierBids, projectRequirements } from "#lib/evaluation";
import type { SpecificationText } from "#lib/requirement";
import { loadEvaluation, loadProject } from "../../../../_data/load-project";
import { projectStore } from "../../../../_data/store";
import type { OtherProjects } from "./_components/other-projects";

/** Projects to take bids from: the last changed first, of those that fit a search; no more than one page of them. */
export async function otherProjects(project: unknown, search: unknown): Promise<OtherProjects> {
  const here = z.string().parse(project);
  const text = z.string().max(200).parse(search);
  const { projects, more } = await (await projectStore()).projects.page({ search: text, limit: 51 });
  const others = projects.filter(({ id }) => id !== here).map(({ id, name }) => ({ id, name }));
  return { projects: others.slice(0, 50), more: more || others.length > 50 };
}

/** The bids of another project here, as systems to hold the clauses of this one against. */
export async function bidsOfProject(
  project: unknown,
  other: unknown,
): Promise<readonly NonNullable<SpecificationText["systems"]>[number][]> {
  const [here, there] = await Promise.all([
    loadProject(z.string().parse(project)),
    loadEvaluation(z.string().parse(other)),
  ]);
  if (here === null || there === null) return [];
  return earlierBids(projectRequirements(here.project.requirements), { ...there, id: there.summary.id.toLowerCase() });
}
