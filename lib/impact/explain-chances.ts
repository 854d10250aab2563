import type { HardnessChances } from "./hardness-chances";
import type { ChanceOutlook } from "./property/chances";
import { explainPropertyChances, explainPropertyYear, type Told } from "./property/explain-chances";

const ofHardness = (letter: string): Told => ({ letter, dimension: "impactLevel", belowWindow: "softer than" });

/** The chances of a bid's hardness in sentences, for the text beside a table. */
export const explainChances = ({ outlook }: HardnessChances, letter: string): readonly string[] =>
  explainPropertyChances(outlook, ofHardness(letter));

/** What one year holds for hardness, for a slider over the years. */
export const explainChanceYear = (outlook: ChanceOutlook, year: number, letter: string): readonly string[] =>
  explainPropertyYear(outlook, year, ofHardness(letter));
