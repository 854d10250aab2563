import { failed, succeeded } from "#lib/quantity";
import { carpetChain, shockLayerChain } from "./chains";
import { notGiven } from "./inputs";
import type { TechnicalLink } from "./model";

/** A shock layer that stays under several carpets is renewed with every so many of them. */
export const shockLayer: TechnicalLink = {
  id: "shock-layer",
  label: "Shock layer under several carpets",
  does: "Renews the shock layer after so many carpets instead of after the years stated.",
  parameters: ["shockLayerLives"],
  byName: null,
  item: null,
  category: "replacement",
  compute: ({ facts, parameters: { shockLayerLives }, lines }) => {
    const pad = shockLayerChain(lines);
    if (pad === null) return failed("The bid has no price line of a shock layer with a life.");
    const carpet = carpetChain(lines);
    if (carpet === null || carpet.id === pad.id)
      return failed("The bid has no price line of a carpet whose lives could be counted.");
    if (carpet.reuse !== null)
      return failed(`“${carpet.label}” takes its own life from another part, so its lives can’t be counted.`);
    const claimed = facts.shockLayerLives;
    const lives = shockLayerLives?.value ?? claimed?.lives ?? null;
    if (lives === null || !Number.isInteger(lives))
      return notGiven("the whole number of carpets that the shock layer stays under");
    return succeeded({
      kind: "changes",
      line: { ...pad, reuse: { line: carpet.id, lives: { asEntered: `${lives}`, years: lives } } },
      working: {
        formula: "life of the shock layer = number of carpets × life of the carpet",
        inputs: [
          shockLayerLives !== null || claimed === null
            ? { label: "Carpets", text: `${lives}`, from: { kind: "costing", field: "linkParameters.shockLayerLives" } }
            : { label: "Carpets, as the bid claims", text: `${lives}`, from: claimed.from },
          {
            label: `Life of “${carpet.label}”`,
            text: carpet.life.asEntered,
            from: { kind: "figure", figure: carpet.id },
          },
        ],
        assumptions: [`It takes the place of the life of ${pad.life.asEntered} that is entered for “${pad.label}”.`],
        source: "derived",
      },
    });
  },
};
