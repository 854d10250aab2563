import { type Claim, propertyOf } from "#lib/claim";
import { intervalOfFigure, say } from "#lib/figure";
import { claimInput, figureInput } from "../inputs";
import type { Rule } from "../model";
import { type Said, saidIn } from "../said";
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
  tolerance: "1 % of the infill’s mass, too little to see (common practice, no source)",
  check: (bid) => {
    const share = intervalOfFigure(bid.floatProneShare);
    if (share === null || share.high <= negligible) return [];
    const surely = share.low > negligible;
    const shareShown = spanInPhrase("fraction", share);
    return bid.claims.flatMap((claim) => {
      const said = stayingIn(bid.id, claim);
      if (said === null) return [];
      return [
        {
          severity: surely ? ("needs an answer" as const) : ("note" as const),
          claims: said.claims,
          overClaims: surely ? said.claims : [],
          told: () => ({
            sentence: surely
              ? say`The bid says “${said.words}”; ${shareShown} of its infill’s mass floats in fresh water.`
              : say`The bid says “${said.words}”; ${shareShown} of its infill’s mass may float in fresh water, which its recipe and moisture decide.`,
            question: say`You state “${said.words}”. As ${shareShown} of the infill’s mass ${surely ? "floats" : "may float"} in fresh water, which test or flooded field shows how it behaves in heavy rain, and what keeps it on the field?`,
            working: {
              formula: "grains float where their density is below that of fresh water, 998 kg/m³",
              inputs: [figureInput("Float-prone share of the infill’s mass", bid.floatProneShare), said.input()],
              assumptions: [
                "What floats is taken from the particle densities of the material catalogue.",
                "How far it travels depends on rain, slope, drainage and what stands around the field.",
              ],
              source: "Archimedes’ principle; particle densities as the material catalogue gives them",
            },
          }),
        },
      ];
    });
  },
};

/** A statement that infill stays where it is, or sinks; null where the claim states no such thing. */
function stayingIn(bid: string, claim: Claim): Said | null {
  if (claim.property === "infill-flotation") {
    if (claim.value.kind !== "choice" || claim.value.choice !== "sinks") return null;
    const property = propertyOf("infill-flotation");
    const choices = property.kind === "choice" ? property.choices : [];
    const words = choices.find(({ id }) => id === "sinks")?.label ?? "sinks";
    return { words, claims: [claim.id], keyedBy: [claim.id], input: () => claimInput({ id: bid }, claim) };
  }
  const said = claim.property === "infill-migration" ? saidIn(bid, claim) : null;
  return said !== null && stays.test(said.words) ? said : null;
}
