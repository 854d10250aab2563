import { clausesThatFight } from "./clauses-that-fight";
import { criterionNotAnnounced } from "./criterion-not-announced";
import { limitWithoutMethod } from "./limit-without-method";
import { methodWithoutEdition } from "./method-without-edition";
import type { CompletenessNote, CompletenessRule, WrittenSection } from "./model";
import { noAcceptanceTest } from "./no-acceptance-test";
import { noRemedy } from "./no-remedy";
import { noTolerance } from "./no-tolerance";
import { recipeAndResult } from "./recipe-and-result";
import { submittalUnused } from "./submittal-unused";

/** Every kind of note, the most serious first. A new kind is a file and a line here. */
export const completenessRules: readonly CompletenessRule[] = [
  clausesThatFight,
  criterionNotAnnounced,
  limitWithoutMethod,
  methodWithoutEdition,
  recipeAndResult,
  noTolerance,
  noAcceptanceTest,
  noRemedy,
  submittalUnused,
];

/**
 * What the text leaves out, says twice or asks for in vain. A clause that is switched off is not in the text, so it is
 * only looked at as a criterion that the text should announce.
 */
export const completenessNotes = (section: WrittenSection): readonly CompletenessNote[] => {
  const written = { ...section, requirements: section.requirements.filter(({ isOn }) => isOn) };
  return completenessRules.flatMap(({ id: rule, title, advice, find }) =>
    find(rule === criterionNotAnnounced.id ? section : written).map((gap) => ({ rule, title, advice, ...gap })),
  );
};
