import {
  distanceToEdge,
  type FieldOutline,
  type FieldShape,
  fieldOutline,
  isInside,
  type Place,
  sportFields,
} from "#lib/field";
import { failed, type Result, succeeded } from "#lib/quantity";
import { boundsOf, candidatesIn, distanceBetween, movedInside, placeAt } from "./places";
import { layoutOfSport, type MarkSize, type PlanLayout, type PlanLayoutId, planLayouts } from "./plan-layouts";
import { type WearZone, wearZones } from "./wear-zones";

/** A spot that the owner names: a seam, a drain, a repair. Coordinates from the origin of the plan. */
export type OwnersSpot = Readonly<{ label: string; place: Place }>;

export type PlanWish = Readonly<{
  /** Several for a field that several sports are played on. */
  layouts: readonly PlanLayoutId[];
  /** As the method or contract asks. */
  locations: number;
  ownersSpots: readonly OwnersSpot[];
}>;

export type PlanLocation = Readonly<{
  id: string;
  label: string;
  zone: WearZone;
  place: Place;
  /** Whether the marks point to it, it fills a gap, or it comes on top of the number asked for. */
  kind: "by-the-marks" | "fills-a-gap" | "extra";
  why: string;
}>;

export type TestPlan = Readonly<{
  outline: FieldOutline;
  locations: readonly PlanLocation[];
  /** Where the layout comes from. */
  source: string;
  notes: readonly string[];
}>;

export type PlanProblem = Readonly<
  { kind: "no-outline" } | { kind: "too-many-locations"; locations: number } | { kind: "spot-outside"; label: string }
>;

/** Most locations of one plan. */
const mostLocations = 400;
/** Distance in m that locations keep from the edge, where the field is wide enough. */
const edgeMargin = 1;
/** Distance in m by which an owner's spot may lie beyond the edge and still be taken for one at the edge. */
const offTheEdge = 2;
/** Distance in m within which two spots are one. */
const sameSpot = 4;

export function explainPlan(problem: PlanProblem): string {
  switch (problem.kind) {
    case "no-outline":
      return "Only the area of the field is known. Describe its shape in the brief, and the locations can be placed on it.";
    case "too-many-locations":
      return `${problem.locations.toLocaleString("en-US")} locations are asked for; a plan holds at most ${mostLocations}.`;
    case "spot-outside":
      return `“${problem.label}” lies outside the field. Check its coordinates and the point they are measured from.`;
  }
}

type Spot = Readonly<{ label: string; zone: WearZone; place: Place }>;

/**
 * Locations for a test on a field: first the spots that the marks point to, then places that fill the largest gaps,
 * then the owner's own spots on top. The same wish always gives the same plan.
 */
export function testPlan(shape: FieldShape, wish: PlanWish): Result<TestPlan, PlanProblem> {
  const outline = fieldOutline(shape);
  if (outline === null) return failed({ kind: "no-outline" });
  if (wish.locations > mostLocations) return failed({ kind: "too-many-locations", locations: wish.locations });
  const candidates = candidatesIn(outline);
  const anchor = candidates.reduce((best, next) => (next.edge > best.edge ? next : best));
  const margin = Math.min(edgeMargin, anchor.edge / 2);
  const inside = (place: Place) => movedInside(outline, place, anchor.place, margin);
  const outside = wish.ownersSpots.find(
    ({ place }) => !isInside(outline, place) && distanceToEdge(outline, place) > offTheEdge,
  );
  if (outside !== undefined) return failed({ kind: "spot-outside", label: outside.label });

  const marked = inTurn(
    wish.layouts.map((id) => markedSpots(planLayouts[id], marksOf(shape, id, outline), outline)),
  ).map((spot) => ({ ...spot, place: inside(spot.place) }));
  const standing = apart(marked).slice(0, wish.locations);
  const gaps = gapFillers(
    standing.map(({ place }) => place),
    wish.locations - standing.length,
    candidates.filter(({ edge }) => edge >= margin),
  );
  const of = (kind: PlanLocation["kind"]) => (spot: Spot) => ({ ...spot, kind });
  const all = [
    ...standing.map(of("by-the-marks")),
    ...gaps.map((place): Spot => ({ label: "Between the marks", zone: "between", place })).map(of("fills-a-gap")),
    ...wish.ownersSpots
      .map(
        ({ label, place }): Spot => ({
          label,
          zone: "owners-spot",
          place: isInside(outline, place) ? place : inside(place),
        }),
      )
      .map(of("extra")),
  ];
  return succeeded({
    outline,
    locations: all.map((location, index) => ({
      ...location,
      id: `location-${index + 1}`,
      why: wearZones[location.zone].why,
    })),
    source: [...new Set(wish.layouts.map((id) => planLayouts[id].source))].join("; "),
    notes: [
      `Coordinates are in metres from ${outline.origin}.`,
      "The marks are taken to lie in the middle of the turf; where the lines on the field differ, the lines count.",
      "Move a location by a few metres to the spot that looks most worn, and write down where it went.",
    ],
  });
}

