import { oldestUsualReport, usualReportAge } from "#lib/claim";
import { say } from "#lib/figure";
import { propertiesOf } from "../in-words";
import { claimInput, constantInput } from "../inputs";
import type { Rule } from "../model";
import { byReport } from "../reports";

const { inWords: age, years } = usualReportAge;

/** Products and methods change: what was tested years ago may not be what is delivered. */
export const reportTooOld: Rule = {
  id: "report-too-old",
  title: `A report of more than ${age} ago`,
  holds: "the date of each test report against the base date of the project",
  tolerance: `${age}, and the whole month or year where no day is given (common practice, no source)`,
  check: (bid) => {
    const oldest = oldestUsualReport(bid.asOf);
    const old = bid.claims.filter(({ date }) => date !== null && date.latest < oldest);
    return byReport(old).map(({ name, key, claims }) => ({
      severity: "needs an answer" as const,
      claims: claims.map(({ id }) => id),
      keyedBy: [key],
      told: () => ({
        sentence: say`The report ${name} is more than ${age} old on ${bid.asOf}; on it rest ${propertiesOf(claims)} (${age}: common practice, no source).`,
        question: say`Is there a later report than ${name} for ${propertiesOf(claims)}, and is what is offered now still what was tested then?`,
        working: {
          formula: `date of the report + ${years} years ≥ base date of the project`,
          inputs: [
            ...claims.map((claim) => claimInput(bid, claim)),
            {
              label: "Base date of the project",
              text: bid.asOf,
              from: { kind: "brief" as const, field: "money.baseDate" },
            },
            constantInput("Oldest date that is not asked about", oldest),
          ],
          assumptions: ["Where a report gives a month or a year only, its last day counts."],
          source: "common practice, no source",
        },
      }),
    }));
  },
};
