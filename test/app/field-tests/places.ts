import type { FieldOutline, Place } from "#lib/field";
import { measured } from "#lib/quantity";

export const at = (x: number, y: number): Place => ({ x: measured("distance", x), y: measured("distance", y) });

/** A field of 100 m by 60 m. */
export const outline: FieldOutline = { corners: [at(0, 0), at(100, 0), at(100, 60), at(0, 60)], origin: "a corner" };
