import { library } from "./library";
import type { LibraryHeading, Profile, ProfileEntry } from "./model";
import { fromMemory, nowhere, quoted, shownBy } from "./terms";

/** A heading with its points, and those of the criteria under it. */
type Weighed = readonly [points: string, of: Readonly<Record<string, string>>];

type ProfileTerms = Pick<Profile, "id" | "label" | "use" | "founded"> &
  Readonly<{
    weights: Readonly<Partial<Record<LibraryHeading, Weighed>>>;
    /** Rules that differ from the library for this use. */
    changes?: Readonly<Record<string, ProfileEntry["changes"]>>;
  }>;

/** What is asked of every field, whatever is played on it: it only gates. */
const gatesOfEveryField: readonly string[] = [
  "shock-layer-under-light-infill",
  "infiltration",
  "lead",
  "aromatic-hydrocarbons",
  "fluorine",
];

/** Criteria under their headings, the gates of a heading after them; gates of no heading of the profile come last. */
function profile({ weights, changes = {}, ...named }: ProfileTerms): Profile {
  const headings = Object.entries(weights) as [LibraryHeading, Weighed][];
  const gates = library.filter(({ id }) => gatesOfEveryField.includes(id));
  const entries = [
    ...headings.flatMap(([id, [, of]]) => [
      ...Object.entries(of),
      ...gates.filter(({ heading }) => heading === id).map((gate) => [gate.id, "0"] as const),
    ]),
    ...gates.filter(({ heading }) => !(heading in weights)).map((gate) => [gate.id, "0"] as const),
  ];
  return {
    ...named,
    headings: headings.map(([id, [points]]) => ({ id, points })),
    entries: entries.map(([entry, points]) => ({ entry, points, changes: changes[entry] ?? {} })),
  };
}

const notLaidDown = nowhere("What counts for how much is nowhere laid down.");
const atEachPoint = quoted(
  "Football fields are tested at set points, each below 200 g.",
  "ASTM F1936; that it holds at each point from memory",
);
const footballRanges = quoted(
  "Ranges for shock absorption, deformation, rotational resistance and the ball.",
  "FIFA Quality programme",
);
const rugbyHeight = quoted("Head injury criterion at most 1000 in a fall from 1.3 m.", "World Rugby, Regulation 22");
const guideline = "a guideline of the trade";

/** A fall height that has to be reached. */
const requiredFallHeight = {
  gate: { kind: "at-least", limit: "1.3 m" },
  valueFunction: { kind: "more-is-better", worst: "1.3 m", best: "1.8 m" },
  source: "1.3 m: World Rugby, Regulation 22. In full from: the owner’s.",
  evidence: shownBy("accredited-laboratory", "ask-first"),
} as const;

