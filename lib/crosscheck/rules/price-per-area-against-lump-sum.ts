import { type Claim, quantityOf } from "#lib/claim";
import { type Amount, amountCents } from "#lib/cost";
import { intervalOfFigure, say } from "#lib/figure";
import { dimensions, type Interval } from "#lib/quantity";
import { boughtAtBaseDate } from "../bought-at-base-date";
import { claimInput, constantInput, figureInput } from "../inputs";
import type { Rule } from "../model";
import { priceLineInput } from "../price-line-input";
import { beside, productOf, quotient, type Span, spanInPhrase, sumOf } from "../span";
import { statedAsNew } from "../stated-as-new";

/** With more lines than this almost any price would be the sum of some of them. */
const mostLines = 8;

/** A stated price per area times the area is what the price lines come to, all of them or some. */
export const pricePerAreaAgainstLumpSum: Rule = {
  id: "price-per-area-against-lump-sum",
  title: "The stated price per area does not give the price",
  holds: "the stated price per area times the field against the prices that fall on the base date",
  tolerance: "half a cent per unit of area, for rounding",
  check: (bid) => {
    const stated = statedAsNew(bid, "price-per-area-stated");
    const area = intervalOfFigure(bid.area);
    const lines = boughtAtBaseDate(bid.prices);
    if (stated === null || area === null || lines.length === 0 || lines.length > mostLines) return [];
    const rounded = withRoom(stated.span, halfCent(stated.claim));
    const product = productOf([rounded, area]);
    const costs = lines.map(({ amount }) => costOf(amount, area));
    if (sumsOf(costs).some((sum) => beside(sum, product) === "in common")) return [];
    const total = sumOf(costs);
    const perArea = productOf([stated.span, area]);
    const suits = quotient(total, stated.span);
    const [statedShown, totalShown] = [spanInPhrase("moneyPerArea", stated.span), spanInPhrase("money", total)];
    const areaShown = spanInPhrase("area", area);
    return [
      {
        severity: "needs an answer",
        claims: [stated.claim.id],
        priceLines: lines.map(({ id }) => id),
        figures: ["price"],
        told: () => ({
          sentence: say`The bid states ${statedShown}, which is ${spanInPhrase("money", perArea)} over the field of ${areaShown}; its price lines at the base date come to ${totalShown}. The stated price would suit an area of ${spanInPhrase("area", suits)}.`,
          question: say`You state ${statedShown}, while your prices at the base date come to ${totalShown} for our field of ${areaShown}. What does the price per area cover, and for which area did you reckon?`,
          working: {
            formula: "price per area × area = Σ prices at the base date, or the sum of some of them",
            inputs: [
              claimInput(bid, stated.claim),
              figureInput("Area of the field", bid.area),
              ...lines.map((line) => priceLineInput(bid, line)),
              constantInput("Room for rounding", "half a cent per unit of area"),
            ],
            assumptions: [
              "Only prices that the bid itself gives count; credits and removal are left out.",
              "The price per area may be that of some of the lines: every combination was tried.",
            ],
            source: "arithmetic",
          },
        }),
      },
    ];
  },
};

/** Half a cent per unit of area as it was written, in cents per m². */
function halfCent(claim: Claim): number {
  const unit = quantityOf(claim, "price-per-area-stated")?.unit ?? "";
  const factors = new Map(
    Object.entries(dimensions.moneyPerArea.units).map(([symbol, { factor }]) => [symbol, factor]),
  );
  return (factors.get(unit) ?? 0) * (unit.startsWith("$") ? 0.005 : 0.5);
}

const withRoom = ({ low, high }: Span, room: number): Span => ({ low: low - room, high: high + room });

const costOf = (amount: Amount, area: Interval<"m²">): Span => ({
  low: amountCents(amount, area.low),
  high: amountCents(amount, area.high),
});

/** Every sum of some of the costs, or of all. */
function sumsOf([cost, ...rest]: readonly Span[]): readonly Span[] {
  if (cost === undefined) return [];
  const others = sumsOf(rest);
  return [cost, ...others, ...others.map((sum) => sumOf([cost, sum]))];
}
