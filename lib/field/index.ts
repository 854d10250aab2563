export { fieldArea } from "./field-area";
export type {
  Climate,
  Corner,
  FieldShape,
  MeasuredArea,
  PlanUnit,
  PolygonByCoordinates,
  PolygonBySides,
  Rectangle,
  SportField,
  UseProfile,
} from "./model";
export { distanceToEdge, type FieldOutline, fieldOutline, inSight, isInside, type Place } from "./outline";
export { climateSchema, fieldShapeSchema, useProfileSchema } from "./schema";
export { type SizeStatus, type SportFieldId, type SportFieldSize, sportFields, suggestedRunOff } from "./sport-fields";
