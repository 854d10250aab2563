import type { Place } from "#lib/field";
import type { In } from "#lib/quantity";
import { dropsOf, locationLevel } from "./location-level";
import type { Campaign } from "./model";

/** Infill depths of a campaign with their places, for a map. */
export const depthPlaces = ({ depths }: Campaign): readonly Readonly<{ place: Place; value: In<"m"> }>[] =>
  depths.map(({ x, y, depth }) => ({ place: { x: x.value, y: y.value }, value: depth.value }));

/** Levels of a campaign where a location has both three drops and a place. */
export const levelPlaces = ({ locations }: Campaign): readonly Readonly<{ place: Place; value: In<"g"> }>[] =>
  locations.flatMap((location) => {
    const drops = dropsOf(location);
    const { x, y } = location;
    if (drops === null || x === null || y === null) return [];
    return [{ place: { x: x.value, y: y.value }, value: locationLevel(drops) }];
  });
