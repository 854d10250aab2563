import type { HardnessChances } from "./hardness-chances";
import type { ChanceOutlook } from "./property/chances";
import { explainPropertyChances, explainPropertyYear, type Told } from "./property/explain-chances";

const ofHardness = (letter: string): Told => ({ letter, dimension: "impactLevel", belowWindow: "softer than" });

/** The chances of a bid's hardness in sentences, for the text beside a table. */
export function explainChances({ outlook, bound }: HardnessChances, letter: string): readonly string[] {
  const told = explainPropertyChances(bound?.outlook ?? outlook, ofHardness(letter));
  const [first, ...rest] = told;
  if (bound === null || first === undefined) return told;
  const { stated, size } = sides[bound.stated];
  return [
    `Its levels are stated as ${stated} only, so its chances are bounds. With just that level: ${first.charAt(0).toLowerCase()}${first.slice(1)} The true chance is no ${size}.`,
    ...rest,
  ];
}

const sides = {
  "at-most": { stated: "at most", size: "smaller" },
  "at-least": { stated: "at least", size: "greater" },
} as const;

/** What one year holds for hardness, for a slider over the years. */
export const explainChanceYear = (outlook: ChanceOutlook, year: number, letter: string): readonly string[] =>
  explainPropertyYear(outlook, year, ofHardness(letter));
