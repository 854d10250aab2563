import { z } from "zod";
import {
  type DimensionName,
  type Interval,
  intervalOf,
  orNotGiven,
  type Quantity,
  quantityField,
  type SiUnit,
} from "#lib/quantity";
import { between } from "./between";
import type { InfillMaterial, InWater, MaterialClass } from "./model";
import { freshWater } from "./water";

const classes = ["mineral", "polymer", "organic", "blend"] as const satisfies readonly MaterialClass[];
const behaviours = ["sinks", "floats", "floats-then-wets", "depends"] as const satisfies readonly InWater[];

/** A density as a band between two figures above 0. */
const densityField = (what: string) =>
  quantityField("bulkDensity").superRefine(({ asEntered, reading }, context) => {
    const { low, high } = intervalOf(reading);
    if (low > 0 && Number.isFinite(high)) return;
    const message = `“${asEntered}” leaves ${what} open. Give a figure above 0 or a range, like “450–520 kg/m³”.`;
    context.addIssue({ code: "custom", message });
  });

const mineralShareField = quantityField("fraction").superRefine(({ asEntered, reading }, context) => {
  const { low, high } = intervalOf(reading);
  if (low >= 0 && high <= 1) return;
  const message = `“${asEntered}” is not a share from 0 % to 100 %. Give a figure or a range, like “60–70 %”.`;
  context.addIssue({ code: "custom", message });
});

const typedMaterial = z.strictObject({
  id: z
    .string()
    .regex(/^own-[a-z0-9]+(-[a-z0-9]+)*$/, "Start the id with “own-”, then small letters, digits, hyphens."),
  label: z.string().trim().min(1, "Name the material."),
  class: z.enum(classes, "Say whether the material is mineral, polymer, organic or a blend."),
  /** Of a blend only; empty for all others. */
  mineralShare: orNotGiven(mineralShareField),
  bulkDensity: densityField("the loose density"),
  particleDensity: densityField("the particle density"),
  inWater: z.enum(behaviours, "Say what a grain does in water: sinks, floats, floats then wets, or depends."),
  usualGrain: orNotGiven(quantityField("length")),
  notes: z.string().trim(),
  source: z
    .string()
    .trim()
    .min(1, "Say where the figures come from: a data sheet, a laboratory report, common practice."),
});
type TypedMaterial = z.output<typeof typedMaterial>;

const wholeShare = { mineral: between("fraction", 1, 1), polymer: between("fraction", 0, 0) } as const;

function mineralShareOf(typed: TypedMaterial): Interval<"1"> {
  if (typed.class === "mineral") return wholeShare.mineral;
  return typed.mineralShare === null ? wholeShare.polymer : intervalOf(typed.mineralShare.reading);
}

/** Whether the particle density allows the behaviour in water that was stated. */
function agreesWithWater(inWater: InWater, { low, high }: Interval<"kg/m³">): boolean {
  switch (inWater) {
    case "sinks":
      return low > freshWater.density;
    case "floats":
      return high < freshWater.density;
    case "floats-then-wets":
      return low < freshWater.density;
    case "depends":
      return true;
  }
}

function checkTogether(typed: TypedMaterial, context: z.RefinementCtx<TypedMaterial>): void {
  const report = (field: keyof TypedMaterial, message: string) =>
    context.addIssue({ code: "custom", path: [field], message });
  if (typed.class === "blend" && typed.mineralShare === null)
    report("mineralShare", "Give the mineral share of the blend's mass, like “60–70 %”.");
  if (typed.class !== "blend" && typed.mineralShare !== null)
    report("mineralShare", "Only a blend has a mineral share. Leave this empty, or call the material a blend.");
  const particle = intervalOf(typed.particleDensity.reading);
  const bulk = intervalOf(typed.bulkDensity.reading);
  if (Number.isFinite(bulk.high) && bulk.high >= particle.high)
    report(
      "bulkDensity",
      `A bed holds voids, so the loose density (${typed.bulkDensity.asEntered}) has to be below the particle density (${typed.particleDensity.asEntered}).`,
    );
  if (!agreesWithWater(typed.inWater, particle))
    report(
      "inWater",
      `A particle density of ${typed.particleDensity.asEntered} does not go with “${typed.inWater}”: fresh water has 998 kg/m³.`,
    );
}

const sourced = <D extends DimensionName>(quantity: Quantity<D>, source: string) => ({
  ...intervalOf<SiUnit<D>>(quantity.reading),
  source,
});

/** A material of the owner's own: densities as text in, the same shape as a catalogue entry out. */
export const ownMaterialSchema = typedMaterial.superRefine(checkTogether).transform(
  (typed): InfillMaterial => ({
    ...typed,
    mineralShare: mineralShareOf(typed),
    bulkDensity: sourced(typed.bulkDensity, typed.source),
    particleDensity: sourced(typed.particleDensity, typed.source),
    usualGrain: typed.usualGrain && { ...sourced(typed.usualGrain, typed.source), mesh: "as millimetres" },
  }),
);
