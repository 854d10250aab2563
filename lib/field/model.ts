import type { ExactQuantity, In } from "#lib/quantity";
import type { SportFieldId } from "./sport-fields";

/** The units in which the corners of a plan may be listed. */
export type PlanUnit = "ft" | "yd" | "m";

/** A corner of the plan, as typed and in metres. */
export type Corner = Readonly<{ asEntered: string; x: In<"m">; y: In<"m"> }>;

export type Rectangle = Readonly<{
  kind: "rectangle";
  length: ExactQuantity<"distance">;
  width: ExactQuantity<"distance">;
}>;

/** A field as the rules of a sport give it, with turf beyond the lines on every side. */
export type SportField = Readonly<{ kind: "sport"; sport: SportFieldId; runOff: ExactQuantity<"distance"> }>;

/** Corners in order around the outline; the last side runs back to the first corner. */
export type PolygonByCoordinates = Readonly<{
  kind: "polygon-by-coordinates";
  unit: PlanUnit;
  corners: readonly Corner[];
}>;

/**
 * A field measured with a tape: n sides in order (1–2, 2–3, … n–1) and the n − 3 diagonals from corner 1
 * (1–3, 1–4, …), which cut it into a fan of triangles.
 */
export type PolygonBySides = Readonly<{
  kind: "polygon-by-sides";
  sides: readonly ExactQuantity<"distance">[];
  diagonals: readonly ExactQuantity<"distance">[];
}>;

/** An area that somebody else worked out, and how: a survey, a drawing. */
export type MeasuredArea = Readonly<{ kind: "measured-area"; area: ExactQuantity<"area">; how: string }>;

/** How the turfed area is described. */
export type FieldShape = Rectangle | SportField | PolygonByCoordinates | PolygonBySides | MeasuredArea;

/** How much the field is to be played on. */
export type UseProfile = Readonly<{ hoursPerYear: ExactQuantity<"yearlyUse">; description: string }>;

/** What the weather asks of the field. Null where nobody stated a temperature. */
export type Climate = Readonly<{
  description: string;
  hottestSummerAir: ExactQuantity<"temperature"> | null;
  frost: "yes" | "no" | "not-stated";
}>;