/** Sets of criteria for five kinds of use. They are starting points: every figure is the owner's to change. */
export const profiles: readonly Profile[] = [
  profile({
    id: "football",
    label: "American football",
    use: "A field for American football, tackled and fallen on, used by one or two teams.",
    founded: [atEachPoint, fromMemory("At most 165 g by the same method.", guideline), notLaidDown],
    weights: {
      impact: [
        "40",
        {
          "impact-as-new": "30",
          "impact-last-year": "30",
          "impact-worst-point": "20",
          "fall-height": "10",
          "depth-margin": "10",
        },
      ],
      footing: ["10", { "rotational-resistance": "60", abrasion: "40" }],
      infill: ["15", { "infill-mass": "50", "mineral-share": "15", "submerged-mass": "35" }],
      "water-heat": ["5", { "surface-heat": "10" }],
      warranty: [
        "10",
        {
          "warranty-length": "30",
          "warranted-hardness": "30",
          "warranty-substance": "20",
          "oldest-reference-field": "20",
        },
      ],
      cost: ["20", { "upkeep-hours": "20", "annual-cost": "80" }],
    },
  }),
  profile({
    id: "soccer",
    label: "Soccer",
    use: "A field for soccer, where ball and footing count beside falls.",
    founded: [footballRanges, atEachPoint, notLaidDown],
    weights: {
      impact: ["25", { "impact-as-new": "40", "impact-last-year": "40", "depth-margin": "20" }],
      footing: [
        "30",
        {
          "shock-absorption": "25",
          "vertical-deformation": "10",
          "rotational-resistance": "30",
          "skin-friction": "15",
          "ball-rebound": "10",
          "ball-roll": "10",
        },
      ],
      infill: ["10", { "infill-mass": "50", "mineral-share": "15", "submerged-mass": "35" }],
      "water-heat": ["5", { "surface-heat": "10" }],
      warranty: [
        "10",
        { "warranty-length": "35", "warranted-hardness": "25", "warranty-substance": "20", references: "20" },
      ],
      cost: ["20", { "upkeep-hours": "20", "annual-cost": "80" }],
    },
    changes: {
      "shock-absorption": { gate: { kind: "within", low: "55 %", high: "70 %" } },
      "vertical-deformation": { gate: { kind: "within", low: "4 mm", high: "11 mm" } },
      "rotational-resistance": { gate: { kind: "within", low: "25 N·m", high: "50 N·m" } },
    },
  }),
  profile({
    id: "multi-use",
    label: "Several sports",
    use: "A field for football, soccer, lacrosse and others, with contact and falls on the head.",
    founded: [atEachPoint, rugbyHeight, footballRanges, notLaidDown],
    weights: {
      impact: [
        "35",
        {
          "impact-as-new": "25",
          "impact-last-year": "25",
          "impact-worst-point": "15",
          "fall-height": "25",
          "depth-margin": "10",
        },
      ],
      footing: ["15", { "shock-absorption": "35", "rotational-resistance": "40", abrasion: "25" }],
      infill: ["15", { "infill-mass": "45", "mineral-share": "15", "submerged-mass": "40" }],
      "water-heat": ["5", { "surface-heat": "10" }],
      warranty: [
        "10",
        { "warranty-length": "30", "warranted-hardness": "30", "warranty-substance": "20", references: "20" },
      ],
      cost: ["20", { "upkeep-hours": "25", "annual-cost": "75" }],
    },
    changes: { "fall-height": requiredFallHeight },
  }),
  profile({
    id: "community",
    label: "Community field",
    use: "A public field with long hours, many users and few hands for its upkeep.",
    founded: [
      atEachPoint,
      fromMemory(
        "Shock absorption 55 to 70 %, rotational resistance 25 to 50 N·m.",
        "EN 15330-1, surfaces for community football",
      ),
      quoted(
        "About one hour of upkeep for ten hours of play.",
        "people of the trade in a magazine for school administration",
      ),
      notLaidDown,
    ],
    weights: {
      impact: ["25", { "impact-as-new": "25", "impact-last-year": "50", "depth-margin": "25" }],
      footing: ["10", { "shock-absorption": "40", "rotational-resistance": "40", abrasion: "20" }],
      infill: ["15", { "infill-mass": "45", "submerged-mass": "40", "float-prone-share": "15" }],
      "water-heat": ["10", { "surface-heat": "10" }],
      health: ["5", { "infill-loss": "10" }],
      warranty: [
        "10",
        { "warranty-length": "35", "warranted-hardness": "25", "warranty-substance": "20", references: "20" },
      ],
      cost: ["25", { "upkeep-hours": "40", "annual-cost": "60" }],
    },
  }),
  profile({
    id: "elementary",
    label: "Elementary school",
    use: "A field for young children, who fall often, sit on it and play without studs.",
    founded: [
      fromMemory("At most 165 g, stricter than the 200 g of ASTM F1936.", guideline),
      rugbyHeight,
      fromMemory("At most 100 mg/kg lead in products for children.", "law of the United States"),
      notLaidDown,
    ],
    weights: {
      impact: ["40", { "impact-as-new": "25", "impact-last-year": "30", "fall-height": "35", "depth-margin": "10" }],
      footing: ["10", { abrasion: "60", "skin-friction": "40" }],
      infill: ["10", { "infill-mass": "50", "submerged-mass": "50" }],
      "water-heat": ["15", { "surface-heat": "10" }],
      health: ["5", { "infill-loss": "10" }],
      warranty: ["5", { "warranty-length": "40", "warranted-hardness": "40", "warranty-substance": "20" }],
      cost: ["15", { "upkeep-hours": "25", "annual-cost": "75" }],
    },
    changes: {
      "impact-as-new": {
        gate: { kind: "at-most", limit: "165 g" },
        valueFunction: {
          kind: "target-window",
          ...{ nothingBelow: "50 g", fullFrom: "70 g", fullTo: "110 g", nothingAbove: "165 g" },
        },
        source:
          "Limit: a guideline of the trade, from memory; ASTM F1936 asks for less than 200 g. Window: the owner’s.",
      },
      "impact-last-year": {
        valueFunction: { kind: "less-is-better", best: "110 g", worst: "165 g" },
        source: "Nothing from: a guideline of the trade, from memory. In full up to: the owner’s.",
      },
      "fall-height": requiredFallHeight,
    },
  }),
];