/** Size of the marks: that of the sport, but no larger than the turf. */
function marksOf(shape: FieldShape, id: PlanLayoutId, outline: FieldOutline): MarkSize {
  const { length, width } = lengthwise(outline);
  const own = shape.kind === "sport" && layoutOfSport[shape.sport] === id ? shape.sport : planLayouts[id].sport;
  if (own === null) return { length, width };
  return { length: Math.min(sportFields[own].length, length), width: Math.min(sportFields[own].width, width) };
}

/** Length and width of the turf, the longer side first, and whether it runs along y. */
function lengthwise(outline: FieldOutline) {
  const { length, width } = boundsOf(outline);
  return width > length
    ? { length: width, width: length, along: "y" as const }
    : { length, width, along: "x" as const };
}

/** The spots of a layout with its marks in the middle of the turf. */
function markedSpots({ spots }: PlanLayout, marks: MarkSize, outline: FieldOutline): readonly Spot[] {
  const bounds = boundsOf(outline);
  const { along } = lengthwise(outline);
  const [middleX, middleY] = [bounds.left + bounds.length / 2, bounds.bottom + bounds.width / 2];
  return spots.map(({ label, zone, at }) => {
    const [x, y] = at(marks);
    const [lengthways, across] = [x - marks.length / 2, y - marks.width / 2];
    const place =
      along === "x" ? placeAt(middleX + lengthways, middleY + across) : placeAt(middleX - across, middleY + lengthways);
    return { label, zone, place };
  });
}

/** The first of each list, then the second of each, and so on. */
function inTurn<T>(lists: readonly (readonly T[])[]): readonly T[] {
  const longest = Math.max(0, ...lists.map(({ length }) => length));
  return Array.from({ length: longest }, (_, index) => lists.flatMap((list) => list.slice(index, index + 1))).flat();
}

/** The spots without those that lie on an earlier one. */
function apart(spots: readonly Spot[]): readonly Spot[] {
  const kept: Spot[] = [];
  for (const spot of spots)
    if (!kept.some((other) => distanceBetween(spot.place, other.place) < sameSpot)) kept.push(spot);
  return kept;
}

/** Places that lie as far as can be from those taken, and half as far from the edge, one after the other. */
function gapFillers(
  taken: readonly Place[],
  count: number,
  candidates: readonly Readonly<{ place: Place; edge: number }>[],
): readonly Place[] {
  const found: Place[] = [];
  let free = candidates.map(({ place, edge }) => ({
    place,
    room: Math.min(2 * edge, ...taken.map((other) => distanceBetween(place, other))),
  }));
  while (found.length < count && free.length > 0) {
    const { place } = free.reduce((best, next) => (next.room > best.room ? next : best));
    found.push(place);
    free = free
      .filter((other) => other.place !== place)
      .map((other) => ({ ...other, room: Math.min(other.room, distanceBetween(other.place, place)) }));
  }
  return found;
}
