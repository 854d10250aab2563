import { type Figure, unknown, type Working } from "#lib/figure";
import { difference, type Interval, intervalOf, notNegative, quotient } from "#lib/quantity";
import { boundedFigure, derivedFrom } from "./bounded-figure";
import { inBoth, readingInBoth } from "./component";
import type { ClaimedLength } from "./model";

const heightOf = ({ reading }: ClaimedLength) => notNegative(intervalOf(reading));

const workingOf = (formula: string, pile: ClaimedLength, depth: Interval<"m">): Working => ({
  formula,
  inputs: [
    { label: "pile height", text: readingInBoth("length", pile.reading), from: pile.from },
    { label: "infill depth", text: inBoth("length", depth), from: { kind: "figure", figure: "infill-depth" } },
  ],
  assumptions: ["The pile stands upright."],
  source: "derived from geometry",
});

const closing = "a pile height and an infill depth with limits";

/** Length of fibre above the infill, in m. Below 0 the infill would bury the pile: the claims don't go together. */
export const freePile = (pile: ClaimedLength, depth: Figure<"length">): Figure<"length"> =>
  derivedFrom(depth, "length", (infill) => {
    const working = () => workingOf("free pile = pile height − infill depth", pile, infill);
    return boundedFigure("length", difference(heightOf(pile), infill), working, closing);
  });

/** Infill depth as a share of the pile height. */
export const fillRatio = (pile: ClaimedLength, depth: Figure<"length">): Figure<"fraction"> =>
  derivedFrom(depth, "fraction", (infill) => {
    const height = heightOf(pile);
    if (!(height.high > 0)) return unknown("fraction", { kind: "missing-input", what: "a pile height above 0" });
    const working = () => workingOf("fill ratio = infill depth ÷ pile height", pile, infill);
    return boundedFigure("fraction", quotient(notNegative(infill), height), working, closing);
  });
