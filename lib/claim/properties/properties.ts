import { ball } from "./ball";
import { carpet } from "./carpet";
import { carpetMake } from "./carpet-make";
import { delivery } from "./delivery";
import { healthEnvironment } from "./health-environment";
import { heat } from "./heat";
import { impact } from "./impact";
import { infillTotals } from "./infill-totals";
import { maintenance } from "./maintenance";
import type { PropertyDefinition } from "./model";
import { playerSurface } from "./player-surface";
import { references } from "./references";
import { shockLayer } from "./shock-layer";
import { warranty } from "./warranty";
import { water } from "./water";
import { wear } from "./wear";

const propertyList = [
  ...carpet,
  ...carpetMake,
  ...infillTotals,
  ...shockLayer,
  ...impact,
  ...playerSurface,
  ...ball,
  ...water,
  ...heat,
  ...wear,
  ...healthEnvironment,
  ...warranty,
  ...references,
  ...delivery,
  ...maintenance,
] as const;

type Listed = (typeof propertyList)[number];

export type PropertyId = Listed["id"];
/** Properties that take a figure. */
export type QuantityPropertyId = Extract<Listed, { kind: "quantity" }>["id"];
/** The dimension of a property: `DimensionOf<"pile-height">` is "length". */
export type DimensionOf<P extends QuantityPropertyId> = Extract<Listed, { id: P; kind: "quantity" }>["dimension"];

export type Property = PropertyDefinition & Readonly<{ id: PropertyId }>;

/** The catalogue, in the order of the groups. Form, schema, documents and JSON Schema all read it. */
export const properties: readonly Property[] = propertyList;
