import type { Bid, BidEvaluation, Evaluation, Project } from "#lib/evaluation";
import { formatFigure, intervalOfFigure } from "#lib/figure";
import { findMaterial, type InfillMaterial } from "#lib/material";
import type { UnitSystem } from "#lib/quantity";
import type { DrawnSection } from "./cross-sections";
import type { MassBar } from "./mass-bars";
import { massByClass } from "./mass-by-class";
import { sectionLayout } from "./section-layout";

/** A bid with everything that this page draws of it. */
export type DrawnBid = Readonly<{
  letter: string;
  index: number;
  bid: Bid;
  evaluation: BidEvaluation;
  section: DrawnSection;
  bar: MassBar;
}>;

type Materials = ReadonlyMap<string, InfillMaterial>;

/** The material of each component that the catalogue or the brief describes, by the component's id. */
const materialsOf = ({ infill }: Bid, own: readonly InfillMaterial[]): Materials =>
  new Map(
    infill.components.flatMap(({ id, material }) => {
      const found = findMaterial(material, own);
      return found === undefined ? [] : [[id, found] as const];
    }),
  );

/** Half-known infill is not drawn: what is missing could lie anywhere in it. */
function sectionOf(
  { infill, letter }: BidEvaluation,
  index: number,
  materials: Materials,
  units: UnitSystem,
): DrawnSection {
  const { crossSection, depth, freePile, unknownMaterials } = infill;
  const complete = unknownMaterials.length === 0;
  const drawn = complete
    ? crossSection
    : { ...crossSection, layers: crossSection.layers.filter(({ kind }) => kind === "shock-layer") };
  const layout = sectionLayout(drawn, intervalOfFigure(depth), (component) => materials.get(component)?.class);
  const buried = layout.pile !== null && layout.surface > layout.pile;
  return {
    letter,
    index,
    layout,
    depth: depth.kind === "unknown" ? null : formatFigure(depth, units),
    freePile: freePile.kind === "unknown" ? null : formatFigure(freePile, units),
    notes: [
      ...(complete ? [] : ["infill not drawn: a material is not described"]),
      ...(complete && infill.components.length === 0 ? ["no infill entered"] : []),
      ...(layout.pile === null ? ["pile height not stated"] : []),
      ...(buried ? ["infill above the pile"] : []),
    ],
  };
}

const barOf = ({ infill, letter }: BidEvaluation, index: number, materials: Materials): MassBar => ({
  letter,
  index,
  total: intervalOfFigure(infill.stabilisingMass),
  parts: massByClass(
    (infill.unknownMaterials.length > 0 ? [] : infill.components).flatMap(({ id, mass }) => {
      const material = materials.get(id);
      return material === undefined ? [] : [{ class: material.class, mass }];
    }),
  ),
});

/** Every bid of a project with its drawing and its bar, in the order of the bids. */
export const drawnBids = ({ brief, bids }: Project, evaluation: Evaluation, units: UnitSystem): readonly DrawnBid[] =>
  evaluation.bids.flatMap((evaluated, index) => {
    const bid = bids.find(({ id }) => id === evaluated.id);
    if (bid === undefined) return [];
    const materials = materialsOf(bid, brief.ownMaterials);
    return {
      letter: evaluated.letter,
      index,
      bid,
      evaluation: evaluated,
      section: sectionOf(evaluated, index, materials, units),
      bar: barOf(evaluated, index, materials),
    };
  });
