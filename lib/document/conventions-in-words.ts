import { matchMethod, methodOf } from "#lib/claim";
import { type CostConventions, inconclusiveBelow } from "#lib/cost";
import type { Project } from "#lib/evaluation";
import { currencies } from "#lib/quantity";

/** “November 25, 2026”. */
export const dateInWords = (date: string) =>
  new Intl.DateTimeFormat("en-US", { dateStyle: "long", timeZone: "UTC" }).format(new Date(`${date}T00:00:00Z`));

/** “with no inflation in them”: said of costs. */
export const inflationWords = ({ money, inflation }: CostConventions): string =>
  money === "constant" || inflation === null
    ? "with no inflation in them"
    : `with ${inflation.asEntered} inflation a year in later payments and in the rate`;

/** “US dollars of June 1, 2027”. */
export const moneyName = ({ currency, baseDate }: CostConventions): string =>
  `${currencies[currency].label} of ${dateInWords(baseDate)}`;

export const timingWords = {
  "end-of-year": "Costs fall at the end of their year.",
  "mid-year": "Yearly costs fall in the middle of their year, single ones at its end.",
} as const;

function methodName(id: string): string {
  const method = matchMethod(id);
  return method === null || method === "not-stated" ? id : methodOf(method).designation;
}

/** The document that is cited, without what it says. */
const [citation = inconclusiveBelow.source] = inconclusiveBelow.source.split(":");

/** By which rules the figures were worked out, in one paragraph. */
export function conventionsInWords({ brief: { money }, requirements: { impact } }: Project): string {
  return [
    `Costs are in ${moneyName(money)}, over ${money.studyPeriod.years} years, ${inflationWords(money)}.`,
    `Later costs count less, by ${money.realRate.asEntered} a year.`,
    timingWords[money.timing],
    `A cost difference of less than ${inconclusiveBelow.share * 100} % may decide nothing (${citation}).`,
    `Impact levels count only by ${methodName(impact.method)} or a like method.`,
    "Points run from 0 to 100 on aims that the owner set, not on what the other bids offer.",
    "A gate comes first, and no points make up for failing it.",
    "A missing figure is never guessed: it may be anything from worst to best.",
  ].join(" ");
}
