import { depthLaws, levelAfterDepthLoss, type Sensitivity } from "#lib/impact";
import { type In, type Interval, measured } from "#lib/quantity";

/** Losses to look at, up to the largest that the rule of thumb speaks of. */
export const depthLosses: readonly In<"m">[] = [0.25, 0.5, 0.75].map((inches) => measured("length", inches, "in"));

type Applying = Extract<Sensitivity, { kind: "applies" }>;

/** From the softest end by the milder reading of the rule to the hardest end by the stronger one. */
export function levelAfterLoss(
  level: Interval<"g">,
  loss: In<"m">,
  { perDepth, range = { low: perDepth, high: perDepth } }: Applying,
): Interval<"g"> {
  const after = (end: In<"g">) =>
    [range.low, range.high].flatMap((k) => depthLaws.map((law) => levelAfterDepthLoss(end, loss, law, k)));
  return {
    low: measured("impactLevel", Math.min(...after(level.low))),
    high: measured("impactLevel", Math.max(...after(level.high))),
  };
}

/** How a level stands to a limit that it has to stay below. */
export function standingToLimit({ low, high }: Interval<"g">, limit: In<"g">): "below" | "may reach" | "reached" {
  if (low >= limit) return "reached";
  return high >= limit ? "may reach" : "below";
}
