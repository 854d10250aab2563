import { propertyOf } from "./find";
import type { PropertyGroup } from "./properties/model";
import type { PropertyId } from "./properties/properties";

/** What of a surface changes a property, so that it belongs to every figure. */
export type Influence = "age" | "moisture" | "temperature";

const ofGroup: Readonly<Record<PropertyGroup, readonly Influence[]>> = {
  carpet: [],
  infill: ["age"],
  "shock-layer": [],
  impact: ["age", "moisture", "temperature"],
  "player-surface": ["age", "moisture", "temperature"],
  ball: ["age", "moisture"],
  water: ["age"],
  heat: ["age", "moisture"],
  wear: [],
  "health-environment": [],
  warranty: [],
  references: [],
  delivery: [],
  maintenance: [],
};

/** Properties that depart from their group. */
const ofProperty: Readonly<Partial<Record<PropertyId, readonly Influence[]>>> = {
  "g-max-basis": [],
  "impact-test-points": [],
  "hic-drop-height": [],
  "infill-total-areal-density": [],
  "infill-total-mass": [],
  "infill-top-up": [],
  "infill-top-up-mass": [],
  "infill-depth-tolerance": [],
  "infill-placing": [],
  "infill-migration": [],
  "footing-wet-share": ["age", "temperature"],
  "shock-layer-force-reduction": ["age", "temperature"],
  "shock-layer-aged-force-reduction": ["temperature"],
  "tuft-bind": ["age", "moisture"],
  "seam-strength": ["age", "moisture"],
  "infill-flotation": [],
  "infill-splash": ["age", "moisture"],
  "cooling-statement": [],
  "heat-air-temperature": [],
};

/**
 * The conditions that belong to a figure of this property.
 * @source common practice, no source; hardness against temperature, moisture and age also in university field studies
 */
export const variesWith = (property: PropertyId): readonly Influence[] =>
  ofProperty[property] ?? ofGroup[propertyOf(property).group];
