import { type Claim, formatCondition } from "#lib/claim";
import { listed, say } from "#lib/figure";
import { oncePer } from "#lib/once";
import { propertiesOf } from "../in-words";
import { claimInput, constantInput } from "../inputs";
import type { CheckedBid, Found, Rule } from "../model";
import { plainName } from "../same-test";

/** From this many on, figures that agree to the last digit are hardly chance. */
const fewest = 3;

/** Three digits or more that carry something: neither zeros in front nor zeros at the end. */
const unusualNumber = /[1-9][.,]*(?:\d[.,]*)+[1-9]/;

/** Unlike products seldom give several unusual figures that agree to the last digit. */
export const copiedBetweenBids: Rule = {
  id: "copied-between-bids",
  title: "Figures that agree to the last digit with another bid’s",
  holds: "figures of three and more digits against the same properties of the other bids, as they were written",
  tolerance: "two figures may agree by chance; round ones do not count (common practice, no source)",
  among: (bids) => {
    const writers = writersAmong(bids);
    return (bid) => {
      const sharing = [...agreeing(bid, writers)]
        .map(([other, claims]) => ({ other, claims }))
        .filter(({ claims }) => new Set(claims.map(({ property }) => property)).size >= fewest)
        .toSorted((one, next) => (one.other.letter < next.other.letter ? -1 : 1));
      if (sharing.length === 0) return [];
      const shared = new Set(sharing.flatMap(({ claims }) => claims));
      const claims = [...shared].toSorted((one, next) => (one.id < next.id ? -1 : 1));
      return [found(bid, claims, listed(sharing.map(({ other }) => other.letter)), sharing.length)];
    };
  },
};

function found(bid: CheckedBid, claims: readonly Claim[], letters: string, others: number): Found {
  const what = propertiesOf(claims);
  return {
    severity: "note",
    claims: claims.map(({ id }) => id),
    keyedBy: ["other-bids"],
    told: () => ({
      sentence: say`For ${what} this bid and ${others === 1 ? "bid" : "bids"} ${letters} give the same figures to the last digit. They may offer one product, or rest on one source (rule of thumb: common practice, no source).`,
      // what another bidder wrote is not passed on
      question: say`Where do your figures for ${what} come from, and were they measured on the very build that you offer?`,
      working: {
        formula: "properties with the same unusual figure in two bids < 3",
        inputs: [...claims.map((claim) => claimInput(bid, claim)), constantInput("Other bids", letters)],
        assumptions: ["Three digits or more, without zeros at the ends, are unusual (common practice, no source)."],
        source: "common practice, no source",
      },
    }),
  };
}

/** Which bids write an unusual figure. */
type Writers = ReadonlyMap<string, ReadonlySet<CheckedBid>>;

/** The claims of a bid that others give in the same words, with condition and method, by those others. */
function agreeing(bid: CheckedBid, writers: Writers): ReadonlyMap<CheckedBid, readonly Claim[]> {
  const byOther = new Map<CheckedBid, Claim[]>();
  for (const { claim, text } of unusualFigures(bid.claims))
    for (const other of writers.get(text) ?? []) {
      if (other.id === bid.id) continue;
      const shared = byOther.get(other);
      if (shared === undefined) byOther.set(other, [claim]);
      else shared.push(claim);
    }
  return byOther;
}

/** The unusual figures among claims, each with its text to compare. */
const unusualFigures = oncePer((claims: readonly Claim[]) =>
  claims.flatMap((claim) => {
    const text = writtenFigure(claim);
    return text === null ? [] : [{ claim, text }];
  }),
);

function writersAmong(bids: readonly CheckedBid[]): Writers {
  const writers = new Map<string, Set<CheckedBid>>();
  for (const bid of bids)
    for (const { text } of unusualFigures(bid.claims)) {
      const known = writers.get(text);
      if (known === undefined) writers.set(text, new Set([bid]));
      else known.add(bid);
    }
  return writers;
}

/** A claim with an unusual figure as text to compare; null for round figures, choices and words. */
function writtenFigure(claim: Claim): string | null {
  if (claim.value.kind !== "quantity") return null;
  const { asEntered } = claim.value.quantity;
  if (!unusualNumber.test(asEntered)) return null;
  return `${claim.property}|${claim.method}|${plainName(formatCondition(claim.condition))}|${plainName(asEntered)}`;
}
