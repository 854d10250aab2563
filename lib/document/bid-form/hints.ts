import type { Property } from "#lib/claim";
import { type DimensionDefinition, type DimensionName, dimensions } from "#lib/quantity";

/** At most so many units are named: those of the readers first, then what else the trade writes. */
const unitsNamed = 8;

/** The units in which a figure may be written: "in, mm, ft, m". Empty for plain numbers. */
function unitsOf(dimension: DimensionName): string {
  const { us, metric, units }: DimensionDefinition = dimensions[dimension];
  return [...new Set([us.unit, metric.unit, ...Object.keys(units)])]
    .filter((unit) => unit !== "" && unit !== "1")
    .slice(0, unitsNamed)
    .join(", ");
}

/** What is asked of a property and how an answer is written. */
export function askedOf(property: Property): string {
  return `${property.question} ${writtenAs(property)}`;
}

function writtenAs(property: Property): string {
  switch (property.kind) {
    case "quantity": {
      const units = unitsOf(property.dimension);
      return units === "" ? "A plain number." : `One figure with its unit: ${units}.`;
    }
    case "choice":
      return "Choose one answer of the list.";
    case "words":
      return "In a few words.";
  }
}
