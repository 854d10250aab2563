import { nowhere, practice, published, quoted, shownBy, underHeading } from "./terms";

/** Rain that has to leave, and sun that heats the surface. */
export const waterHeat = underHeading("water-heat", [
  {
    id: "infiltration",
    measure: "system-infiltration.f2898",
    label: "Infiltration of the whole system",
    reason: "Water has to leave through carpet, shock layer and base together.",
    source: "10 in/h: specification of a city in California.",
    gate: { kind: "at-least", limit: "10 in/h" },
    evidence: shownBy("accredited-laboratory", "ask-first"),
    limits: [
      published("At least 10 in/h for 24 hours, for the whole system.", "specification of a city in California"),
      practice("The carpet alone often passes more than 30 in/h."),
    ],
    method: "ASTM F2898: a part of the finished field is flooded without confining the water.",
    asked: "A test of carpet, shock layer and base together, or a commitment to test it at handover.",
    caution: "A figure for the carpet alone is no figure for the system.",
  },
  {
    id: "surface-heat",
    measure: "surface-temperature-rise.surface-thermometer",
    label: "Surface temperature above the air",
    reason: "A hot surface can burn skin, and it adds to the heat that players bear.",
    source:
      "The owner’s: no published limit for the rise. One university closes its fields at 120 °F surface temperature.",
    score: { kind: "less-is-better", best: "20 °F", worst: "70 °F" },
    points: "10",
    evidence: shownBy("own-test"),
    limits: [
      quoted(
        "A university closes its fields at 120 °F surface temperature; 122 °F can injure skin in less than ten minutes.",
        "university study",
      ),
      quoted("62 °F above the air was measured in Nevada.", "study in Nevada"),
      nowhere("How far a surface may heat up is nowhere laid down."),
    ],
    method: "Surface and air read at the same time on a clear summer day, with the hour, wind and sun noted.",
    asked: "Readings of surface and air with place, day and hour, on a field with this very carpet and infill.",
    caution: "No medical advice: when to close a field in heat is for the owner and for those who advise on health.",
  },
]);
