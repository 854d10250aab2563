import type { RequirementsText } from "#lib/evaluation";
import { startingOutlookText } from "#lib/impact";

/** The text for the form: what was stored before the owner could set an outlook, or a way to weigh, shows what it starts from. */
export const withOutlook = (text: RequirementsText): RequirementsText => ({
  ...text,
  weighing: text.weighing ?? { kind: "direct" },
  impact: {
    ...text.impact,
    outlook: { wantedChance: text.impact.chanceLevel, ...startingOutlookText, resets: [], ...text.impact.outlook },
  },
});
