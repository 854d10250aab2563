import { say, type WorkingInput } from "#lib/figure";
import type { InfillComponent } from "#lib/infill";
import { formatReading, intervalOf, type Reading } from "#lib/quantity";
import { constantInput, inBoth } from "../inputs";
import type { CheckedBid, Found, Rule } from "../model";
import { beside, spanInPhrase, widened } from "../span";

/** The band of a material is from memory, so its ends are soft. */
const bandShare = 0.1;

/** A stated loose density is one that a bed of that material can have. */
export const bulkDensityImplausible: Rule = {
  id: "bulk-density-implausible",
  title: "A loose density that the material hardly has",
  holds: "the stated loose density of each component against the band of its material and the density of its grains",
  tolerance: "none against the grains; 10 % beyond the band, a rule of thumb (common practice, no source)",
  check: (bid) =>
    bid.infill.components.flatMap((component) =>
      component.bulkDensity === null ? [] : checkedDensity(bid, component, component.bulkDensity),
    ),
};

function checkedDensity(
  bid: CheckedBid,
  { id, material }: InfillComponent,
  reading: Reading<"kg/m³">,
): readonly Found[] {
  const stated = intervalOf(reading);
  const grains = material.particleDensity;
  const asGrains = beside(stated, grains) === "above" || stated.low === grains.high;
  if (!asGrains && beside(stated, widened(material.bulkDensity, bandShare)) === "in common") return [];
  const [statedShown, grainsShown, bandShown] = [stated, grains, material.bulkDensity].map((span) =>
    spanInPhrase("bulkDensity", span),
  );
  if (statedShown === undefined || grainsShown === undefined || bandShown === undefined) return [];
  const name = `“${material.label}”`;
  return [
    {
      severity: asGrains ? "can't be true" : "needs an answer",
      claims: [],
      keyedBy: [id],
      figures: ["infill depth"],
      told: () => ({
        sentence: asGrains
          ? say`The bid states a loose density of ${statedShown} for ${name}, whose grains have ${grainsShown}. A bed holds voids, so it is lighter than its grains.`
          : say`The bid states a loose density of ${statedShown} for ${name}; usual is ${bandShown} (from memory).`,
        question: say`You state a loose density of ${statedShown} for ${name}. Is it the loose density of the bed, by which method was it measured, and where is the report?`,
        working: {
          formula: asGrains
            ? "loose density of a bed < density of its grains"
            : "loose density within the band of the material",
          inputs: [
            statedInput(bid, id, reading),
            constantInput("Usual loose density", inBoth("bulkDensity", material.bulkDensity)),
            constantInput("Density of the grains", inBoth("bulkDensity", grains)),
          ],
          assumptions: asGrains
            ? [`Density of the grains: ${grains.source}.`]
            : ["Up to 10 % beyond the band is taken as usual, a rule of thumb (common practice, no source)."],
          source: asGrains ? "geometry: a bed of grains holds voids" : material.bulkDensity.source,
        },
      }),
    },
  ];
}

const statedInput = ({ id: bid }: CheckedBid, component: string, reading: Reading<"kg/m³">): WorkingInput => ({
  label: "Stated loose density",
  text: `${formatReading("bulkDensity", reading, "us")} (${formatReading("bulkDensity", reading, "metric")})`,
  from: { kind: "infill-component", bid, component },
});
