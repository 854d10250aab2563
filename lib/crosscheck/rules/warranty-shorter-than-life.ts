import type { PriceLine } from "#lib/cost";
import { listed, quantityInPhrase, say } from "#lib/figure";
import { formatValue, measured } from "#lib/quantity";
import { claimInput } from "../inputs";
import type { CheckedBid, Rule } from "../model";
import { statedFigures } from "../stated-figures";

type Chain = PriceLine<"replacement-chain">;

/** Between the end of the warranty and the end of the stated life the owner alone carries the risk. */
export const warrantyShorterThanLife: Rule = {
  id: "warranty-shorter-than-life",
  title: "The warranty ends before the stated life",
  holds: "the length of the warranty against the life that the bid states and the lives in its price lines",
  tolerance: "none: it fires only where no reading of the warranty reaches the life",
  check: (bid) => {
    const terms = statedFigures(bid.claims, "warranty-years");
    const longest = Math.max(...terms.map(({ interval }) => interval.high));
    if (terms.length === 0) return [];
    const lives = statedFigures(bid.claims, "carpet-life").filter(({ interval }) => interval.low > longest);
    const chains = bidChains(bid).filter(({ life }) => measured("time", life.years, "year") > longest);
    if (lives.length === 0 && chains.length === 0) return [];
    const term = quantityInPhrase("time", measured("time", longest));
    const stated = lives.map(({ interval }) => say`a carpet life of ${quantityInPhrase("time", interval)}`);
    const priced = chains.map(({ label, life }) => `“${label}” at ${years(life.years)}`);
    const both = [...stated, ...(priced.length === 0 ? [] : [say`a life in its price lines of ${listed(priced)}`])];
    return [
      {
        severity: "note",
        claims: [...terms, ...lives].map(({ claim }) => claim.id),
        keyedBy: [],
        priceLines: chains.map(({ id }) => id),
        figures: chains.length === 0 ? [] : ["price"],
        told: () => ({
          sentence: say`The warranty ends after ${term}; the bid gives ${both.flatMap((part, at) => (at === 0 ? part : [" and ", ...part]))}.`,
          question: say`Your warranty ends after ${term}, before the life that your bid gives. What stands behind the years after it, and can the warranty be extended to the stated life?`,
          working: {
            formula: "length of the warranty ≥ stated life",
            inputs: [
              ...[...terms, ...lives].map(({ claim }) => claimInput(bid, claim)),
              ...chains.map(({ id, label, life }) => ({
                label: `Life of “${label}”`,
                text: years(life.years),
                from: { kind: "price-line" as const, bid: bid.id, line: id },
              })),
            ],
            assumptions: ["Lives that the owner estimated are left out."],
            source: "arithmetic",
          },
        }),
      },
    ];
  },
};

const bidChains = ({ prices }: CheckedBid): readonly Chain[] =>
  prices
    .flatMap((line) => (line.kind === "replacement-chain" && line.lifeGivenBy === "bid" ? [line] : []))
    .toSorted((one, other) => (one.id < other.id ? -1 : 1));

const years = (count: number): string => formatValue("time", measured("time", count, "year"), "us");
