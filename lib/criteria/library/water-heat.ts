import type { LibraryEntry } from "./model";

const everyBid = { kind: "every-bid" } as const;

/** Rain that has to leave, and sun that heats the surface. */
export const waterHeat = [
  {
    ...{ id: "infiltration", heading: "water-heat", points: "0" },
    criterion: {
      measure: "system-infiltration.f2898",
      label: "Infiltration of the whole system",
      reason: "Water has to leave through carpet, shock layer and base together.",
      source: "10 in/h: specification of a city in California.",
      askedOf: everyBid,
      gate: { kind: "at-least", limit: "10 in/h" },
      valueFunction: { kind: "none" },
      evidence: { least: "accredited-laboratory", shortfall: "ask-first", discount: "" },
    },
    limits: [
      {
        says: "At least 10 in/h for 24 hours, for the whole system.",
        source: "specification of a city in California",
        standing: "published",
      },
      { says: "The carpet alone often passes more than 30 in/h.", source: "", standing: "practice" },
    ],
    method: "ASTM F2898: a part of the finished field is flooded without confining the water.",
    asked: "A test of carpet, shock layer and base together, or a commitment to test it at handover.",
    caution: "A figure for the carpet alone is no figure for the system.",
  },
  {
    ...{ id: "surface-heat", heading: "water-heat", points: "10" },
    criterion: {
      measure: "surface-temperature-rise.surface-thermometer",
      label: "Surface temperature above the air",
      reason: "A hot surface can burn skin, and it adds to the heat that players bear.",
      source:
        "The owner’s: no published limit for the rise. One university closes its fields at 120 °F surface temperature.",
      askedOf: everyBid,
      gate: { kind: "none" },
      valueFunction: { kind: "less-is-better", best: "20 °F", worst: "70 °F" },
      evidence: { least: "own-test", shortfall: "keep-open", discount: "" },
    },
    limits: [
      {
        says: "A university closes its fields at 120 °F surface temperature; 122 °F can injure skin in less than ten minutes.",
        source: "university study",
        standing: "quoted",
      },
      { says: "62 °F above the air was measured in Nevada.", source: "study in Nevada", standing: "quoted" },
      { says: "How far a surface may heat up is nowhere laid down.", source: "", standing: "none" },
    ],
    method: "Surface and air read at the same time on a clear summer day, with the hour, wind and sun noted.",
    asked: "Readings of surface and air with place, day and hour, on a field with this very carpet and infill.",
    caution: "No medical advice: when to close a field in heat is for the owner and for those who advise on health.",
  },
] as const satisfies readonly LibraryEntry[];
