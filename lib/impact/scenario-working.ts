import type { Working } from "#lib/figure";
import { formatInterval } from "#lib/quantity";
import { ageInWords } from "./age-in-words";
import type { AgedLevel, ImpactRequirement } from "./model";

/**
 * How levels by the owner's yearly change come about.
 * @source owner's assumption; no yearly rate is published
 */
export const scenarioWorking = (used: readonly AgedLevel[], drift: ImpactRequirement["ownersDrift"]): Working => ({
  formula:
    "level = stated level + yearly change × years since; low with low, high with high; the range spans every stated level",
  inputs: [
    ...used.map(({ years, level, from }) => ({
      label: years === 0 ? "Level as new" : `Level at year ${ageInWords(years)}`,
      text: formatInterval("impactLevel", level, "us"),
      from,
    })),
    {
      label: "Yearly change, low, likely and high",
      text: [drift.low, drift.likely, drift.high].map(({ asEntered }) => asEntered).join(", "),
      from: { kind: "requirements", field: "impact.ownersDrift" },
    },
  ],
  assumptions: [
    "The yearly change is the owner's assumption, not a finding about this bid.",
    "The change is even over the years.",
  ],
  source: "owner's assumption",
});
