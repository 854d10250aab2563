import type { DepthLaw } from "./depth-law";
import type { Reset } from "./effective-age";
import type { ImpactRequirement, SpreadChoice } from "./model";
import { equalSprings, type ShockLayerFactor } from "./spread/field-sensitivity";

/** Where a choice comes from: the owner, or what this program starts from. */
export type SetBy = "owner" | "starting-value";

/** The owner's choices with every gap filled, each with who set it. */
export type OutlookChoices = Readonly<{
  spread: SpreadChoice;
  law: DepthLaw;
  shockLayer: ShockLayerFactor;
  resets: readonly Reset[];
  setBy: Readonly<Record<"spread" | "law" | "shockLayer" | "resets", SetBy>>;
}>;

/**
 * @source starting values: growth by a constant share per depth lost and grooming every month are common practice, no
 * source; no resets
 */
export function outlookChoices({ outlook = {} }: Pick<ImpactRequirement, "outlook">): OutlookChoices {
  const { spread, law, shockLayer, resets } = outlook;
  const setBy = (choice: unknown): SetBy => (choice === undefined ? "starting-value" : "owner");
  return {
    spread: spread ?? startingOutlookText.spread,
    law: law ?? startingOutlookText.law,
    shockLayer:
      shockLayer?.kind !== "owners-value"
        ? equalSprings
        : { factor: shockLayer.factor.value, source: `owner's value: ${shockLayer.reason}` },
    resets: (resets ?? []).map(({ year, undone }) => ({ year, undone: undone.value })),
    setBy: { spread: setBy(spread), law: setBy(law), shockLayer: setBy(shockLayer), resets: setBy(resets) },
  };
}

/**
 * How sure the owner wants the limit to be kept; the chance of a stated range where nothing else was set, as in what was
 * stored while both were one figure.
 */
export const wantedChance = ({
  outlook,
  chanceLevel,
}: Pick<ImpactRequirement, "outlook" | "chanceLevel">): ImpactRequirement["chanceLevel"] =>
  outlook?.wantedChance ?? chanceLevel;

/** The same choices as text, for a form that shows them before anybody set one. */
export const startingOutlookText = {
  spread: { kind: "by-class", grooming: "every-month" },
  installedSpread: "without-grid",
  law: "log-linear",
  shockLayer: { kind: "as-soft-as-the-infill" },
  resets: [],
} as const;
