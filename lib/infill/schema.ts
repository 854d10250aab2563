import { z } from "zod";
import { intervalOf, orNotGiven, quantityField } from "#lib/quantity";
import type { Placement } from "./model";

const placements = ["layered", "blended"] as const satisfies readonly Placement[];

const aboveZero = <D extends "arealDensity" | "bulkDensity">(dimension: D, example: string) =>
  quantityField(dimension).refine(
    ({ reading }) => intervalOf(reading).high > 0,
    `Give a figure above 0, like “${example}”.`,
  );

/** One component as typed: what it is and how much of it. "" stands for a bulk density that the bid does not state. */
export const infillComponentShape = z.strictObject({
  id: z.string().trim().min(1, "Each component needs an id."),
  material: z.string().trim().min(1, "Choose the material."),
  arealDensity: aboveZero("arealDensity", "3 lb/ft²"),
  bulkDensity: orNotGiven(aboveZero("bulkDensity", "30 lb/ft³")),
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
