import { z } from "zod";
import {
  explainGrainSize,
  type GrainShape,
  type GrainSize,
  grainShapes,
  matchGrainShape,
  parseGrainSize,
} from "#lib/material";
import { intervalOf, orNotGiven, quantityField } from "#lib/quantity";
import type { Placement } from "./model";

const placements = ["layered", "blended"] as const satisfies readonly Placement[];

const aboveZero = <D extends "arealDensity" | "bulkDensity">(dimension: D, example: string) =>
  quantityField(dimension).refine(
    ({ reading }) => intervalOf(reading).high > 0,
    `Give a figure above 0, like “${example}”.`,
  );

/** "20–40 mesh" or "0.425–0.85 mm"; empty where the bid names no size. */
const particleSizeField = z
  .string({ error: "Expected the particle size as text." })
  .meta({ description: "Range of grain sizes: 20–40 mesh or 0.425–0.85 mm; empty where none is stated." })
  .transform((text, context): GrainSize | null => {
    const parsed = parseGrainSize(text);
    if (parsed.ok) return parsed.value;
    context.addIssue({ code: "custom", message: explainGrainSize(parsed.problem) });
    return z.NEVER;
  });

const shapeField = z
  .string({ error: "Expected the particle shape as text." })
  .meta({ description: `Shape of the grains: ${grainShapes.map(({ id }) => id).join(", ")}.` })
  .transform((text, context): GrainShape => {
    const shape = matchGrainShape(text);
    if (shape !== null) return shape;
    const labels = grainShapes.map(({ label }) => `“${label}”`).join(", ");
    context.addIssue({ code: "custom", message: `“${text}” is not a shape of grains. Expected one of ${labels}.` });
    return z.NEVER;
  });

/** One component as typed: what it is and how much of it. "" stands for a bulk density that the bid does not state. */
export const infillComponentShape = z.strictObject({
  id: z.string().trim().min(1, "Each component needs an id."),
  material: z.string().trim().min(1, "Choose the material."),
  arealDensity: aboveZero("arealDensity", "3 lb/ft²"),
  bulkDensity: orNotGiven(aboveZero("bulkDensity", "30 lb/ft³")),
  particleSize: particleSizeField.prefault(""),
  shape: shapeField.prefault("not-stated"),
});

/** The infill of a bid with components of that shape, each id used once. An empty list says that no infill is stated. */
export const infillSystemOf = <Component extends z.ZodType<{ id: string }>>(component: Component) =>
  z.strictObject({
    placement: z.enum(placements, "Say whether the infill is layered or blended."),
    components: z.array(component).superRefine((components, context) => {
      for (const [index, { id }] of components.entries())
        if (components.findIndex((earlier) => earlier.id === id) < index)
          context.addIssue({ code: "custom", path: [index, "id"], message: `Two components have the id “${id}”.` });
    }),
  });

export const infillSystemSchema = infillSystemOf(infillComponentShape);
