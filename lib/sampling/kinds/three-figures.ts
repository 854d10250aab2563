import type { DistributionTerms, WrittenFigure } from "../model";
import { countProblem, orderProblem } from "./figure-order";

export const threeWritten = { written: "lowest / most likely / highest", example: "4.20 / 4.85 / 6.00" } as const;

/** Lowest, most likely and highest from figures as written, or the sentence that helps. */
export function threeFigures(figures: readonly WrittenFigure[]): DistributionTerms["triangular"] | string {
  const [low, likely, high] = figures;
  if (low === undefined || likely === undefined || high === undefined || figures.length !== 3)
    return countProblem(figures, 3, threeWritten);
  const problem = orderProblem(figures, ["lowest", "most likely", "highest"]);
  return problem ?? { low: low.value, likely: likely.value, high: high.value };
}
