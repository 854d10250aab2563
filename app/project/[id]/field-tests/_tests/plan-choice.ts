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

/** What was asked for; where nothing was, the marks of the brief's sport and the number of the requirements. */
export function planChoice(asked: Asked, start: Readonly<{ shape: FieldShape; locations: number }>): PlanChoice {
  const given = [asked.layouts ?? []].flat().filter(isLayout);
  const usual = start.shape.kind === "sport" ? layoutOfSport[start.shape.sport] : "evenly-spread";
  return {
    layouts: given.length === 0 ? [usual] : [...new Set(given)],
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
