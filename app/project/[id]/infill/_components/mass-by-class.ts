import { type Figure, intervalOfFigure } from "#lib/figure";
import type { MaterialClass } from "#lib/material";
import { type In, measured } from "#lib/quantity";

/** The order in which the parts of a bar stand: what is heaviest and stays down comes first. */
export const classOrder: readonly MaterialClass[] = ["mineral", "blend", "polymer", "organic"];

export const classWords: Readonly<Record<MaterialClass, string>> = {
  mineral: "mineral",
  blend: "blend",
  polymer: "polymer",
  organic: "organic",
};

export type ClassMass = Readonly<{ class: MaterialClass; mass: In<"kg"> }>;

/** The one mass to draw: the middle of a range, the bound of a one-sided figure; nothing of an unknown one. */
function drawnMass(figure: Figure<"mass">): number {
  const interval = intervalOfFigure(figure);
  if (interval === null) return 0;
  const { low, high } = interval;
  if (!Number.isFinite(low)) return high;
  return Number.isFinite(high) ? (low + high) / 2 : low;
}

/** Mass of each class of material in kg, in the order of the bar; classes that are not there are left out. */
export const massByClass = (
  components: readonly Readonly<{ class: MaterialClass; mass: Figure<"mass"> }>[],
): readonly ClassMass[] =>
  classOrder.flatMap((name) => {
    const ofClass = components.filter((component) => component.class === name);
    const mass = ofClass.reduce((sum, component) => sum + drawnMass(component.mass), 0);
    return mass > 0 ? [{ class: name, mass: measured("mass", mass) }] : [];
  });
