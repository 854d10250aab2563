import { type Figure, intervalOfFigure, unknown, type Working } from "#lib/figure";
import { intervalOf } from "#lib/quantity";
import { boundedFigure } from "./bounded-figure";
import { inBoth, readingInBoth } from "./component";
import type { ClaimedLength } from "./model";
import { difference, notNegative, quotient } from "./span";

const workingOf = (formula: string, pile: ClaimedLength, depth: string, source: string): Working => ({
  formula,
  inputs: [
    { label: "pile height", text: readingInBoth("length", pile.reading), from: pile.from },
    { label: "infill depth", text: depth, from: { kind: "figure", figure: "infill-depth" } },
  ],
  assumptions: ["The pile stands upright."],
  source,
});

/** Length of fibre above the infill, in m. Below 0 the infill would bury the pile: the claims don't go together. */
export function freePile(pile: ClaimedLength, depth: Figure<"length">): Figure<"length"> {
  if (depth.kind === "unknown") return depth;
  const infill = intervalOfFigure(depth);
  if (infill === null) return depth;
  const working = workingOf(
    "free pile = pile height − infill depth",
    pile,
    inBoth("length", infill),
    "derived from geometry",
  );
  const span = difference(notNegative(intervalOf(pile.reading)), infill);
  return boundedFigure("length", span, working, "a pile height and an infill depth with limits");
}

/** Infill depth as a share of the pile height. */
export function fillRatio(pile: ClaimedLength, depth: Figure<"length">): Figure<"fraction"> {
  if (depth.kind === "unknown") return unknown("fraction", depth.because);
  const infill = intervalOfFigure(depth);
  if (infill === null) return unknown("fraction", { kind: "missing-input", what: "the infill depth" });
  const height = notNegative(intervalOf(pile.reading));
  if (!(height.high > 0)) return unknown("fraction", { kind: "missing-input", what: "a pile height above 0" });
  const working = workingOf(
    "fill ratio = infill depth ÷ pile height",
    pile,
    inBoth("length", infill),
    "derived from geometry",
  );
  return boundedFigure(
    "fraction",
    quotient(notNegative(infill), height),
    working,
    "a pile height and an infill depth with limits",
  );
}
