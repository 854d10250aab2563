import { methodOf, type StatedMethod } from "#lib/claim";
import { quantityInPhrase, say } from "#lib/figure";
import { type In, type Interval, measured } from "#lib/quantity";
import { leastDeformation } from "../footfall-bounds";
import { claimInput, constantInput } from "../inputs";
import type { CheckedBid, Found, Rule } from "../model";
import { sameCondition } from "../same-test";
import { type StatedFigure, statedFigures } from "../stated-figures";

/** Room for the tolerances of mass and spring, and for averaging over drops and places. */
const apparatusShare = 0.2;

/** Outside of every window of the sports bodies (at most 11 mm; at least 55 %), and a good way beyond. */
const deepAndHard = { deformation: measured("length", 13, "mm"), shockAbsorption: measured("fraction", 45, "%") };

/** One device gives both from one drop: a soft footfall needs some travel, and much travel softens it. */
export const shockAbsorptionAndDeformation: Rule = {
  id: "shock-absorption-and-deformation",
  title: "Shock absorption and vertical deformation do not go together",
  holds: "shock absorption against vertical deformation by the artificial athlete with one record for both",
  tolerance:
    "20 % below the least deformation that the energy of the drop needs; upwards 2 mm and 10 % beyond the windows of the sports bodies (common practice, no source)",
  check: (bid) =>
    statedFigures(bid.claims, "shock-absorption").flatMap((absorption) =>
      statedFigures(bid.claims, "vertical-deformation").flatMap((deformation) =>
        foundFor(bid, absorption, deformation),
      ),
    ),
};

type Absorption = StatedFigure<"shock-absorption">;
type Deformation = StatedFigure<"vertical-deformation">;

function foundFor(bid: CheckedBid, absorption: Absorption, deformation: Deformation): readonly Found[] {
  const oneRecord = [absorption, deformation].every(({ claim }) => recordsBoth(claim.method));
  if (!oneRecord || !sameCondition(absorption.claim, deformation.claim)) return [];
  const reason = reasonAgainst(absorption.interval, deformation.interval);
  if (reason === null) return [];
  const [absorptionShown, deformationShown] = [
    quantityInPhrase("fraction", absorption.interval),
    quantityInPhrase("length", deformation.interval),
  ];
  return [
    {
      severity: "needs an answer",
      claims: [absorption.claim.id, deformation.claim.id],
      told: () => ({
        sentence: say`The bid states a shock absorption of ${absorptionShown} and a vertical deformation of ${deformationShown}. ${reason.words}`,
        question: say`Your bid states a shock absorption of ${absorptionShown} and a vertical deformation of ${deformationShown}. Are both from the same drops, and can you send the report with the single values?`,
        working: {
          formula: reason.formula,
          inputs: [claimInput(bid, absorption.claim), claimInput(bid, deformation.claim), ...reason.inputs],
          assumptions: reason.assumptions,
          source: reason.source,
        },
      }),
    },
  ];
}

type Reason = Readonly<{
  words: ReturnType<typeof say>;
  formula: string;
  inputs: readonly ReturnType<typeof constantInput>[];
  assumptions: readonly string[];
  source: string;
}>;

function reasonAgainst(absorption: Interval<"1">, deformation: Interval<"m">): Reason | null {
  if (Number.isFinite(absorption.low) && absorption.low < 1) {
    const least = leastDeformation(absorption.low);
    if (deformation.high < least * (1 - apparatusShare)) return tooShallow(least);
  }
  const isDeepAndHard = deformation.low > deepAndHard.deformation && absorption.high < deepAndHard.shockAbsorption;
  return isDeepAndHard ? tooDeep : null;
}

const tooShallow = (least: In<"m">): Reason => ({
  words: say`To take up that much of the drop, a surface has to sink in by about ${quantityInPhrase("length", least)} or more.`,
  formula:
    "d ≥ (m·g·(fall + F/k) − F²/2k) ÷ (F − m·g), with F the peak force = force on concrete × (1 − shock absorption)",
  inputs: [constantInput("Artificial athlete", "20 kg falling 55 mm (2.2 in) on a spring of 2,000 N/mm")],
  assumptions: [
    "Mass, fall and spring of the device are from memory.",
    "20 % are allowed for the tolerances of the device and for averages (common practice, no source).",
  ],
  source: "derived from conservation of energy",
});

const tooDeep: Reason = {
  words: say`A surface that gives that far usually takes up more of the drop (rule of thumb: common practice, no source).`,
  formula: "not more than 13 mm (0.51 in) of deformation together with less than 45 % of shock absorption",
  inputs: [
    constantInput(
      "Widest windows of the sports bodies",
      "at least 55 % shock absorption, at most 11 mm (0.43 in) deformation",
    ),
  ],
  assumptions: ["The windows of the sports bodies are widened by 2 mm (0.08 in) and 10 %."],
  source:
    "common practice, no source; windows: FIFA handbook as quoted in trade press, World Rugby performance specification from memory",
};

const recordsBoth = (method: StatedMethod): boolean =>
  method !== "not-stated" && methodOf(method).measuresLike === "advanced-athlete";
