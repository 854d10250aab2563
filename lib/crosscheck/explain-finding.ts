import { formatInterval, formatValue, type UnitSystem } from "#lib/quantity";
import type { Finding } from "./finding";

/** What was found and a neutral question to the bidder, in the reader's units. */
export type FindingWords = Readonly<{ title: string; sentence: string; question: string }>;

export function explainFinding(finding: Finding, units: UnitSystem): FindingWords {
  switch (finding.kind) {
    case "components-against-total": {
      const sum = formatInterval("arealDensity", finding.sum, units);
      const stated = formatInterval("arealDensity", finding.stated, units);
      return {
        title: "The infill components do not add up to the stated total",
        sentence: `The components add up to ${sum}; the bid states a total of ${stated}. Both can’t be true.`,
        question: `Your bid states a total infill of ${stated}, while its components add up to ${sum}. Which is right, and which component changes?`,
      };
    }
    case "infill-buries-pile": {
      const depth = formatInterval("length", finding.depth, units);
      const pile = formatInterval("length", finding.pileHeight, units);
      return {
        title: "The infill would stand above the pile",
        sentence: `By its own mass the infill is ${depth} deep; the pile is ${pile} high.`,
        question: `The infill you state comes to a depth of ${depth} in a pile of ${pile}. Please check both figures.`,
      };
    }
    case "light-infill-without-shock-layer":
      return {
        title: "Light infill and no shock layer",
        sentence: `The infill weighs ${formatInterval("arealDensity", finding.total, units)} and nothing lies under the carpet to take up impact. The trade calls an infill heavy above ${formatValue("arealDensity", finding.heavyAbove, units)} (common practice, no source).`,
        question:
          "Which measured results on installed fields of this build, with their ages, show how it takes up impact as infill moves and how the carpet stays flat?",
      };
    case "impact-by-another-method":
      return {
        title: "An impact level by another method",
        sentence: finding.reason,
        question: finding.ask,
      };
  }
}
