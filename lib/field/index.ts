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
export { climateSchema, fieldShapeSchema, useProfileSchema } from "./schema";
export { type SizeStatus, type SportFieldId, type SportFieldSize, sportFields, suggestedRunOff } from "./sport-fields";
