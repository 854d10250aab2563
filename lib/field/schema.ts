import { z } from "zod";
import { exactField, measured, orNotGiven } from "#lib/quantity";
import type { Climate, Corner, FieldShape, PlanUnit, UseProfile } from "./model";
import { explainPolygon, polygonProblem } from "./polygon";
import { type SportFieldId, sportFields } from "./sport-fields";
import { explainFan, fanProblem } from "./triangle-fan";

const hoursInYear = 8760;
/** More than any field has; keeps the search for crossing sides short. */
const mostCorners = 200;
const tooMany = (what: string) => `List at most ${mostCorners} ${what}.`;

const distance = exactField("distance", { above: [0, "ft"] });
const runOff = exactField("distance", { atLeast: [0, "ft"] });
const planUnits = ["ft", "yd", "m"] as const satisfies readonly PlanUnit[];
const sportIds = Object.keys(sportFields) as [SportFieldId, ...SportFieldId[]];

const cornerPattern = /^\s*([-+]?\d{1,9}(?:\.\d{1,9})?)\s*[,;]\s*([-+]?\d{1,9}(?:\.\d{1,9})?)\s*$/;

function cornerOf(asEntered: string, unit: PlanUnit): Corner | null {
  const [, x, y] = cornerPattern.exec(asEntered) ?? [];
  if (x === undefined || y === undefined) return null;
  return { asEntered, x: measured("distance", Number(x), unit), y: measured("distance", Number(y), unit) };
}

const rectangle = z.strictObject({ kind: z.literal("rectangle"), length: distance, width: distance });

const sport = z.strictObject({
  kind: z.literal("sport"),
  sport: z.enum(sportIds, "Choose a sport from the list."),
  runOff,
});

const polygonByCoordinates = z
  .strictObject({
    kind: z.literal("polygon-by-coordinates"),
    unit: z.enum(planUnits, "Choose feet, yards or metres for the coordinates."),
    corners: z.array(z.string()).max(mostCorners, tooMany("corners")),
  })
  .transform(({ kind, unit, corners: typed }, context) => {
    const report = (path: (string | number)[], message: string) =>
      context.addIssue({ code: "custom", path, message, input: typed });
    const corners = typed.flatMap((text, index) => {
      const corner = cornerOf(text, unit);
      if (corner === null)
        report(
          ["corners", index],
          `“${text}” is not a corner. Write two numbers with a comma between, like “120.5, 60”.`,
        );
      return corner ?? [];
    });
    if (corners.length < typed.length) return z.NEVER;
    const problem = polygonProblem(corners);
    if (problem === null) return { kind, unit, corners };
    report(["corners"], explainPolygon(problem));
    return z.NEVER;
  });

const polygonBySides = z
  .strictObject({
    kind: z.literal("polygon-by-sides"),
    sides: z.array(distance).max(mostCorners, tooMany("sides")),
    diagonals: z.array(distance).max(mostCorners, tooMany("diagonals")),
  })
  .superRefine((shape, context) => {
    const problem = fanProblem(shape);
    if (problem === null) return;
    const path = problem.kind === "diagonals-miscounted" ? ["diagonals"] : ["sides"];
    context.addIssue({ code: "custom", path, message: explainFan(problem) });
  });

const measuredArea = z.strictObject({
  kind: z.literal("measured-area"),
  area: exactField("area", { above: [0, "ft²"] }),
  how: z.string().trim().min(1, "Say how the area was found: a survey, a drawing, a measuring wheel."),
});

/** The field as typed, lengths and areas as text, into a shape that is known to enclose an area. */
export const fieldShapeSchema = z.discriminatedUnion("kind", [
  rectangle,
  sport,
  polygonByCoordinates,
  polygonBySides,
  measuredArea,
]) satisfies z.ZodType<FieldShape, unknown>;

export const useProfileSchema = z.strictObject({
  hoursPerYear: exactField("yearlyUse", { above: [0, "h/year"], atMost: [hoursInYear, "h/year"] }),
  description: z.string().trim(),
}) satisfies z.ZodType<UseProfile, unknown>;

export const climateSchema = z.strictObject({
  description: z.string().trim(),
  hottestSummerAir: orNotGiven(exactField("temperature")),
  frost: z.enum(["yes", "no", "not-stated"], "Say whether there is frost: yes, no or not stated."),
}) satisfies z.ZodType<Climate, unknown>;
