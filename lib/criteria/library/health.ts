import type { LibraryEntry } from "./model";

const everyBid = { kind: "every-bid" } as const;
const byLaboratory = { least: "accredited-laboratory", shortfall: "ask-first", discount: "" } as const;
const notHealth =
  "A content or migration test is no conclusion on health, and law changes: date every rule and ask counsel which applies.";

/** What a surface holds and what leaves it. */
export const health = [
  {
    ...{ id: "lead", heading: "health", points: "0" },
    criterion: {
      measure: "lead-content.f2765",
      label: "Lead in the fibre",
      reason: "Lead harms children.",
      source: "100 mg/kg: limit for products for children in the United States, from memory.",
      askedOf: everyBid,
      gate: { kind: "at-most", limit: "100 mg/kg" },
      valueFunction: { kind: "none" },
      evidence: byLaboratory,
    },
    limits: [
      { says: "At most 300 mg/kg in the fibre.", source: "ASTM F2765, text of 2009", standing: "quoted" },
      { says: "At most 100 mg/kg in products for children.", source: "law of the United States", standing: "memory" },
      {
        says: "Soluble lead in infill at most 90 mg/kg.",
        source: "ASTM F3188, which takes the limits of ASTM F963",
        standing: "quoted",
      },
    ],
    method: "ASTM F2765: total lead in the fibre. What comes out of infill is another figure, by ASTM F3188.",
    asked: "The test report with the list of limits named; lists differ by country and purpose.",
    caution: notHealth,
  },
  {
    ...{ id: "aromatic-hydrocarbons", heading: "health", points: "0" },
    criterion: {
      measure: "pah-sum.f3496",
      label: "Polycyclic aromatic hydrocarbons in the infill",
      reason: "Several of these compounds can cause cancer, and laws limit their sum in infill.",
      source: "20 mg/kg: European Union, Regulation 2021/1199.",
      askedOf: everyBid,
      gate: { kind: "at-most", limit: "20 mg/kg" },
      valueFunction: { kind: "none" },
      evidence: byLaboratory,
    },
    limits: [
      {
        says: "Sum of eight at most 20 mg/kg in granules and mulch, since 10 August 2022.",
        source: "European Union, Regulation 2021/1199, entry 50",
        standing: "quoted",
      },
      { says: "No limit of the whole United States is known to us.", source: "", standing: "none" },
    ],
    method: "ASTM F3496: content of the infill.",
    asked: "A report of the very batch or grade of infill, with the compounds named.",
    caution: notHealth,
  },
  {
    ...{ id: "fluorine", heading: "health", points: "0" },
    criterion: {
      measure: "total-fluorine.total-fluorine-combustion",
      label: "Total fluorine",
      reason: "Some states forbid turf with PFAS added on purpose, and these compounds stay in soil and water.",
      source: "100 mg/kg: the sum of organic fluorine by which some states define PFAS.",
      askedOf: everyBid,
      gate: { kind: "at-most", limit: "100 mg/kg" },
      valueFunction: { kind: "none" },
      evidence: byLaboratory,
    },
    limits: [
      {
        says: "Some states define PFAS by total organic fluorine, for instance 100 parts in a million.",
        source: "note of a law firm",
        standing: "published",
      },
      {
        says: "Colorado: no installing of turf with PFAS added on purpose from 1 January 2026.",
        source: "summary of the enacted law",
        standing: "published",
      },
    ],
    method: "Combustion and ion chromatography of carpet, coating and infill, each by itself.",
    asked: "A report for each part, and a statement in writing on PFAS added on purpose.",
    caution: `Total fluorine is a screen: inorganic fluoride counts too, so it starts a question and does not end it. ${notHealth}`,
  },
  {
    ...{ id: "infill-loss", heading: "health", points: "10" },
    criterion: {
      measure: "infill-loss.infill-weigh-tickets",
      label: "Infill that leaves the field in a year",
      reason: "It is both pollution and cushion lost, and it has to agree with the yearly top-up.",
      source:
        "7 g/m² a year: mark of a committee of the European Union, as quoted in trade press. Nothing from: the owner’s.",
      askedOf: everyBid,
      gate: { kind: "none" },
      valueFunction: { kind: "less-is-better", best: "7 g/m²/year", worst: "100 g/m²/year" },
      evidence: { least: "stated", shortfall: "keep-open", discount: "" },
    },
    limits: [
      { says: "7 g/m² a year.", source: "committee of the European Union", standing: "quoted" },
      {
        says: "About 2 g/m² a year can be reached with edges, traps and brushes.",
        source: "study by a consultant",
        standing: "quoted",
      },
      {
        says: "Polymer infill may not be sold in the European Union from 17 October 2031.",
        source: "Regulation 2023/2055",
        standing: "quoted",
      },
    ],
    method: "What is topped up in a year less what is taken off, by weigh ticket, over the area.",
    asked: "Records of top-up from fields in use, and the edges, traps and brushes that are in the price.",
    caution: "Most of the depth that a spot loses is moved to another spot and has not left the field.",
  },
] as const satisfies readonly LibraryEntry[];
