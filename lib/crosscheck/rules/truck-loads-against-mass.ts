import { propertyOf } from "#lib/claim";
import { intervalOfFigure, say, type WorkingInput } from "#lib/figure";
import { usualPayload } from "#lib/infill";
import { formatValue, measured } from "#lib/quantity";
import { boughtAtBaseDate } from "../bought-at-base-date";
import { infillOnField } from "../infill-on-field";
import { claimInput, constantInput, figureInput } from "../inputs";
import type { CheckedBid, Found, Rule } from "../model";
import { priceLineInput } from "../price-line-input";
import { beside, quotient, type Span, spanInPhrase } from "../span";
import { statedFigures } from "../stated-figures";

/**
 * What a truck carries at most on public roads, in kg: a gross weight of 80,000 lb less some 30,000 lb of empty truck.
 * @source gross weight: 23 U.S.C. 127; empty weight from memory
 */
const mostPayload = measured("mass", 25, "short ton");
/** Below this a truck is half empty. */
const leastPayload = measured("mass", usualPayload.value / 2);
const bandText = [leastPayload, mostPayload].map((value) => formatValue("mass", value, "us")).join(" to ");

/** Truck loads that a bid counts, and where it says so. */
type Loads = Readonly<{ count: Span; found: Pick<Found, "claims" | "priceLines">; input: WorkingInput }>;

/** The truck loads that a bid counts have to carry its infill, neither overloaded nor half empty. */
export const truckLoadsAgainstMass: Rule = {
  id: "truck-loads-against-mass",
  title: "The truck loads do not fit the infill mass",
  holds: "truck loads of infill as claimed, in price lines and in quoted words, against the infill mass on the field",
  tolerance: `${bandText} a truck, a rule of thumb (common practice, no source; gross weight of trucks: 23 U.S.C. 127)`,
  check: (bid) => {
    const onField = infillOnField(bid, bid.infill.components);
    const mass = intervalOfFigure(onField);
    if (mass === null) return [];
    return [...pricedLoads(bid), ...statedLoads(bid), ...quotedLoads(bid)].flatMap(
      ({ count, found, input }): readonly Found[] => {
        const perTruck = quotient(mass, count);
        const side = beside(perTruck, { low: leastPayload, high: mostPayload });
        if (side === "in common") return [];
        const [massShown, truckShown] = [spanInPhrase("mass", mass), spanInPhrase("mass", perTruck)];
        const verdict =
          side === "above"
            ? say`A truck carries about ${spanInPhrase("mass", { low: usualPayload.value, high: usualPayload.value })}, a rule of thumb (common practice, no source).`
            : "Such trucks would be more than half empty.";
        return [
          {
            severity: side === "above" ? "needs an answer" : "note",
            ...found,
            figures: ["infill mass"],
            told: () => ({
              sentence: say`The bid counts ${spanInPhrase("count", count)} truck loads for ${massShown} of infill, which is ${truckShown} a truck. ${verdict}`,
              question: say`You count ${spanInPhrase("count", count)} truck loads, while your infill comes to ${massShown} on our field. How much does each load carry, and is all of the infill among them?`,
              working: {
                formula: "mass of a load = infill mass on the field ÷ truck loads",
                inputs: [
                  input,
                  figureInput("Mass of infill on the field", onField),
                  constantInput("Usual load", bandText),
                ],
                assumptions: [
                  "All loads carry infill and are alike.",
                  "An empty truck weighs about 30,000 lb (from memory); half of a usual load is a rule of thumb (common practice, no source).",
                ],
                source: "gross weight of 80,000 lb: 23 U.S.C. 127; usual load: common practice, no source",
              },
            }),
          },
        ];
      },
    );
  },
};

const pricedLoads = (bid: CheckedBid): readonly Loads[] =>
  boughtAtBaseDate(bid.prices).flatMap((line) => {
    const { amount, text, id } = line;
    if (amount.kind !== "per-unit" || amount.quantity.dimension !== "count" || !/\binfill/i.test(text)) return [];
    if (!/load|truck/i.test(`${text} ${amount.quantity.asEntered}`) || !(amount.quantity.value > 0)) return [];
    const input = priceLineInput(bid, line);
    const { value } = amount.quantity;
    return [{ count: { low: value, high: value }, found: { claims: [], priceLines: [id] }, input }];
  });

const statedLoads = (bid: CheckedBid): readonly Loads[] =>
  statedFigures(bid.claims, "infill-truck-loads").map(({ claim, interval: { low, high } }) => ({
    count: { low: Math.max(low, 0), high },
    found: { claims: [claim.id] },
    input: claimInput(bid, claim),
  }));

const written = /\b(\d{1,3})\s+(?:full\s+)?(?:truck|lorry|trailer)[\s-]?loads?\b/i;

const quotedLoads = (bid: CheckedBid): readonly Loads[] =>
  bid.claims.flatMap((claim) => {
    if (propertyOf(claim.property).group !== "infill") return [];
    const count = Number(written.exec(claim.words)?.[1]);
    if (!(count > 0)) return [];
    const input = { ...claimInput(bid, claim), text: `“${claim.words}”` };
    return [{ count: { low: count, high: count }, found: { claims: [claim.id] }, input }];
  });
