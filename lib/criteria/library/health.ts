import { fromMemory, nowhere, published, quoted, shownBy, underHeading } from "./terms";

const notHealth =
  "A content or migration test is no conclusion on health, and law changes: date every rule and ask counsel which applies.";

/** What a surface holds and what leaves it. */
export const health = underHeading("health", [
  {
    id: "lead",
    measure: "lead-content.f2765",
    label: "Lead in the fibre",
    reason: "Lead harms children.",
    source: "100 mg/kg: limit for products for children in the United States, from memory.",
    gate: { kind: "at-most", limit: "100 mg/kg" },
    evidence: shownBy("accredited-laboratory", "ask-first"),
    limits: [
      quoted("At most 300 mg/kg in the fibre.", "ASTM F2765, text of 2009"),
      fromMemory("At most 100 mg/kg in products for children.", "law of the United States"),
      quoted("Soluble lead in infill at most 90 mg/kg.", "ASTM F3188, which takes the limits of ASTM F963"),
    ],
    method: "ASTM F2765: total lead in the fibre. What comes out of infill is another figure, by ASTM F3188.",
    asked: "The test report with the list of limits named; lists differ by country and purpose.",
    caution: notHealth,
  },
  {
    id: "aromatic-hydrocarbons",
    measure: "pah-sum.f3496",
    label: "Polycyclic aromatic hydrocarbons in the infill",
    reason: "Several of these compounds can cause cancer, and laws limit their sum in infill.",
    source: "20 mg/kg: European Union, Regulation 2021/1199.",
    gate: { kind: "at-most", limit: "20 mg/kg" },
    evidence: shownBy("accredited-laboratory", "ask-first"),
    limits: [
      quoted(
        "Sum of eight at most 20 mg/kg in granules and mulch, since 10 August 2022.",
        "European Union, Regulation 2021/1199, entry 50",
      ),
      nowhere("No limit of the whole United States is known to us."),
    ],
    method: "ASTM F3496: content of the infill.",
    asked: "A report of the very batch or grade of infill, with the compounds named.",
    caution: notHealth,
  },
  {
    id: "fluorine",
    measure: "total-fluorine.total-fluorine-combustion",
    label: "Total fluorine",
    reason: "Some states forbid turf with PFAS added on purpose, and these compounds stay in soil and water.",
    source: "100 mg/kg: the sum of organic fluorine by which some states define PFAS.",
    gate: { kind: "at-most", limit: "100 mg/kg" },
    evidence: shownBy("accredited-laboratory", "ask-first"),
    limits: [
      published(
        "Some states define PFAS by total organic fluorine, for instance 100 parts in a million.",
        "note of a law firm",
      ),
      published(
        "Colorado: no installing of turf with PFAS added on purpose from 1 January 2026.",
        "summary of the enacted law",
      ),
    ],
    method: "Combustion and ion chromatography of carpet, coating and infill, each by itself.",
    asked: "A report for each part, and a statement in writing on PFAS added on purpose.",
    caution: `Total fluorine is a screen: inorganic fluoride counts too, so it starts a question and does not end it. ${notHealth}`,
  },
  {
    id: "infill-loss",
    measure: "infill-loss.infill-weigh-tickets",
    label: "Infill that leaves the field in a year",
    reason: "It is both pollution and cushion lost, and it has to agree with the yearly top-up.",
    source:
      "7 g/m² a year: mark of a committee of the European Union, as quoted in trade press. Nothing from: the owner’s.",
    score: { kind: "less-is-better", best: "7 g/m²/year", worst: "100 g/m²/year" },
    points: "10",
    limits: [
      quoted("7 g/m² a year.", "committee of the European Union"),
      quoted("About 2 g/m² a year can be reached with edges, traps and brushes.", "study by a consultant"),
      quoted("Polymer infill may not be sold in the European Union from 17 October 2031.", "Regulation 2023/2055"),
    ],
    method: "What is topped up in a year less what is taken off, by weigh ticket, over the area.",
    asked: "Records of top-up from fields in use, and the edges, traps and brushes that are in the price.",
    caution: "Most of the depth that a spot loses is moved to another spot and has not left the field.",
  },
]);
