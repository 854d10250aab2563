import { inSentence, type Plausible, propertyOf } from "#lib/claim";
import { quantityInPhrase, say } from "#lib/figure";
import { type DimensionDefinition, dimensions, intervalOf, type Quantity } from "#lib/quantity";
import { claimInput, constantInput, inBoth } from "../inputs";
import type { Rule } from "../model";
import { beside, type Span, tagged } from "../span";

/** A figure that is far from anything usual is more likely a slip of unit or digit than a product. */
export const implausibleFigure: Rule = {
  id: "implausible-figure",
  title: "A figure far from what is usual",
  holds: "every figure against the band in which such figures usually lie",
  tolerance: "none beyond the band; bands are wide, and each names its source",
  check: (bid) =>
    bid.claims.flatMap((claim) => {
      const property = propertyOf(claim.property);
      if (claim.value.kind !== "quantity" || property.kind !== "quantity" || property.plausible === null) return [];
      const { quantity } = claim.value;
      const { dimension } = quantity;
      const band: Plausible = property.plausible;
      const stated: Span = intervalOf<string>(quantity.reading);
      if (beside(stated, band) === "in common") return [];
      const label = inSentence(property.label);
      const usual = otherUnits(quantity, stated, band).slice(0, 1);
      const hint = usual.map((unit) => ` With the unit “${unit}” it would be usual.`).join("");
      const [statedShown, bandShown] = [stated, band].map((span) =>
        quantityInPhrase(dimension, tagged(dimension, span), property.shownIn),
      );
      if (statedShown === undefined || bandShown === undefined) return [];
      return [
        {
          severity: "needs an answer" as const,
          claims: [claim.id],
          told: () => ({
            sentence: say`The bid states a ${label} of ${statedShown}, written as “${quantity.asEntered}”; usual is ${bandShown} (${band.source}). A slip of unit or digit is likely.${hint}`,
            question: say`Your bid gives “${quantity.asEntered}” for ${label}, while usual is ${bandShown}. Are figure and unit as you mean them?`,
            working: {
              formula: "the figure within the band in which such figures usually lie",
              inputs: [claimInput(bid, claim), constantInput("Usual band", inBoth(dimension, tagged(dimension, band)))],
              assumptions: ["The band is no limit: a product outside it is possible and then worth a question."],
              source: band.source,
            },
          }),
        },
      ];
    }),
};

/** Units in which the number as written would lie in the band. */
function otherUnits({ dimension, unit: own }: Quantity, stated: Span, band: Span): readonly string[] {
  const definition: DimensionDefinition = dimensions[dimension];
  const written = definition.units[own];
  if (written === undefined) return [];
  return Object.entries(definition.units).flatMap(([symbol, { factor, zero = 0 }]) => {
    const inOther = (si: number) => zero + ((si - (written.zero ?? 0)) / written.factor) * factor;
    const read = { low: inOther(stated.low), high: inOther(stated.high) };
    return symbol !== own && symbol !== "" && beside(read, band) === "in common" ? [symbol] : [];
  });
}
