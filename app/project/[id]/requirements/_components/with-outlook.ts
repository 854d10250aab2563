import type { RequirementsText } from "#lib/evaluation";
import { startingOutlookText } from "#lib/impact";

/** The text for the form: what was stored before the owner could set an outlook, a way to weigh, or more of a criterion, shows what it starts from. */
export const withOutlook = (text: RequirementsText): RequirementsText => ({
  ...text,
  criteria: text.criteria.map((criterion) => ({
    ...criterion,
    source: criterion.source ?? "",
    heading: criterion.heading ?? "",
    askedOf: criterion.askedOf ?? { kind: "every-bid" },
    evidence: { ...criterion.evidence, discount: criterion.evidence.discount ?? "" },
  })),
  headings: text.headings ?? [],
  weighing: text.weighing ?? { kind: "direct" },
  impact: {
    ...text.impact,
    outlook: { wantedChance: text.impact.chanceLevel, ...startingOutlookText, resets: [], ...text.impact.outlook },
  },
});
