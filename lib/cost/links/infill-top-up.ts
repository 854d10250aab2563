import { measured, succeeded } from "#lib/quantity";
import { addedLine } from "./added-line";
import { figureInput, notGiven, oneNumber, parameterInput, workedOut } from "./inputs";
import type { TechnicalLink } from "./model";

/** Infill brought every year for what was moved off its place and carried off the field. */
export const infillTopUp: TechnicalLink = {
  id: "infill-top-up",
  label: "Infill top-up",
  does: "Takes a share of the infill mass every year and prices it by mass.",
  parameters: ["displacementShare", "carryOffShare", "topUpPrice"],
  byName: { words: /top[- ]?(up|off|dress)/i, paid: "again" },
  item: null,
  category: "operation-and-maintenance",
  compute: ({ facts, parameters: { displacementShare, carryOffShare, topUpPrice } }) => {
    if (topUpPrice === null) return notGiven("the price of infill by mass");
    const mass = oneNumber("the mass of the infill", facts.infillMass);
    if (!mass.ok) return mass;
    const yearly = measured("mass", mass.value.value * (displacementShare.value + carryOffShare.value));
    return succeeded({
      kind: "adds",
      line: addedLine(infillTopUp, {
        ...{ kind: "yearly", from: null, to: null, escalation: null },
        amount: { kind: "per-unit", quantity: workedOut("mass", yearly), unitPrice: topUpPrice },
      }),
      working: {
        formula: "top-up a year = mass × (share moved off its place + share carried off) × price by mass",
        inputs: [
          figureInput("Mass of the infill", facts.infillMass, "stabilisingMass"),
          parameterInput("Share moved off its place a year", "displacementShare", displacementShare),
          parameterInput("Share carried off a year", "carryOffShare", carryOffShare),
          parameterInput("Price of infill", "topUpPrice", topUpPrice),
        ],
        assumptions: [...mass.value.assumptions, "What is moved off its place is made up with new infill."],
        source: "derived; a top-up of 1 to 5 % of the first mass a year is common practice, no source",
      },
    });
  },
};
