import { type DimensionName, formatValue, measured, type Shown } from "#lib/quantity";

/** A figure as it is shown under a head that names the unit. Both together are the figure in words. */
export type NumberAndUnit = Readonly<{ text: string; unit: string }>;

/** Some figure of the dimension as it is written, to see where its unit stands: "39,370.08 in", "$0.93/ft²", "3.2 years". */
const written = (dimension: DimensionName, shown: Shown): string =>
  formatValue(dimension, measured(dimension, 1000), shown);

/** What a row's head says after its label: "in", "$/ft²", "years", "per in". Empty for plain numbers. */
export const unitInHead = (dimension: DimensionName, shown: Shown): string =>
  written(dimension, shown)
    .replace(/\d[\d.,]*/, "")
    .replace("−", "")
    .trim();

/** A formatted figure parted from its unit. A sign of money stays with its number; words have no unit. */
export function numberAndUnit(figure: string, dimension: DimensionName, shown: Shown): NumberAndUnit {
  const several = written(dimension, shown).replace(/^.*\d/, "");
  const unit = [several, several.replace(/s$/, "")].find((ending) => ending !== "" && figure.endsWith(ending)) ?? "";
  return { text: figure.slice(0, figure.length - unit.length), unit };
}
