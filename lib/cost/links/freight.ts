import { measured, succeeded } from "#lib/quantity";
import { addedLine } from "./added-line";
import { figureInput, notGiven, oneNumber, parameterInput, workedOut } from "./inputs";
import type { TechnicalLink } from "./model";

/** Converting units leaves a last bit; that much over a full load is no further truck. */
const lastBit = 1e-9;

/** Freight of the infill: whole truck loads at a price a load. */
export const freight: TechnicalLink = {
  id: "freight",
  label: "Freight of the infill",
  does: "Counts the truck loads of the infill mass and prices each load.",
  parameters: ["payload", "freightPerLoad"],
  byName: { words: /freight|haul(age|ing)? to (the )?site|deliver/i, paid: "once" },
  item: "freight",
  category: "investment",
  compute: ({ facts, parameters: { payload, freightPerLoad } }) => {
    if (freightPerLoad === null) return notGiven("the price of a truck load");
    const mass = oneNumber("the mass of the infill", facts.infillMass);
    if (!mass.ok) return mass;
    const loads = measured("count", Math.ceil((mass.value.value / payload.value) * (1 - lastBit)));
    return succeeded({
      kind: "adds",
      line: addedLine(freight, {
        kind: "at-base-date",
        amount: {
          kind: "per-unit",
          quantity: { ...workedOut("count", loads), asEntered: `${loads} loads` },
          unitPrice: freightPerLoad,
        },
      }),
      working: {
        formula: "freight = mass ÷ payload, rounded up to whole loads, × price of a load",
        inputs: [
          figureInput("Mass of the infill", facts.infillMass, "stabilisingMass"),
          parameterInput("Payload of a truck", "payload", payload),
          parameterInput("Price of a load", "freightPerLoad", freightPerLoad),
        ],
        assumptions: [...mass.value.assumptions, "Materials share a truck."],
        source: "derived from the payload",
      },
    });
  },
};
