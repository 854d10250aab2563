import { type ExploredIn, type ExploredTie, explainTies } from "#lib/cost";
import { formatValue, measured } from "#lib/quantity";

/** A value of an explored input: "118 % of the entered one", "12 years", "4.2 %". */
export function shownIn(toldIn: ExploredIn, value: number): string {
  switch (toldIn) {
    case "share":
      return formatValue("fraction", measured("fraction", value), "us");
    case "years":
      return `${value} ${value === 1 ? "year" : "years"}`;
    case "rate":
      return formatValue("fraction", measured("fraction", value), "us");
  }
}

/** What the values of an input are, for the head of an axis or a column. */
export const toldAs: Readonly<Record<ExploredIn, string>> = {
  share: "share of the figure as entered",
  years: "years",
  rate: "a year",
};

/** The values at which two bids cost the same, within what was looked at; empty where there are none. */
export function tiesAt({ tied, toldIn }: ExploredTie): string {
  switch (tied.kind) {
    case "always-equal":
      return "everywhere";
    case "line":
      return tied.inside && tied.at !== null ? shownIn(toldIn, tied.at) : "";
    case "crossings":
      return tied.at.map((value) => shownIn(toldIn, value)).join(" and ");
    case "steps":
      return tied.between.map(([one, other]) => `between ${one} and ${shownIn(toldIn, other)}`).join("; ");
  }
}

/** The answer in one or two sentences, with the bids by their letters. */
export const tieInWords = ({ tied, label, bid, toldIn }: ExploredTie, letterOf: (bid: string) => string): string =>
  explainTies(tied, {
    nameOf: (id) => `bid ${letterOf(id)}`,
    input: bid === null ? `the ${label.toLowerCase()}` : `“${label}” of bid ${letterOf(bid)}`,
    show: (value) => shownIn(toldIn, value),
  }).replace(/^./u, (letter) => letter.toUpperCase());
