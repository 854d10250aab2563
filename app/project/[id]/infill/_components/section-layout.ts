import type { CrossSection, Thickness } from "#lib/infill";
import type { MaterialClass } from "#lib/material";
import type { Interval } from "#lib/quantity";

/** One band of the drawing. Heights in m above the carpet backing, below it negative. */
export type Band = Readonly<{
  kind: "shock-layer" | "infill";
  label: string;
  /** What the grains are made of, each class once; empty for a shock layer. */
  classes: readonly MaterialClass[];
  bottom: number;
  top: number;
  thickness: Thickness;
}>;

/** Everything to draw of one bid, in m, with the carpet backing at 0. */
export type SectionLayout = Readonly<{
  bands: readonly Band[];
  /** Top of the prepared base: 0, or lower by the shock layer. */
  base: number;
  /** Top of the infill as drawn. */
  surface: number;
  /** Height of the pile; null where the bid does not state it. */
  pile: number | null;
  /** The shallowest and the deepest that the infill may lie, where they differ and are known. */
  shallowest: number | null;
  deepest: number | null;
}>;

/**
 * Stacks the layers of a bid: the shock layer hangs below the backing, the infill stands on it.
 * @param depth range of the infill depth; null where it is unknown
 * @param classOf what a component is made of, by its id
 */
export function sectionLayout(
  { layers, pileHeight }: CrossSection,
  depth: Interval<"m"> | null,
  classOf: (component: string) => MaterialClass | undefined,
): SectionLayout {
  const under = layers.filter(({ kind }) => kind === "shock-layer");
  const base = under.reduce((height, { thickness }) => height - thickness.likely, 0);
  let height = base;
  const bands = layers.map(({ kind, label, components, thickness }): Band => {
    const bottom = height;
    height += thickness.likely;
    const classes = [...new Set(components.flatMap((component) => classOf(component) ?? []))];
    return { kind, label, classes, bottom, top: height, thickness };
  });
  const ranges = depth !== null && depth.low < depth.high;
  return {
    bands,
    base,
    surface: height,
    pile: pileHeight?.likely ?? null,
    shallowest: ranges && Number.isFinite(depth.low) ? depth.low : null,
    deepest: ranges && Number.isFinite(depth.high) ? depth.high : null,
  };
}

/** The lowest and the highest point of several drawings, for one scale that fits them all. */
export function sectionExtent(layouts: readonly SectionLayout[]): Readonly<{ lowest: number; highest: number }> {
  const heights = layouts.flatMap(({ base, surface, pile, deepest }) => [base, surface, pile ?? 0, deepest ?? 0]);
  return { lowest: Math.min(0, ...heights), highest: Math.max(0, ...heights) };
}
