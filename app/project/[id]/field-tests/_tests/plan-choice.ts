import type { Project } from "#lib/evaluation";
import type { FieldShape } from "#lib/field";
import { layoutOfSport, type OwnersSpot, type PlanLayoutId, type PlanWish, planLayouts } from "#lib/fieldtest";
import { explainQuantity, failed, parseExact, type Result, succeeded } from "#lib/quantity";

/** What stands behind the question mark of an address. */
export type Asked = Readonly<Record<string, string | string[] | undefined>>;

/** The plan a reader asks for, as typed. Its names are those of the address and of the form. */
export type PlanChoice = Readonly<{ layouts: readonly PlanLayoutId[]; locations: string; spots: string }>;

/** One text of an address; the last where it stands there more than once. */
export const textOf = (asked: Asked, name: string): string | undefined => {
  const given = asked[name];
  return Array.isArray(given) ? given.at(-1) : given;
};

const isLayout = (id: string): id is PlanLayoutId => Object.hasOwn(planLayouts, id);

/** Words by which a brief names a sport. */
const namedBy: Readonly<Partial<Record<PlanLayoutId, RegExp>>> = {
  "american-football": /\bfootball\b/i,
  soccer: /\bsoccer\b/i,
  lacrosse: /\blacrosse\b/i,
  "field-hockey": /\bhockey\b/i,
  rugby: /\brugby\b/i,
};

/** The sport whose field it is, else the sports that the brief names. */
function usualLayouts({ shape, words }: PlanStart): readonly PlanLayoutId[] {
  if (shape.kind === "sport") return [layoutOfSport[shape.sport]];
  const named = Object.keys(planLayouts)
    .filter(isLayout)
    .filter((id) => namedBy[id]?.test(words));
  return named.length === 0 ? ["evenly-spread"] : named;
}

/** What a plan starts from: the field, the number of the requirements, what the brief says of the use. */
export type PlanStart = Readonly<{ shape: FieldShape; locations: number; words: string }>;

export const planStart = ({ brief, requirements }: Pick<Project, "brief" | "requirements">): PlanStart => ({
  shape: brief.field,
  locations: requirements.impact.testLocations,
  words: `${brief.purpose} ${brief.use.description}`,
});

/** What was asked for; where nothing was, what the project starts from. */
export function planChoice(asked: Asked, start: PlanStart): PlanChoice {
  const given = [asked.layouts ?? []].flat().filter(isLayout);
  return {
    layouts: given.length === 0 ? usualLayouts(start) : [...new Set(given)],
    locations: (textOf(asked, "locations") ?? `${start.locations}`).trim(),
    spots: textOf(asked, "spots") ?? "",
  };
}

/** The choice as it stands behind the question mark of an address. */
export function planAddress({ layouts, locations, spots }: PlanChoice): string {
  const pairs = [...layouts.map((layout) => ["layouts", layout]), ["locations", locations], ["spots", spots]];
  return new URLSearchParams(pairs.filter(([, value]) => value !== "")).toString();
}

/** The choice as the plan takes it, or a sentence about each thing that does not read. */
export function planWish({ layouts, locations, spots }: PlanChoice): Result<PlanWish, readonly string[]> {
  const count = /^\d{1,4}$/.test(locations) ? Number(locations) : null;
  const read = spots
    .split(/\r?\n/)
    .map((line) => line.trim())
    .filter((line) => line !== "")
    .map(ownersSpot);
  const problems = [
    ...(count === null || count < 1
      ? [`“${locations}” is not a number of locations. Expected a whole number, for instance 10.`]
      : []),
    ...read.flatMap((spot) => (spot.ok ? [] : [spot.problem])),
  ];
  return count === null || problems.length > 0
    ? failed(problems)
    : succeeded({ layouts, locations: count, ownersSpots: read.flatMap((spot) => (spot.ok ? [spot.value] : [])) });
}

/** A line as “drain at the gate, 100 ft, 5 ft”. */
function ownersSpot(line: string): Result<OwnersSpot, string> {
  const parts = line.split(/\s*[;,\t]\s*/);
  const [x = "", y = ""] = parts.slice(-2);
  const label = parts.slice(0, -2).join(", ");
  if (label === "")
    return failed(`“${line}” does not name a spot and its place. Expected for instance “drain, 100 ft, 5 ft”.`);
  const [across, up] = [parseExact("coordinate", x), parseExact("coordinate", y)];
  if (!across.ok) return failed(`${label}: ${explainQuantity(across.problem)}`);
  if (!up.ok) return failed(`${label}: ${explainQuantity(up.problem)}`);
  return succeeded({ label, place: { x: across.value.value, y: up.value.value } });
}
