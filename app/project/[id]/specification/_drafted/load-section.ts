import { cache } from "react";
import { sectionInput } from "#lib/document";
import { competitionSetting } from "#lib/evaluation";
import {
  announcedCriteria,
  blanksOf,
  competition,
  completenessNotes,
  draftSection,
  numberedSection,
  startingSpecification,
} from "#lib/requirement";
import { loadEvaluation } from "../../../../_data/load-project";
import { languageOf } from "./language-of";

/** The section of a stored project as it stands, with what is to be said of it; null if there is no such project. */
export const loadSection = cache(async (id: string) => {
  const loaded = await loadEvaluation(id);
  if (loaded === null) return null;
  const { project, evaluation } = loaded;
  const input = sectionInput(project);
  const section = numberedSection(draftSection(input));
  const { requirements, submittals } = input;
  const setting = competitionSetting(project, evaluation);
  const { names } = project.specification ?? startingSpecification;
  return {
    ...loaded,
    ...{ input, section, setting },
    blanks: blanksOf(section),
    completeness: completenessNotes({ requirements, submittals, announced: announcedCriteria(input) }),
    language: languageOf(section, names),
    competition: competition(setting.clauses, setting.systems),
  };
});

export type LoadedSection = NonNullable<Awaited<ReturnType<typeof loadSection>>>;
