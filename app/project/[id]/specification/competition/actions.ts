"use server";
import { z } from "zod";
import { earlierBids, projectRequirements } from "#lib/evaluation";
import type { SpecificationText } from "#lib/requirement";
import { loadEvaluation, loadProject } from "../../../../_data/load-project";

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
