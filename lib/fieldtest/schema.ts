import { z } from "zod";
import { type MethodId, matchMethod } from "#lib/claim";
import { idField, keptText } from "#lib/entry";
import { exactField, orNotGiven, plainDateField } from "#lib/quantity";
import type { Campaign } from "./model";

/** What one campaign may hold: far more than anybody measures on a field. */
const campaignLimits = { locations: 400, depths: 2000, text: 300, note: 5000 } as const;

const words = (what: string, most: number = campaignLimits.text) => keptText(what, most);

const id = idField("location-1");

const methodField = z.string({ error: "Expected a test method as text." }).transform((read, context): MethodId => {
  const method = matchMethod(read);
  if (method !== null && method !== "not-stated") return method;
  context.addIssue({
    code: "custom",
    message:
      read.trim() === ""
        ? "Name the test method, for instance ASTM F1936: levels by different methods can't be compared."
        : `“${read}” is not a test method in the register. Expected one of it, for instance ASTM F1936.`,
  });
  return z.NEVER;
});

const drop = orNotGiven(exactField("impactLevel", { above: [0, "g"], atMost: [5000, "g"] })).prefault("");
const coordinate = exactField("coordinate");
const temperature = orNotGiven(exactField("temperature")).prefault("");

const locationSchema = z.strictObject({
  id,
  label: words("a name of the location"),
  x: orNotGiven(coordinate).prefault(""),
  y: orNotGiven(coordinate).prefault(""),
  drops: z.tuple([drop, drop, drop], { error: "Expected three drops; leave empty what was not made." }),
  note: words("a note", campaignLimits.note),
});

const depthSchema = z.strictObject({
  id,
  x: coordinate,
  y: coordinate,
  depth: exactField("length", { atLeast: [0, "mm"], atMost: [200, "mm"] }),
});

const weatherSchema = z.strictObject({
  air: temperature,
  surface: temperature,
  moisture: z
    .enum(["dry", "damp", "wet", "not-stated"], "Say whether the surface was dry, damp, wet or not stated.")
    .default("not-stated"),
  description: words("the weather", campaignLimits.note),
});

type Listed = readonly Readonly<{ id: string }>[];
const repeatedId = (listed: Listed): number =>
  listed.findIndex(({ id }, index) => listed.findIndex((other) => other.id === id) < index);

/** A campaign as typed without its id, every figure as text with its unit. */
export const campaignShape = {
  kind: z.enum(["acceptance", "yearly", "other"], "Say whether it is an acceptance, a yearly or another test."),
  date: plainDateField,
  laboratory: words("a laboratory"),
  operator: words("an operator"),
  equipment: words("the equipment"),
  calibrated: orNotGiven(plainDateField).prefault(""),
  weather: weatherSchema.prefault({}),
  method: methodField,
  edition: words("an edition"),
  origin: words("an origin of the coordinates"),
  locations: z
    .array(locationSchema)
    .max(campaignLimits.locations, `List at most ${campaignLimits.locations} locations.`),
  depths: z
    .array(depthSchema)
    .max(campaignLimits.depths, `List at most ${campaignLimits.depths.toLocaleString("en-US")} depths.`)
    .default([]),
  note: words("a note", campaignLimits.note),
} as const;

type CampaignBody = Omit<Campaign, "id">;

/** What no single field shows. */
export function campaignRules(
  { date, calibrated, locations, depths }: CampaignBody,
  context: Pick<z.RefinementCtx, "addIssue">,
): void {
  const complain = (path: (string | number)[], message: string) => context.addIssue({ code: "custom", path, message });
  if (calibrated !== null && calibrated > date)
    complain(
      ["calibrated"],
      `The equipment was calibrated on ${calibrated}, after the test on ${date}. Expected the calibration that was in force on that day.`,
    );
  for (const [list, listed] of [
    ["locations", locations],
    ["depths", depths],
  ] as const) {
    const again = repeatedId(listed);
    if (again >= 0)
      complain([list, again, "id"], `The id “${listed[again]?.id}” stands twice. Expected one of its own.`);
  }
  for (const [index, { x, y }] of locations.entries())
    if ((x === null) !== (y === null))
      complain(
        ["locations", index, x === null ? "x" : "y"],
        "Only one of the two coordinates is given. Expected both or none.",
      );
}

/** A campaign as typed, into the model. */
export const campaignSchema = z.strictObject({ id, ...campaignShape }).superRefine(campaignRules) satisfies z.ZodType<
  Campaign,
  unknown
>;

/** What the form and the file hold. */
export type CampaignInput = z.input<typeof campaignSchema>;
