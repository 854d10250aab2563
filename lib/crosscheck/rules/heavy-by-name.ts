import { intervalOfFigure, type Phrase, say } from "#lib/figure";
import { usualInfillMass } from "#lib/infill";
import { figureInput } from "../inputs";
import type { CheckedBid, Rule } from "../model";
import { saidInBid } from "../said";
import { spanInPhrase } from "../span";

/** Words that promise weight, and what the bid's infill is where it does not bear them out; null where it does. */
type Word = Readonly<{ word: string; pattern: RegExp; unlike: (bid: CheckedBid) => Phrase | null }>;

const notNegated = String.raw`(?<!\b(?:no|not|not a|without|non|instead of|than)[ -])`;
/** "Heavy" says nothing of the infill in "heavy use" or "heavy metals", so a word for the build has to follow. */
const heavyBuild = String.raw`\bheavy(?:[ -]?weight)?(?![ -](?:use|duty|traffic|rain|wear|play|metal|equipment|machine))(?:,?[ -]\p{L}+){0,2}?[ -](?:infill|sand|rubber|system|surface|build|ballast)(?![ -](?:machine|equipment))`;

/** What every pattern below holds, so that most sentences are read once. */
const anyWord = /heavy|sand|ballast/iu;

const words: readonly Word[] = [
  {
    word: "heavy",
    pattern: new RegExp(`${notNegated}${heavyBuild}`, "iu"),
    unlike: ({ totalArealDensity }) => {
      const total = intervalOfFigure(totalArealDensity);
      if (total === null || total.high > usualInfillMass.heavyAbove) return null;
      const limit = { low: usualInfillMass.heavyAbove, high: usualInfillMass.heavyAbove };
      return say`its infill weighs ${spanInPhrase("arealDensity", total)}, while the trade calls an infill heavy above ${spanInPhrase("arealDensity", limit)}`;
    },
  },
  {
    word: "sand-filled",
    pattern: new RegExp(String.raw`${notNegated}\bsand[ -](?:in)?filled\b`, "iu"),
    unlike: ({ mineralShare }) => {
      const share = intervalOfFigure(mineralShare);
      if (share === null || share.high >= 0.5) return null;
      return say`only ${spanInPhrase("fraction", share)} of its infill’s mass is mineral, such as sand`;
    },
  },
  {
    word: "ballasted",
    pattern: new RegExp(String.raw`${notNegated}\bballast(?:ed)?\b`, "iu"),
    unlike: ({ totalArealDensity }) => {
      const total = intervalOfFigure(totalArealDensity);
      if (total === null || total.high > usualInfillMass.allRubber.high) return null;
      return say`its infill weighs ${spanInPhrase("arealDensity", total)}, no more than an infill of rubber alone usually does`;
    },
  },
];

/** A surface that is called heavy, sand-filled or ballasted is one. */
export const heavyByName: Rule = {
  id: "heavy-by-name",
  title: "Called heavier than its infill is",
  holds: "words such as heavy, sand-filled and ballasted against the mass and the mineral share of the infill",
  tolerance: `heavy above 9 lb/ft², sand-filled from half of the mass, ballasted above 3.75 lb/ft²: rules of thumb (${usualInfillMass.source})`,
  check: (bid) =>
    saidInBid(bid).flatMap(({ words: said, claims, keyedBy, input }) => {
      if (!anyWord.test(said)) return [];
      const unborne = words.flatMap(({ word, pattern, unlike }) => {
        const difference = pattern.test(said) ? unlike(bid) : null;
        return difference === null ? [] : [{ word, difference }];
      });
      return unborne.slice(0, 1).map(({ word, difference }) => ({
        severity: "needs an answer" as const,
        claims,
        keyedBy,
        figures: ["infill mass" as const],
        overClaims: claims,
        told: () => ({
          sentence: say`The bid speaks of “${word}”; ${difference}. That is a rule of thumb (common practice, no source).`,
          question: say`Your bid speaks of “${word}”; ${difference}. What does the word stand for, and what keeps the carpet in place?`,
          working: {
            formula: "the word against mass per area and mineral share of the infill",
            inputs: [
              input(),
              figureInput("Infill mass per area", bid.totalArealDensity),
              figureInput("Mineral share", bid.mineralShare),
            ],
            assumptions: ["What such words stand for is a rule of thumb (common practice, no source)."],
            source: usualInfillMass.source,
          },
        }),
      }));
    }),
};
