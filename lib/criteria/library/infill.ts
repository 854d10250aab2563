import { nowhere, practice, underHeading } from "./terms";

const tickets = "Weigh tickets at delivery show whether the promised mass came.";

/** What holds the carpet down and what stays when water stands on the field. */
export const infill = underHeading("infill", [
  {
    id: "infill-mass",
    measure: "infill-mass-per-area",
    label: "Infill mass per area",
    reason: "Infill is what holds the carpet down on the base and the fibres upright.",
    source:
      "The owner’s: no published limit. Heavy layered infill has more than 9 lb/ft², rubber alone about 3 lb/ft² (common practice, no source).",
    score: { kind: "more-is-better", worst: "1 lb/ft²", best: "9 lb/ft²" },
    points: "40",
    limits: [
      practice("Heavy layered infill has more than 9 lb/ft², rubber alone about 3 lb/ft²."),
      nowhere("How much is enough is nowhere laid down."),
    ],
    method: "All components of the infill added up, each as the bid states it.",
    asked: `Each component with material, mass per area, bulk density and grain. ${tickets}`,
    caution: "On sand-filled carpets the surface may get harder with more infill. Hold the impact levels beside it.",
  },
  {
    id: "mineral-share",
    measure: "mineral-share",
    label: "Mineral share of the infill",
    reason: "Sand does not burn, rot or float, and it lies where it is put.",
    source: "The owner’s: no published limit.",
    score: { kind: "more-is-better", worst: "0 %", best: "70 %" },
    points: "15",
    limits: [nowhere("No share is laid down, and builds without any sand are sold.")],
    method: "Mineral components over all components, by mass.",
    asked: "Each component with material and mass per area.",
    caution: "More sand is not safer by itself: what cushions a fall is decided by the whole build.",
  },
  {
    id: "submerged-mass",
    measure: "submerged-mass",
    label: "Infill mass under water",
    reason: "When a field is flooded only what is heavier than water still presses down, and what floats leaves.",
    source: "The owner’s: no published limit. Worked out by buoyancy.",
    score: { kind: "more-is-better", worst: "0 lb/ft²", best: "4 lb/ft²" },
    points: "30",
    limits: [nowhere("No value is laid down.")],
    method: "Mass of each component less the mass of the water it displaces, by its particle density.",
    asked:
      "Particle density of each component, from its maker or a laboratory; bulk density does not show what floats.",
  },
  {
    id: "float-prone-share",
    measure: "float-prone-share",
    label: "Share of the infill that may float",
    reason: "Floating infill collects along edges and drains and leaves hard places behind.",
    source: "The owner’s: no published limit.",
    score: { kind: "less-is-better", best: "0 %", worst: "30 %" },
    points: "15",
    limits: [
      practice("A particle floats in fresh water below about 998 kg/m³; cork and dry wood do."),
      nowhere("No share is laid down."),
    ],
    method: "Components lighter than water over all components, by mass.",
    asked: "What the infill does in standing water, with a test where there is one.",
  },
]);
