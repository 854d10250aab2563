import { quantityInPhrase, say } from "#lib/figure";
import { formatValue, inUnit, measured } from "#lib/quantity";
import { claimInput } from "../inputs";
import type { CheckedBid, Found, Rule } from "../model";
import { type StatedFigure, statedFigures } from "../stated-figures";

/** A field used for more hours than its warranty allows has none when it wears out. */
export const warrantyHours: Rule = {
  id: "warranty-hours",
  title: "More hours planned than the warranty allows",
  holds: "the hours a year that the warranty allows against the hours a year that the owner plans",
  tolerance: "none: it fires only where no reading of the warranty reaches the planned hours",
  check: (bid) =>
    statedFigures(bid.claims, "warranty-hours-limit").flatMap((limit) =>
      limit.interval.high < bid.hoursPerYear ? [foundFor(bid, limit)] : [],
    ),
};

function foundFor(bid: CheckedBid, limit: StatedFigure<"warranty-hours-limit">): Found {
  const allowed = limit.interval.high;
  const [allowedShown, plannedShown] = [
    quantityInPhrase("yearlyUse", allowed),
    quantityInPhrase("yearlyUse", bid.hoursPerYear),
  ];
  const term = warrantyTerm(bid);
  const total =
    term === null
      ? ""
      : ` Over ${formatValue("time", term.length, "us")} that is ${hoursOver(term.years, allowed)} allowed and ${hoursOver(term.years, bid.hoursPerYear)} planned.`;
  return {
    severity: "needs an answer",
    claims: [limit.claim.id],
    told: () => ({
      sentence: say`The warranty allows ${allowedShown}; ${plannedShown} are planned.${total}`,
      question: say`The field is planned for ${plannedShown}, and your warranty allows ${allowedShown}. Does the warranty hold at the planned use, and at what price?`,
      working: {
        formula:
          "planned hours a year ≤ hours a year that the warranty allows; hours over the warranty = hours a year × years",
        inputs: [
          claimInput(bid, limit.claim),
          ...(term === null ? [] : [claimInput(bid, term.claim)]),
          {
            label: "Planned hours of use",
            text: formatValue("yearlyUse", bid.hoursPerYear, "us"),
            from: { kind: "brief", field: "use.hoursPerYear" },
          },
        ],
        assumptions: [],
        source: "arithmetic",
      },
    }),
  };
}

/** The length of the warranty, where the bid gives one that is a single figure. */
function warrantyTerm(bid: CheckedBid) {
  const [only, ...more] = statedFigures(bid.claims, "warranty-years");
  if (only === undefined || more.length > 0 || only.interval.low !== only.interval.high) return null;
  const length = measured("time", only.interval.low);
  return { claim: only.claim, length, years: inUnit("time", length, "year") };
}

const hoursOver = (years: number, hoursPerYear: number): string =>
  `${Math.round(years * hoursPerYear).toLocaleString("en-US")} h`;
