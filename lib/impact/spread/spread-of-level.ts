import { formatValue, type In, measured } from "#lib/quantity";
import type { LocalSpread } from "../chance/local-spread";
import { normalShare } from "../chance/normal";
import type { DepthLaw } from "../depth-law";
import { linearSlope } from "../depth-loss";
import { halfInchRule } from "../depth-sensitivity";

/**
 * What a spread of depth makes of the level over the field: for small deviations the level spreads by sensitivity ×
 * deviation as a share of itself. A sensitivity below 0 (softer where infill is lost) spreads it just as wide.
 */
export function spreadOfLevel(perDepth: In<"1/m">, deviation: In<"m">, law: DepthLaw): LocalSpread {
  const share = Math.abs((law === "log-linear" ? perDepth : linearSlope(perDepth)) * deviation);
  return { kind: "share", law, deviation: share };
}

export type ValidityQuestion = Readonly<{
  deviation: In<"m">;
  law: DepthLaw;
  perDepth: In<"1/m">;
  /** Full infill depth as new; null where it is not known. */
  infillDepth: In<"m"> | null;
  /** The largest loss that the sensitivity speaks of, and whose it is. */
  largestLoss?: In<"m">;
  ofOwnLevels?: boolean;
}>;

/** Shares below this are not worth a sentence: fewer than one spot in a thousand. */
const worthSaying = 0.001;

/** Where the law of depth stops being true for such a spread, in sentences; none where nothing is to be said. */
export function spreadValidity({
  deviation,
  law,
  perDepth,
  infillDepth,
  largestLoss: largest = halfInchRule.validFor.largestLoss,
  ofOwnLevels = false,
}: ValidityQuestion): readonly string[] {
  const lostMoreThan = (depth: number) => 1 - normalShare(depth / deviation);
  const beyondRule = lostMoreThan(largest);
  const onBase = infillDepth === null ? 0 : lostMoreThan(infillDepth);
  const emptyAt = law === "linear" ? 1 / Math.abs(linearSlope(perDepth)) : Number.POSITIVE_INFINITY;
  const notes: string[] = [];
  if (infillDepth !== null && onBase > worthSaying) {
    notes.push(
      `${percent(onBase)} of the spots would have lost more than the whole infill depth of ${bothSystems(infillDepth)}: there the carpet lies on the base and no law of depth holds.`,
    );
  }
  if (beyondRule > worthSaying) {
    notes.push(
      `${percent(beyondRule)} of the spots would have lost more than ${bothSystems(largest)}, which is beyond ${ofOwnLevels ? "the depths at which the bid gives levels" : "the range of the rule of thumb"}.`,
    );
  }
  if (lostMoreThan(emptyAt) > worthSaying) {
    notes.push(
      `By the linear law ${percent(lostMoreThan(emptyAt))} of the spots would have no level left where infill has gathered: the law does not reach that far.`,
    );
  }
  return notes;
}

const percent = (share: number): string => formatValue("fraction", measured("fraction", share), "us");
const bothSystems = (length: In<"m">): string =>
  `${formatValue("length", length, "us")} (${formatValue("length", length, "metric")})`;
