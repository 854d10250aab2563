import { locationLevel, type ReducedCampaign } from "#lib/fieldtest";
import { intervalOfFigure } from "#lib/figure";
import type { In } from "#lib/quantity";

/** Levels of the locations that have three drops. */
const levelsOf = ({ locations }: ReducedCampaign): readonly In<"g">[] =>
  locations.flatMap(({ drops }) => (drops === null ? [] : [locationLevel(drops)]));

/** Mean and spread of a campaign's levels as a form would hold them; empty with fewer than three. */
export function expectedText(reduced: ReducedCampaign | undefined): Readonly<{ mean: string; deviation: string }> {
  const levels = reduced === undefined ? [] : levelsOf(reduced);
  const mean = reduced === undefined ? null : intervalOfFigure(reduced.mean);
  if (levels.length < 3 || mean === null) return { mean: "", deviation: "" };
  const squares = levels.reduce((sum, level) => sum + (level - mean.low) ** 2, 0);
  const deviation = Math.sqrt(squares / (levels.length - 1));
  return { mean: `${mean.low.toFixed(1)} g`, deviation: deviation > 0 ? `${deviation.toFixed(1)} g` : "" };
}
