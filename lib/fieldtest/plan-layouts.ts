import type { SportFieldId } from "#lib/field";
import { measured } from "#lib/quantity";
import type { WearZone } from "./wear-zones";

/** Length and width of the marks in m; places in them run from the corner of an end line and a side line. */
export type MarkSize = Readonly<{ length: number; width: number }>;

/** A spot that the marks of a sport point to. */
export type MarkedSpot = Readonly<{
  label: string;
  zone: WearZone;
  at: (marks: MarkSize) => readonly [x: number, y: number];
}>;

/** Where to test on a field of a sport: the first spots first. */
export type PlanLayout = Readonly<{
  label: string;
  /** Whose marks the spots belong to; null where a plan needs none. */
  sport: SportFieldId | null;
  spots: readonly MarkedSpot[];
  source: string;
}>;

const feet = (number: number) => measured("distance", number, "ft");
const yards = (number: number) => measured("distance", number, "yd");
const spot = (label: string, zone: WearZone, at: MarkedSpot["at"]): MarkedSpot => ({ label, zone, at });

/** A spot near the left end and the same one near the right end, turned half round. */
const atBothEnds = (label: string, zone: WearZone, at: MarkedSpot["at"]): readonly MarkedSpot[] => [
  spot(`${label}, left`, zone, at),
  spot(`${label}, right`, zone, (marks) => {
    const [x, y] = at(marks);
    return [marks.length - x, marks.width - y];
  }),
];

const middle: MarkedSpot["at"] = ({ length, width }) => [length / 2, width / 2];

/** Distance of the hash marks from the side lines in high school play. @source NFHS football rules, from memory */
const hashMark = feet(160 / 3);

const football: readonly MarkedSpot[] = [
  spot("50-yard line, between the hash marks", "centre", middle),
  ...atBothEnds("20-yard line, on a hash mark", "hash-marks", () => [feet(90), hashMark]),
  ...atBothEnds("Goal line, middle", "goal-line", ({ width }) => [feet(30), width / 2]),
  spot("35-yard line, halfway to the side line", "wing", () => [feet(135), feet(25)]),
  spot("Side line at the benches, 45-yard line", "sideline", ({ width }) => [feet(195), width - feet(6)]),
  spot("End zone, right half", "end-zone", ({ length }) => [length - feet(15), feet(40)]),
  ...atBothEnds("35-yard line, between the hash marks", "hash-marks", ({ width }) => [feet(135), width / 2]),
  ...atBothEnds("End zone, corner", "corner", () => [feet(5), feet(5)]),
];

const soccer: readonly MarkedSpot[] = [
  spot("Centre spot", "centre", middle),
  ...atBothEnds("Goal mouth", "goal-mouth", ({ width }) => [yards(2), width / 2]),
  ...atBothEnds("Penalty spot", "penalty-spot", ({ width }) => [yards(12), width / 2]),
  ...atBothEnds("Wing, a quarter along", "wing", ({ length, width }) => [length / 4, width / 5]),
  spot("Touch line, halfway", "sideline", ({ length }) => [length / 2, yards(2)]),
  ...atBothEnds("Corner", "corner", () => [yards(1.5), yards(1.5)]),
];

const lacrosse: readonly MarkedSpot[] = [
  spot("Centre face-off", "face-off", middle),
  ...atBothEnds("In front of the goal crease", "goal-mouth", ({ width }) => [yards(19), width / 2]),
  ...atBothEnds("Behind the goal", "goal-mouth", ({ width }) => [yards(10), width / 2]),
  ...atBothEnds("Wing line at the centre", "wing", ({ length, width }) => [length / 2, width / 2 - yards(20)]),
  spot("Side line at the substitution area", "sideline", ({ length }) => [length / 2, yards(2)]),
  ...atBothEnds("Corner", "corner", () => [yards(2), yards(2)]),
];

const hockey: readonly MarkedSpot[] = [
  spot("Centre", "centre", middle),
  ...atBothEnds("Goal mouth", "goal-mouth", ({ width }) => [2, width / 2]),
  ...atBothEnds("Penalty spot", "penalty-spot", ({ width }) => [6.4, width / 2]),
  ...atBothEnds("Top of the shooting circle", "goal-mouth", ({ width }) => [15, width / 2]),
  spot("Side line, halfway", "sideline", ({ length }) => [length / 2, 2]),
  ...atBothEnds("Corner", "corner", () => [2, 2]),
];

const rugby: readonly MarkedSpot[] = [
  spot("Centre of the halfway line", "centre", middle),
  ...atBothEnds("22-metre line, middle", "hash-marks", ({ width }) => [22, width / 2]),
  ...atBothEnds("Goal line, middle", "goal-line", ({ width }) => [2, width / 2]),
  ...atBothEnds("15 m from touch, a third along", "wing", ({ length }) => [length / 3, 15]),
  spot("Touch line, halfway", "sideline", ({ length }) => [length / 2, 3]),
  ...atBothEnds("Corner", "corner", () => [3, 3]),
];

const ours =
  "our own layout over wear zones; the drawing of test points in ASTM F1936 was not in reach: where a method or contract sets the points, take those";

/** Layouts by sport. To add one, add one entry here. */
export const planLayouts = {
  "american-football": {
    label: "American football",
    sport: "us-football",
    spots: football,
    source: `${ours}; sizes of marks from memory of the NFHS rules`,
  },
  soccer: {
    label: "Soccer",
    sport: "soccer-fifa",
    spots: soccer,
    source: `${ours}; sizes of marks from memory of the Laws of the Game`,
  },
  lacrosse: {
    label: "Lacrosse",
    sport: "lacrosse",
    spots: lacrosse,
    source: `${ours}; sizes of marks from memory of the NCAA rules`,
  },
  "field-hockey": {
    label: "Field hockey",
    sport: "field-hockey",
    spots: hockey,
    source: `${ours}; sizes of marks from memory of the FIH rules`,
  },
  rugby: {
    label: "Rugby",
    sport: "rugby-largest",
    spots: rugby,
    source: `${ours}; sizes of marks from memory of World Rugby Law 1`,
  },
  "evenly-spread": { label: "Other shapes, evenly spread", sport: null, spots: [], source: ours },
} as const satisfies Record<string, PlanLayout>;

export type PlanLayoutId = keyof typeof planLayouts;

/** The layout that the marks of a sport belong to. */
export const layoutOfSport: Readonly<Record<SportFieldId, PlanLayoutId>> = {
  "us-football": "american-football",
  "soccer-fifa": "soccer",
  "soccer-nfhs-largest": "soccer",
  "soccer-nfhs-smallest": "soccer",
  "soccer-ncaa-largest": "soccer",
  lacrosse: "lacrosse",
  "field-hockey": "field-hockey",
  "rugby-largest": "rugby",
  "rugby-with-in-goals": "rugby",
};
