import type { PricedReset, ResetPrice } from "#lib/evaluation";
import { listed } from "#lib/figure";

/** A planned reset as a row is headed. */
export const resetName = ({ reset: { year, undone, note } }: PricedReset): string =>
  `${note === "" ? "Top-up or deep grooming" : note}, end of year ${year}, takes back ${undone.asEntered} of the change`;

const mostYears = 4;

/** "2, 4, 6, 8 … 18". */
function yearsInWords(years: readonly number[]): string {
  const last = years.at(-1);
  if (last === undefined) return "";
  if (years.length <= mostYears + 1) return listed(years.map(String));
  return `${years.slice(0, mostYears).join(", ")} … ${last}`;
}

/** Why no cost stands beside a reset; null where one does. */
export function whyNotPaid(price: ResetPrice, year: number): string | null {
  switch (price.kind) {
    case "paid":
      return null;
    case "not-priced":
      return "no price line chosen";
    case "no-line":
      return "no price line of this name";
    case "after-study":
      return `after the study, which ends in year ${price.studyYears}`;
    case "other-years":
      return price.years.length === 0
        ? "the line pays nothing within the study"
        : `paid in year${price.years.length === 1 ? "" : "s"} ${yearsInWords(price.years)}, not in year ${year}`;
  }
}

/** What has to be looked at before the resets may be believed, a sentence each. */
export function resetWarnings(resets: readonly PricedReset[], letterOf: (bid: string) => string): readonly string[] {
  return resets.flatMap((priced) => {
    const { year, priceLine } = priced.reset;
    const when = `The one at the end of year ${year}`;
    if (priceLine === "") {
      return [`${when} is tied to no price line: every bid is given its effect and none its cost.`];
    }
    const among = (kind: ResetPrice["kind"]) =>
      priced.bids.filter((price) => price.kind === kind).map(({ bid }) => letterOf(bid));
    const told = (letters: readonly string[], rest: string) =>
      letters.length === 0 ? [] : [`${when}, “${priceLine}”, ${rest} ${bidsNamed(letters)}.`];
    return [
      ...told(among("no-line"), "has no price line in"),
      ...told(among("other-years"), "is paid in other years, or not at all, in"),
      ...told(among("after-study"), "lies after the years that are costed in"),
    ];
  });
}

const bidsNamed = (letters: readonly string[]): string =>
  `${letters.length === 1 ? "bid" : "bids"} ${listed([...letters])}`;
