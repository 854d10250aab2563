import { intervalOfFigure, say } from "#lib/figure";
import type { InfillComponent } from "#lib/infill";
import { type Bought, boughtAtBaseDate } from "../bought-at-base-date";
import { infillOnField } from "../infill-on-field";
import { claimInput, figureInput } from "../inputs";
import type { CheckedBid, Found, Rule } from "../model";
import { priceLineInput } from "../price-line-input";
import { beside, quotient, type Span, spanInPhrase, widened } from "../span";
import { statedAsNew } from "../stated-as-new";

/** Room for rounding, for what is left in the bags and for a field that is measured a little differently. */
const deliveryShare = 0.05;

/** The infill that is priced or stated in all has to cover the field at the mass per area of the bid. */
export const tonnageAgainstMass: Rule = {
  id: "tonnage-against-mass",
  title: "The infill tonnage does not fit mass per area and field",
  holds: "infill tonnage in the price lines and in the claims against mass per area times the owner’s field",
  tolerance: "5 % for rounding and left-over material, a rule of thumb (common practice, no source)",
  check: (bid) => [...againstPriced(bid), ...againstStated(bid)],
};

type Weighed = Bought & Readonly<{ mass: number }>;

const speaksOfInfill = ({ text }: Bought): boolean => /\binfill/i.test(text);

function againstPriced(bid: CheckedBid): readonly Found[] {
  const infillLines = boughtAtBaseDate(bid.prices).filter(speaksOfInfill);
  const weighed = infillLines.flatMap((line): readonly Weighed[] =>
    line.amount.kind === "per-unit" && line.amount.quantity.dimension === "mass"
      ? [{ ...line, mass: line.amount.quantity.value }]
      : [],
  );
  if (weighed.length === 0) return [];
  const covered = coveredBy(weighed, bid.infill.components);
  const onField = infillOnField(bid, covered);
  const needed = intervalOfFigure(onField);
  if (needed === null) return [];
  const total = weighed.reduce((sum, { mass }) => sum + mass, 0);
  const priced = { low: total, high: total };
  const side = beside(priced, widened(needed, deliveryShare));
  // where other lines sell infill too, what is weighed need not be all of it
  if (side === "in common" || (side === "below" && weighed.length < infillLines.length)) return [];
  const [pricedShown, neededShown] = [spanInPhrase("mass", priced), spanInPhrase("mass", needed)];
  const what = covered.map(({ material }) => material.label.toLowerCase()).join(" and ");
  const of = covered.length === 0 || covered.length === bid.infill.components.length ? "infill" : what;
  return [
    {
      severity: "needs an answer",
      claims: [],
      priceLines: weighed.map(({ id }) => id),
      figures: ["infill mass", "price"],
      told: () => ({
        sentence: say`The price lines count ${pricedShown} of ${of}; at the stated mass per area the field takes ${neededShown}.`,
        question: say`Your price lines count ${pricedShown} of ${of}, while your mass per area comes to ${neededShown} on our field. Which quantity is delivered for that price, and over which area?`,
        working: {
          formula: "Σ quantities of the price lines = mass per area × area of the field, within 5 %",
          inputs: [
            ...weighed.map((line) => priceLineInput(bid, line)),
            figureInput(`Mass of ${of} on the field`, onField),
          ],
          assumptions: [
            "Lines are counted where label or note speaks of infill, the bid gives the price and it falls on the base date.",
            "Where a line names a material, it is held against that component alone.",
            "5 % is a rule of thumb (common practice, no source).",
          ],
          source: "derived from the definition of mass per area",
        },
      }),
    },
  ];
}

/** The components that the lines name; all of them where a line speaks of infill and names no material. */
function coveredBy(lines: readonly Weighed[], components: readonly InfillComponent[]): readonly InfillComponent[] {
  const named = lines.map(({ text }) => components.filter((component) => isNamedIn(text, component)));
  if (named.some((found) => found.length === 0)) return components;
  return components.filter((component) => named.some((found) => found.includes(component)));
}

/** The words of the material's id: a line on “sand” speaks of every sand. */
const isNamedIn = (text: string, { material }: InfillComponent): boolean => {
  const written = new Set(text.toLowerCase().split(/[^\p{L}]+/u));
  return material.id.split("-").some((word) => word !== "own" && written.has(word));
};

function againstStated(bid: CheckedBid): readonly Found[] {
  const stated = statedAsNew(bid, "infill-total-mass");
  const onField = infillOnField(bid, bid.infill.components);
  const needed = intervalOfFigure(onField);
  const area = intervalOfFigure(bid.area);
  if (stated === null || needed === null || area === null) return [];
  const side = beside(stated.span, widened(needed, deliveryShare));
  if (side === "in common") return [];
  const [statedShown, neededShown] = [spanInPhrase("mass", stated.span), spanInPhrase("mass", needed)];
  const over = areaFor(stated.span, needed, area);
  const suits = over === null ? say`` : say` The stated mass would suit an area of ${spanInPhrase("area", over)}.`;
  return [
    {
      severity: "needs an answer",
      claims: [stated.claim.id],
      figures: ["infill mass"],
      overClaims: side === "above" ? [stated.claim.id] : [],
      told: () => ({
        sentence: say`The bid states ${statedShown} of infill for the field; at its mass per area the field takes ${neededShown}.${suits}`,
        question: say`You state ${statedShown} of infill for the field, while your mass per area comes to ${neededShown} on our field of ${spanInPhrase("area", area)}. Which mass is delivered, and for which area did you reckon?`,
        working: {
          formula: "total infill mass = mass per area × area of the field, within 5 %",
          inputs: [
            claimInput(bid, stated.claim),
            figureInput("Mass of infill on the field", onField),
            figureInput("Area of the field", bid.area),
          ],
          assumptions: ["5 % is a rule of thumb (common practice, no source)."],
          source: "derived from the definition of mass per area",
        },
      }),
    },
  ];
}

/** The area in m² over which a mass would lie at the mass per area of the bid; null where one of the two is open. */
function areaFor(mass: Span, onField: Span, area: Span): Span | null {
  const perArea = quotient(onField, area);
  const over = quotient(mass, perArea);
  return Number.isFinite(over.high) && perArea.low > 0 ? over : null;
}
