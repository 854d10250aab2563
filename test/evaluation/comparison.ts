import { type Evaluation, evaluate, type Project, type ProjectFile, projectFileSchema } from "#lib/evaluation";
import { workedProject } from "./worked-project";

type CriterionText = ProjectFile["requirements"]["criteria"][number];
type BidText = ProjectFile["bids"][number];

/** Claims of one bid: figures in g and years; null where the bid says nothing. */
export type Claimed = Readonly<{ level: string | null; warranty: string | null; method?: string; evidence?: string }>;

const impactCriterion: CriterionText = {
  id: "impact",
  measure: "impact-level-as-new",
  label: "Impact level",
  reason: "A field that starts too hard leaves no room for wear.",
  gate: { kind: "below", limit: "165 g" },
  valueFunction: { kind: "less-is-better", best: "100 g", worst: "200 g" },
  weight: "60",
  evidence: { least: "accredited-laboratory", shortfall: "ask-first" },
};

const warrantyCriterion: CriterionText = {
  id: "warranty",
  measure: "warranty-years",
  label: "Warranty",
  reason: "A promise should last as long as the life that the price counts on.",
  gate: { kind: "none" },
  valueFunction: { kind: "more-is-better", worst: "0 years", best: "10 years" },
  weight: "40",
  evidence: { least: "stated", shortfall: "keep-open" },
};

export const twoCriteria: readonly CriterionText[] = [impactCriterion, warrantyCriterion];

function bidText(
  letter: string,
  { level, warranty, method = "f355-a", evidence = "accredited-laboratory" }: Claimed,
): BidText {
  const claim = (property: string, figure: string | null, by: string) =>
    figure === null ? [] : [{ id: property, property, figure, method: by, condition: "new", evidence }];
  return {
    id: `bid-${letter.toLowerCase()}`,
    letter,
    bidder: `Bidder ${letter}`,
    system: "Invented",
    infill: { placement: "layered", components: [] },
    claims: [...claim("g-max", level, method), ...claim("warranty-years", warranty, "not-stated")],
    prices: [],
  };
}

/**
 * Bids on two criteria whose scores can be done in the head: the impact level weighs 60 and runs from 200 g (0) to
 * 100 g (100) with a gate below 165 g, the warranty weighs 40 and runs from 0 to 10 years.
 */
export function comparison(
  claimed: Readonly<Record<string, Claimed>>,
  criteria: readonly CriterionText[] = twoCriteria,
): Readonly<{ project: Project; evaluation: Evaluation }> {
  const project = projectFileSchema.parse({
    ...workedProject,
    requirements: { ...workedProject.requirements, criteria },
    bids: Object.entries(claimed).map(([letter, claims]) => bidText(letter, claims)),
  });
  return { project, evaluation: evaluate(project) };
}
