import { failed, measured, succeeded } from "#lib/quantity";
import { carpetChain } from "./chains";
import { figureInput, notGiven, oneNumber, parameterInput, workedOut } from "./inputs";
import type { TechnicalLink } from "./model";

/** Taking one generation of carpet and infill to where it ends, by mass. */
export const removalAndDisposal: TechnicalLink = {
  id: "removal-and-disposal",
  label: "Removal and disposal",
  does: "Weighs carpet and infill, and prices tipping and haul by mass less what recycling pays.",
  parameters: ["carpetMass", "tippingFee", "haul", "recyclingCredit"],
  byName: null,
  item: null,
  category: "removal-and-disposal",
  compute: ({ facts, parameters, lines }) => {
    const { tippingFee, haul, recyclingCredit } = parameters;
    if (tippingFee === null) return notGiven("the tipping fee by mass");
    const chain = carpetChain(lines);
    if (chain === null)
      return failed("The bid has no price line of a carpet with a life, so there is nothing to remove.");
    if (chain.removal !== null && chain.removalGivenBy === "bid") {
      return failed(`“${chain.label}” holds the bidder’s own price for removal, so none is computed.`);
    }
    const infill = oneNumber("the mass of the infill", facts.infillMass);
    if (!infill.ok) return infill;
    const own = parameters.carpetMass;
    const carpet =
      own === null
        ? oneNumber("the mass of the carpet", facts.carpetMass)
        : succeeded({ value: own.value, assumptions: [] });
    if (!carpet.ok) return carpet;
    const mass = measured("mass", infill.value.value + carpet.value.value * facts.area);
    const perMass = tippingFee.value + (haul?.value ?? 0) - (recyclingCredit?.value ?? 0);
    const parts = [
      tippingFee.asEntered,
      ...(haul === null ? [] : [`+ ${haul.asEntered}`]),
      ...(recyclingCredit === null ? [] : [`− ${recyclingCredit.asEntered}`]),
    ];
    return succeeded({
      kind: "changes",
      line: {
        ...chain,
        removal: {
          kind: "per-unit",
          quantity: workedOut("mass", mass),
          unitPrice: {
            ...tippingFee,
            value: measured("moneyPerMass", perMass),
            asEntered: parts.length === 1 ? tippingFee.asEntered : `(${parts.join(" ")})`,
          },
        },
        removalGivenBy: "owner-estimate",
      },
      working: {
        formula: "removal = (infill mass + carpet mass per area × area) × (tipping fee + haul − recycling credit)",
        inputs: [
          figureInput("Mass of the infill", facts.infillMass, "stabilisingMass"),
          own === null
            ? figureInput("Mass of the carpet per area", facts.carpetMass, "carpet-total-mass")
            : parameterInput("Mass of the carpet per area", "carpetMass", own),
          parameterInput("Tipping fee", "tippingFee", tippingFee),
          ...(haul === null ? [] : [parameterInput("Haul", "haul", haul)]),
          ...(recyclingCredit === null ? [] : [parameterInput("Recycling credit", "recyclingCredit", recyclingCredit)]),
        ],
        assumptions: [
          ...infill.value.assumptions,
          ...carpet.value.assumptions,
          ...(chain.removal === null
            ? []
            : [`It takes the place of the owner’s estimate of removal in “${chain.label}”.`]),
          "What was brought as top-up in between is not weighed.",
        ],
        source: "derived from the mass",
      },
    });
  },
};
