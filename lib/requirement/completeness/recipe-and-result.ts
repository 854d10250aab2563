import { listed } from "#lib/figure";
import type { Requirement } from "../model";
import type { CompletenessRule } from "./model";

/** Results and the parts of the recipe that make them. @source common practice of performance specifications, no source */
const made: readonly Readonly<{ what: string; results: readonly string[]; recipe: readonly string[] }>[] = [
  {
    what: "how hard the surface is",
    results: [
      "impact-level-as-new",
      "impact-level-at-horizon",
      "g-max",
      "g-max-highest-point",
      "head-injury-criterion",
      "critical-fall-height",
      "shock-absorption",
    ],
    recipe: [
      "infill-depth",
      "infill-mass-per-area",
      "infill-total-areal-density",
      "shock-layer-thickness",
      "shock-layer-density",
      "shock-layer-force-reduction",
    ],
  },
  {
    what: "how firmly tufts are held",
    results: ["tuft-bind", "tuft-bind-aged"],
    recipe: ["secondary-backing-mass", "primary-backing-mass"],
  },
  {
    what: "how the pile wears",
    results: ["pile-height-kept", "weathered-strength", "conditioning-cycles", "carpet-life"],
    recipe: ["pile-mass", "yarn-linear-density", "fibre-thickness", "stitch-rate", "gauge", "carpet-total-mass"],
  },
  {
    what: "how the system drains",
    results: ["system-infiltration", "standing-water-time"],
    recipe: ["carpet-infiltration", "shock-layer-infiltration"],
  },
];

const isAbout = (ids: readonly string[], { subject, limit }: Requirement) =>
  limit !== null && subject !== null && ids.includes(subject.property ?? subject.id);

export const recipeAndResult: CompletenessRule = {
  id: "recipe-and-result",
  title: "Recipe and result both fixed",
  advice:
    "Fix the result and let bidders choose the way, or fix the recipe and own its result. With both, nobody answers for a field that has the recipe and misses the result.",
  find: ({ requirements }) =>
    made.flatMap(({ what, results, recipe }) => {
      const [fixedResults, fixedRecipe] = [results, recipe].map((ids) =>
        requirements.filter((each) => isAbout(ids, each)),
      );
      if (fixedResults === undefined || fixedRecipe === undefined) return [];
      if (fixedResults.length === 0 || fixedRecipe.length === 0) return [];
      const names = (of: readonly Requirement[]) => listed(of.map(({ label }) => `“${label}”`));
      return [
        {
          requirements: [...fixedResults, ...fixedRecipe].map(({ id }) => id),
          sentence: `${names(fixedResults)} fixes ${what}, and ${names(fixedRecipe)} fixes how it is to be reached.`,
        },
      ];
    }),
};
