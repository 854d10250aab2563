import { say } from "#lib/figure";
import { propertiesOf } from "../in-words";
import { claimInput } from "../inputs";
import type { Rule } from "../model";
import { byReport } from "../reports";

/** What another carpet, infill, shock layer or base showed does not show this bid. */
export const reportOfAnotherBuild: Rule = {
  id: "report-of-another-build",
  title: "A report of another build",
  holds: "the build described in each report against the build of the bid, as the owner’s side marked it",
  tolerance: "none",
  check: (bid) =>
    byReport(bid.claims.filter(({ build }) => build === "other-build")).map(({ name, key, claims }) => ({
      severity: "needs an answer" as const,
      claims: claims.map(({ id }) => id),
      keyedBy: [key],
      told: () => ({
        sentence: say`By ${name}, another build than this bid’s was tested. What it shows for ${propertiesOf(claims)} need not hold here.`,
        question: say`What does a test of the very build you offer show for ${propertiesOf(claims)}, and in what does the build of ${name} differ?`,
        working: {
          formula: "build of the report = build of the bid",
          inputs: claims.map((claim) => claimInput(bid, claim)),
          assumptions: ["The build was compared by whoever entered the claim."],
          source: "derived: impact, play and drainage depend on carpet, infill, shock layer and base together",
        },
      }),
    })),
};
