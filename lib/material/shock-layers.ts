import { between, density } from "./between";
import type { ShockLayerKind } from "./model";

const band = "from memory: the band usual in the trade, no published source";
const claimedLife = {
  ...between("time", 16, 25, "year"),
  source: "common practice, no source: 16 to 25 years are claimed, about two carpets",
};
const thickness = (low: number, high: number) => ({ ...between("length", low, high, "mm"), source: band });

/** Kinds of shock layer. To add one, add one entry here. */
export const shockLayerKinds: readonly ShockLayerKind[] = [
  {
    id: "expanded-bead-foam",
    label: "Prefabricated foam of expanded beads",
    thickness: thickness(8, 25),
    density: density(30, 150, band),
    life: claimedLife,
    notes: "Panels may drain sideways instead of straight down: ask how the drainage was tested.",
  },
  {
    id: "bound-foam",
    label: "Prefabricated foam of bound pieces",
    thickness: thickness(8, 25),
    density: density(150, 300, band),
    life: claimedLife,
    notes: "Should drain no slower than the carpet above it.",
  },
  {
    id: "bound-rubber",
    label: "Rubber granules bound in place",
    thickness: thickness(15, 35),
    density: density(500, 700, band),
    life: claimedLife,
    notes: "Laid wet on site; binder, grading and thickness decide how it takes up impact.",
  },
];
