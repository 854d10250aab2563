import { type DimensionName, formatReading, parseQuantity, type Shown } from "#lib/quantity";

/** How a text was read, in both systems of units: "= 9.60 lb/ft² = 46.87 kg/m²"; null where it does not read. */
export function readingText(
  dimension: DimensionName,
  text: string,
  shownIn: readonly Shown[] = ["us", "metric"],
): string | null {
  const parsed = parseQuantity(dimension, text);
  if (!parsed.ok) return null;
  const shown = shownIn.map((system) => formatReading(dimension, parsed.value.reading, system));
  return [...new Set(shown)].map((reading) => `= ${reading}`).join(" ");
}
