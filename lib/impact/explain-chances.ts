import type { ChanceBound, HardnessChances } from "./hardness-chances";
import type { ChanceOutlook } from "./property/chances";
import { explainPropertyChances, explainPropertyYear, statedInWords, type Told } from "./property/explain-chances";

const ofHardness = (letter: string, stated: ChanceBound["stated"] | null): Told => {
  return { letter, dimension: "impactLevel", belowWindow: "softer than", stated };
};

/** The chances of a bid's hardness in sentences, for the text beside a table. */
export function explainChances({ outlook, bound }: HardnessChances, letter: string): readonly string[] {
  const told = explainPropertyChances(bound?.outlook ?? outlook, ofHardness(letter, bound?.stated ?? null));
  const [first, ...rest] = told;
  if (bound === null || first === undefined) return told;
  const withThatLevel = `${first.charAt(0).toLowerCase()}${first.slice(1)}`;
  return [
    `Its levels are stated as ${statedInWords[bound.stated]} only, so its chances are bounds. With just that level: ${withThatLevel} The true chance is no ${bound.stated === "at-most" ? "smaller" : "greater"}.`,
    ...rest,
  ];
}

/**
 * What one year holds for hardness, for a slider over the years.
 * @param stated how all levels are stated where the chances are bounds
 */
export const explainChanceYear = (
  outlook: ChanceOutlook,
  year: number,
  letter: string,
  stated: ChanceBound["stated"] | null = null,
): readonly string[] => explainPropertyYear(outlook, year, ofHardness(letter, stated));
