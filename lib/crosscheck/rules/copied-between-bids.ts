import { type Claim, formatCondition } from "#lib/claim";
import { say } from "#lib/figure";
import { oncePer } from "#lib/once";
import { listed, propertiesOf } from "../in-words";
import { claimInput, constantInput } from "../inputs";
import type { CheckedBid, Found, Rule } from "../model";
import { plainName } from "../same-test";

/** From this many on, figures that agree to the last digit are hardly chance. */
const fewest = 3;

/** Digits that carry something: neither zeros in front nor zeros at the end. */
const unusualDigits = 3;

/** Unlike products seldom give several unusual figures that agree to the last digit. */
export const copiedBetweenBids: Rule = {
  id: "copied-between-bids",
  title: "Figures that agree to the last digit with another bid’s",
  holds: "figures of three and more digits against the same properties of the other bids, as they were written",
  tolerance: "two figures may agree by chance; round ones do not count (common practice, no source)",
  check: (bid, others) => {
    const sharing = others
      .map((other) => ({ other, claims: agreeing(bid, other) }))
      .filter(({ claims }) => new Set(claims.map(({ property }) => property)).size >= fewest)
      .toSorted((one, next) => (one.other.letter < next.other.letter ? -1 : 1));
    if (sharing.length === 0) return [];
    const shared = new Set(sharing.flatMap(({ claims }) => claims));
    const claims = [...shared].toSorted((one, next) => (one.id < next.id ? -1 : 1));
    return [found(bid, claims, listed(sharing.map(({ other }) => other.letter)), sharing.length)];
  },
};

function found(bid: CheckedBid, claims: readonly Claim[], letters: string, others: number): Found {
  const what = propertiesOf(claims);
  return {
    severity: "note",
    claims: claims.map(({ id }) => id),
    keyedBy: ["other-bids"],
    sentence: say`For ${what} this bid and ${others === 1 ? "bid" : "bids"} ${letters} give the same figures to the last digit. They may offer one product, or rest on one source (rule of thumb: common practice, no source).`,
    // what another bidder wrote is not passed on
    question: say`Where do your figures for ${what} come from, and were they measured on the very build that you offer?`,
    working: {
      formula: "properties with the same unusual figure in two bids < 3",
      inputs: [...claims.map((claim) => claimInput(bid, claim)), constantInput("Other bids", letters)],
      assumptions: ["Three digits or more, without zeros at the ends, are unusual (common practice, no source)."],
      source: "common practice, no source",
    },
  };
}

/** The claims of the first bid that the second gives in the same words, with condition and method. */
function agreeing(bid: CheckedBid, other: CheckedBid): readonly Claim[] {
  const theirs = writtenIn(other.claims).texts;
  return writtenIn(bid.claims).figures.flatMap(({ claim, text }) => (theirs.has(text) ? claim : []));
}

/** The unusual figures among claims, with the text to compare. Kept, because each bid is held against every other one. */
const writtenIn = oncePer((claims: readonly Claim[]) => {
  const figures = claims.flatMap((claim) => {
    const text = writtenFigure(claim);
    return text === null ? [] : [{ claim, text }];
  });
  return { figures, texts: new Set(figures.map(({ text }) => text)) };
});

/** A claim with an unusual figure as text to compare; null for round figures, choices and words. */
function writtenFigure(claim: Claim): string | null {
  if (claim.value.kind !== "quantity") return null;
  const { asEntered } = claim.value.quantity;
  if (!isUnusual(asEntered)) return null;
  return [claim.property, claim.method, formatCondition(claim.condition), asEntered].map(plainName).join("|");
}

/** Whether some number in the text has enough digits that carry something. */
const isUnusual = (text: string): boolean =>
  [...text.matchAll(/\d[\d.,]*/g)].some(
    ([number]) => number.replace(/\D/g, "").replace(/^0+|0+$/g, "").length >= unusualDigits,
  );
