import { intervalOfFigure, say } from "#lib/figure";
import { type Bought, boughtAtBaseDate } from "../bought-at-base-date";
import { claimInput, figureInput } from "../inputs";
import type { CheckedBid, Found, Rule } from "../model";
import { priceLineInput } from "../price-line-input";
import { beside, type Span, spanInPhrase } from "../span";
import { type StatedFigure, statedFigures } from "../stated-figures";

/** How far a priced area may lie from the field: measuring below it, cutting waste above it. */
const room = { below: 0.02, above: 0.1 } as const;

/** What covers the whole field, and the words by which a price line speaks of it. */
const coverings = [
  { what: "carpet", words: /\b(?:carpet|turf)\b/i },
  { what: "infill", words: /\binfill\b/i },
  { what: "shock layer", words: /\b(?:shock[ -](?:layer|pad)|underlay)\b/i },
] as const;

/** Words for parts of a field, which are no measure of the whole. */
const partOnly = /\b(?:logo|mark|marks|markings?|lines?|inlaid|spare|reserve|attic|remove|removal)\b/i;

/** What is priced by area covers the owner's field, with a little waste. */
export const quantityAgainstArea: Rule = {
  id: "quantity-against-area",
  title: "An area reckoned with is not that of the field",
  holds:
    "the area that the bid states and those its price lines count for carpet, infill and shock layer against the field",
  tolerance: "2 % below for measuring, 10 % above for cutting waste, rules of thumb (common practice, no source)",
  check: (bid) => {
    const area = intervalOfFigure(bid.area);
    if (area === null) return [];
    const lines = boughtAtBaseDate(bid.prices).filter(({ label }) => !partOnly.test(label));
    const expected = { low: area.low * (1 - room.below), high: area.high * (1 + room.above) };
    const stated = statedFigures(bid.claims, "stated-field-area")
      .filter(({ interval }) => beside(interval, expected) !== "in common")
      .map((figure) => statedOtherArea(bid, figure, area));
    const counted = coverings.flatMap(({ what, words }, index): readonly Found[] => {
      const speaking = lines.filter(({ label }) => words.test(label));
      const counted = speaking.filter(isByArea);
      // a line on carpet and infill is told once
      const told = coverings.slice(0, index).some((earlier) => counted.every(({ label }) => earlier.words.test(label)));
      if (counted.length === 0 || told) return [];
      const total = counted.reduce((sum, { amount }) => sum + areaOf(amount), 0);
      const priced = { low: total, high: total };
      const side = beside(priced, expected);
      // where other lines sell the rest in another measure, what is counted need not be all of it
      if (side === "in common" || (side === "below" && counted.length < speaking.length)) return [];
      const [pricedShown, areaShown] = [spanInPhrase("area", priced), spanInPhrase("area", area)];
      return [
        {
          severity: "needs an answer",
          claims: [],
          priceLines: counted.map(({ id }) => id),
          figures: ["price"],
          told: () => ({
            sentence: say`The price lines count ${pricedShown} of ${what}; the field is ${areaShown}. Usual is the field itself and up to 10 % of cutting waste, a rule of thumb (common practice, no source).`,
            question: say`Your price lines count ${pricedShown} of ${what}, while our field is ${areaShown}. For which area did you reckon, and does the price cover the whole field?`,
            working: {
              formula: "Σ priced areas = area of the field, from 2 % less to 10 % more",
              inputs: [...counted.map((line) => priceLineInput(bid, line)), figureInput("Area of the field", bid.area)],
              assumptions: [
                "Lines are counted by their label, where the bid gives the price and it falls on the base date.",
                "2 % and 10 % are rules of thumb (common practice, no source).",
              ],
              source: "common practice, no source",
            },
          }),
        },
      ];
    });
    return [...stated, ...counted];
  },
};

function statedOtherArea(bid: CheckedBid, { claim, interval }: StatedFigure<"stated-field-area">, area: Span): Found {
  const [statedShown, areaShown] = [spanInPhrase("area", interval), spanInPhrase("area", area)];
  return {
    severity: "needs an answer",
    claims: [claim.id],
    figures: ["price"],
    told: () => ({
      sentence: say`The bid reckons with ${statedShown}; the field is ${areaShown}.`,
      question: say`Your bid reckons with ${statedShown}, while our field is ${areaShown}. What is the price for the whole field?`,
      working: {
        formula: "stated area = area of the field, from 2 % less to 10 % more",
        inputs: [claimInput(bid, claim), figureInput("Area of the field", bid.area)],
        assumptions: ["2 % for measuring and 10 % for cutting waste are rules of thumb (common practice, no source)."],
        source: "common practice, no source",
      },
    }),
  };
}

const isByArea = ({ amount }: Bought): boolean => amount.kind === "per-unit" && amount.quantity.dimension === "area";

const areaOf = (amount: Bought["amount"]): number => (amount.kind === "per-unit" ? amount.quantity.value : 0);
