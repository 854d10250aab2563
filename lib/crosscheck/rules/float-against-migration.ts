import { claimsFor } from "#lib/claim";
import { intervalOfFigure, say } from "#lib/figure";
import { figureInput } from "../inputs";
import type { Rule } from "../model";
import { saidIn } from "../said";
import { spanInPhrase } from "../span";

/** A share that is too small to see. */
const negligible = 0.01;

const stays =
  /\b(?:stays?|remains?|keeps?)\b[^.;]{0,30}\b(?:in place|put|where)\b|\b(?:not?|n[o’']t|never|cannot|without|zero|neither|won[’']t|doesn[’']t)\b[^.;]{0,24}\b(?:migrat\w*|float\w*|flotation|mov\w*|wash\w*|drift\w*|displac\w*)|\b(?:migration|flotation)[ -]free\b/iu;

/** Infill that floats leaves its place in heavy rain and flooding, whatever is said of it. */
export const floatAgainstMigration: Rule = {
  id: "float-against-migration",
  title: "Infill that floats is said to stay in place",
  holds: "the share of the infill that floats in fresh water against statements that it stays in place",
  tolerance: "1 % of the infill’s mass",
  check: (bid) => {
    const share = intervalOfFigure(bid.floatProneShare);
    if (share === null || share.high <= negligible) return [];
    const surely = share.low > negligible;
    const shareShown = spanInPhrase("fraction", share);
    return claimsFor(bid.claims, "infill-migration").flatMap((claim) => {
      const said = saidIn(bid.id, claim);
      if (said === null || !stays.test(said.words)) return [];
      return [
        {
          severity: surely ? ("needs an answer" as const) : ("note" as const),
          claims: said.claims,
          overClaims: surely ? said.claims : [],
          sentence: surely
            ? say`The bid says “${said.words}”; ${shareShown} of its infill’s mass floats in fresh water.`
            : say`The bid says “${said.words}”; ${shareShown} of its infill’s mass may float in fresh water, which its recipe and moisture decide.`,
          question: say`You state “${said.words}”. As ${shareShown} of the infill’s mass ${surely ? "floats" : "may float"} in fresh water, which test or flooded field shows how it behaves in heavy rain, and what keeps it on the field?`,
          working: {
            formula: "grains float where their density is below that of fresh water, 998 kg/m³",
            inputs: [figureInput("Float-prone share of the infill’s mass", bid.floatProneShare), said.input],
            assumptions: [
              "What floats is taken from the particle densities of the material catalogue.",
              "How far it travels depends on rain, slope, drainage and what stands around the field.",
            ],
            source: "Archimedes’ principle; particle densities as the material catalogue gives them",
          },
        },
      ];
    });
  },
};
