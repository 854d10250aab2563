import type { LibraryEntry } from "./model";

const everyBid = { kind: "every-bid" } as const;
const byLaboratory = { least: "accredited-laboratory", shortfall: "keep-open", discount: "" } as const;
const quality = "FIFA Quality programme, edition of the older two-star and one-star naming";
const editionNote = "Limits differ by edition and between laboratory and field. Name the edition that you ask for.";

/** How the surface holds a foot, treats skin and lets a ball play. */
export const footing = [
  {
    ...{ id: "rotational-resistance", heading: "footing", points: "40" },
    criterion: {
      measure: "rotational-resistance.fifa-rotational",
      label: "Rotational resistance",
      reason: "A foot that is held too firmly passes the twist to knee and ankle; one held too little slips.",
      source: "FIFA Quality 25 to 50 N·m, Quality Pro 30 to 45 N·m, as quoted in trade press.",
      askedOf: everyBid,
      gate: { kind: "none" },
      valueFunction: {
        kind: "target-window",
        ...{ nothingBelow: "25 N·m", fullFrom: "30 N·m", fullTo: "45 N·m", nothingAbove: "50 N·m" },
      },
      evidence: byLaboratory,
    },
    limits: [
      { says: "30 to 45 N·m (Quality Pro), 25 to 50 N·m (Quality).", source: quality, standing: "quoted" },
      { says: "30 to 45 N·m.", source: "World Rugby, 2015 and 2016", standing: "memory" },
      { says: "25 to 50 N·m.", source: "EN 15330-1, surfaces for community football", standing: "memory" },
    ],
    method: "A loaded disc with football studs is turned on the surface; the peak torque counts.",
    asked: "The test report with stud, load and condition, new and after simulated wear.",
    caution: editionNote,
  },
  {
    ...{ id: "shock-absorption", heading: "footing", points: "25" },
    criterion: {
      measure: "shock-absorption.aaa-shock-absorption",
      label: "Shock absorption of a footfall",
      reason: "Too little loads the legs at every step; too much tires and slows.",
      source: "FIFA Quality 55 to 70 %, Quality Pro 60 to 70 %, as quoted in trade press.",
      askedOf: everyBid,
      gate: { kind: "none" },
      valueFunction: {
        kind: "target-window",
        ...{ nothingBelow: "55 %", fullFrom: "60 %", fullTo: "70 %", nothingAbove: "75 %" },
      },
      evidence: byLaboratory,
    },
    limits: [
      { says: "60 to 70 % (Quality Pro), 55 to 70 % (Quality).", source: quality, standing: "quoted" },
      { says: "55 to 70 %.", source: "World Rugby, and EN 15330-1", standing: "memory" },
    ],
    method: "Advanced Artificial Athlete (FIFA test method 04a, ASTM F3189): a sprung mass, held against concrete.",
    asked: "The test report, new and after simulated wear, with the infill depth tested.",
    caution: editionNote,
  },
  {
    ...{ id: "vertical-deformation", heading: "footing", points: "10" },
    criterion: {
      measure: "vertical-deformation.aaa-shock-absorption",
      label: "Vertical deformation",
      reason: "A surface that sinks too far is unsteady under the foot.",
      source: "FIFA Quality 4 to 11 mm, Quality Pro 4 to 10 mm, as quoted in trade press.",
      askedOf: everyBid,
      gate: { kind: "none" },
      valueFunction: {
        kind: "target-window",
        ...{ nothingBelow: "3 mm", fullFrom: "4 mm", fullTo: "10 mm", nothingAbove: "11 mm" },
      },
      evidence: byLaboratory,
    },
    limits: [
      { says: "4 to 10 mm (Quality Pro), 4 to 11 mm (Quality).", source: quality, standing: "quoted" },
      { says: "5.5 to 11 mm.", source: "World Rugby, 2015 and 2016", standing: "memory" },
    ],
    method: "Advanced Artificial Athlete (FIFA test method 04a, ASTM F3189).",
    asked: "The test report, new and after simulated wear.",
    caution: editionNote,
  },
  {
    ...{ id: "abrasion", heading: "footing", points: "25" },
    criterion: {
      measure: "abrasiveness-index.f1015",
      label: "Abrasiveness",
      reason: "It hints at how a sliding fall treats skin.",
      source: "The owner’s: no published limit for the index of ASTM F1015.",
      askedOf: everyBid,
      gate: { kind: "none" },
      valueFunction: { kind: "less-is-better", best: "10", worst: "40" },
      evidence: byLaboratory,
    },
    limits: [
      { says: "The index has no published limit.", source: "", standing: "none" },
      {
        says: "Wear lowered the index on test plots, and grooming tended to lower it.",
        source: "Penn State University, sports surface research",
        standing: "published",
      },
    ],
    method: "ASTM F1015: foam blocks are drawn over the surface; the index follows from the mass they lose.",
    asked: "The test report, new, with pile and infill as offered.",
    caution: "The index is taken on foam and not on skin.",
  },
  {
    ...{ id: "skin-friction", heading: "footing", points: "15" },
    criterion: {
      measure: "skin-friction.fifa-skin",
      label: "Skin friction",
      reason: "Friction heats and grazes skin in a sliding fall.",
      source: "FIFA Quality programme 0.35 to 0.75, from memory.",
      askedOf: everyBid,
      gate: { kind: "none" },
      valueFunction: { kind: "less-is-better", best: "0.35", worst: "0.75" },
      evidence: byLaboratory,
    },
    limits: [{ says: "0.35 to 0.75.", source: "FIFA Quality programme", standing: "memory" }],
    method: "A silicone skin is turned on the surface; the coefficient of friction counts.",
    asked: "The test report, new and after simulated wear.",
    caution: "The skin is silicone. The figure does not foretell grazes.",
  },
  {
    ...{ id: "ball-rebound", heading: "footing", points: "10" },
    criterion: {
      measure: "ball-rebound.fifa-ball-rebound",
      label: "Ball rebound",
      reason: "A ball that leaps as on a hard floor often goes with a hard surface.",
      source: "FIFA Quality Pro 0.60 to 0.85 m, Quality to 1.00 m; the lower end of Quality from memory.",
      askedOf: everyBid,
      gate: { kind: "none" },
      valueFunction: {
        kind: "target-window",
        ...{ nothingBelow: "0.55 m", fullFrom: "0.60 m", fullTo: "0.85 m", nothingAbove: "1.00 m" },
      },
      evidence: byLaboratory,
    },
    limits: [
      { says: "0.60 to 0.85 m (Quality Pro).", source: quality, standing: "quoted" },
      { says: "0.60 to 1.00 m (Quality).", source: quality, standing: "memory" },
    ],
    method: "FIFA test method 01: a football falls from 2 m.",
    asked: "The test report, new and after simulated wear.",
    caution: editionNote,
  },
  {
    ...{ id: "ball-roll", heading: "footing", points: "10" },
    criterion: {
      measure: "ball-roll.fifa-ball-roll",
      label: "Ball roll",
      reason: "A roll that grows from year to year shows that the pile lies down.",
      source: "FIFA Quality Pro 4 to 8 m, Quality 4 to 10 m when new, as quoted in trade press.",
      askedOf: everyBid,
      gate: { kind: "none" },
      valueFunction: {
        kind: "target-window",
        ...{ nothingBelow: "3 m", fullFrom: "4 m", fullTo: "8 m", nothingAbove: "10 m" },
      },
      evidence: byLaboratory,
    },
    limits: [
      { says: "4 to 8 m (Quality Pro), 4 to 10 m (Quality), when new.", source: quality, standing: "quoted" },
      { says: "4 to 12 m (Quality) when tested again.", source: quality, standing: "memory" },
    ],
    method: "FIFA test method 03: a football runs down a ramp onto the field.",
    asked: "The test report of a field, new and at later ages.",
    caution: editionNote,
  },
] as const satisfies readonly LibraryEntry[];
