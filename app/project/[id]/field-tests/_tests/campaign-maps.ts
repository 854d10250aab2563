import type { FieldOutline } from "#lib/field";
import { type Campaign, type FieldMap, fieldMap, locationLevel, type ReducedCampaign } from "#lib/fieldtest";
import { type In, measured } from "#lib/quantity";

/** Cells along the longer side of a map. */
const cellsAlong = 48;

function spacingOf({ corners }: FieldOutline): In<"m"> {
  const reach = (values: readonly number[]) => Math.max(...values) - Math.min(...values);
  const longest = Math.max(reach(corners.map(({ x }) => x)), reach(corners.map(({ y }) => y)));
  return measured("distance", longest / cellsAlong);
}

/** Levels over the field; null where no location has both a level and a place. */
export const levelMap = ({ locations }: ReducedCampaign, outline: FieldOutline): FieldMap<"impactLevel"> | null =>
  fieldMap({
    dimension: "impactLevel",
    outline,
    spacing: spacingOf(outline),
    method: "by-number-of-points",
    points: locations.flatMap(({ location: { x, y }, drops }) =>
      drops === null || x === null || y === null
        ? []
        : [{ place: { x: x.value, y: y.value }, value: locationLevel(drops) }],
    ),
  });

/** Depths over the field; null where none was measured. */
export const depthMap = ({ depths }: Campaign, outline: FieldOutline): FieldMap<"length"> | null =>
  fieldMap({
    dimension: "length",
    outline,
    spacing: spacingOf(outline),
    method: "by-number-of-points",
    points: depths.map(({ x, y, depth }) => ({ place: { x: x.value, y: y.value }, value: depth.value })),
  });
