import { formatValue, measured, succeeded } from "#lib/quantity";
import { addedLine } from "./added-line";
import { notGiven, parameterInput, workedOut } from "./inputs";
import type { TechnicalLink } from "./model";

/** Water to cool the surface on hot days. */
export const coolingWater: TechnicalLink = {
  id: "cooling-water",
  label: "Water for cooling",
  does: "Takes a depth of water over the field for each cooling and prices it by volume.",
  parameters: ["coolingDepth", "coolingsPerYear", "waterPrice"],
  byName: { words: /\bwater\b/i, paid: "again" },
  item: null,
  category: "operation-and-maintenance",
  compute: ({ facts, parameters: { coolingDepth, coolingsPerYear, waterPrice } }) => {
    if (coolingDepth === null) return notGiven("the depth of water of one cooling");
    if (coolingsPerYear === null) return notGiven("the number of coolings a year");
    if (waterPrice === null) return notGiven("the price of water by volume");
    const volume = measured("volume", coolingDepth.value * facts.area * coolingsPerYear.value);
    return succeeded({
      kind: "adds",
      line: addedLine(coolingWater, {
        ...{ kind: "yearly", from: null, to: null, escalation: null },
        amount: { kind: "per-unit", quantity: workedOut("volume", volume), unitPrice: waterPrice },
      }),
      working: {
        formula: "water a year = depth × area × coolings a year × price by volume",
        inputs: [
          parameterInput("Depth of one cooling", "coolingDepth", coolingDepth),
          {
            label: "Area of the field",
            text: formatValue("area", facts.area, "us"),
            from: { kind: "figure", figure: "fieldArea" },
          },
          parameterInput("Coolings a year", "coolingsPerYear", coolingsPerYear),
          parameterInput("Price of water", "waterPrice", waterPrice),
        ],
        assumptions: [],
        source: "derived",
      },
    });
  },
};
