import { type Claim, claimsFor, type FamilyId, inSentence, methodOf, propertyOf, quantityOf } from "#lib/claim";
import { type Phrase, quantityInPhrase, say } from "#lib/figure";
import { intervalOf, measured } from "#lib/quantity";
import { claimInput, constantInput } from "../inputs";
import type { CheckedBid, Found, Rule, Severity } from "../model";

/** Numbers that belong to one device and are sometimes written beside the other. */
const limitsOfDevices = {
  /** From here on a light hammer's limit looks like one of the flat missile: a guideline says 165, the standard 200. */
  flatMissileFrom: measured("impactLevel", 165, "g"),
  /** Up to here a flat missile's limit looks like one of the light hammer: a professional league asks for less than 100. */
  hammerUpTo: measured("impactLevel", 100, "g"),
};

const hammer: FamilyId = "clegg-2.25-455";
const flatMissile: FamilyId = "missile-a-610";

/** What words say of a device. */
const hammerWords = /\b(clegg|f[ -]?1702|5[ -]?(lbs?|pounds?)|2\.25[ -]?kg)\b/i;
const flatMissileWords = /\b(f[ -]?1936|missile a|flat missile|20[ -]?(lbs?|pounds?)|9\.1[ -]?kg)\b/i;

/** The limit of one device says nothing on another: “below 200” and “below 100” are for unlike missiles. */
export const deviceMixUp: Rule = {
  id: "device-mix-up",
  title: "An impact limit that belongs to another device",
  holds: "the device named for each impact limit against the device that its number or its own words belong to",
  tolerance:
    "a light hammer’s limit fires from 165 g on, a flat missile’s up to 100 g (common practice, no source); words fire only where they name the other device alone",
  check: (bid) => impactClaims(bid).flatMap((claim) => foundFor(bid, claim)),
};

/** Guarantees, and every stated level, as a level written as “below 200” is a limit too. */
const impactClaims = ({ claims }: CheckedBid): readonly Claim[] => [
  ...claimsFor(claims, "warranty-hardness-limit"),
  ...claimsFor(claims, "g-max"),
];

function foundFor(bid: CheckedBid, claim: Claim): readonly Found[] {
  if (claim.method === "not-stated") return [];
  const reason = mixUpInWords(claim) ?? mixUpInNumber(claim);
  if (reason === null) return [];
  const { designation } = methodOf(claim.method);
  return [
    {
      severity: reason.severity,
      claims: [claim.id],
      told: () => ({
        sentence: reason.words,
        question: say`Your bid gives ${designation} as the method for ${inSentence(propertyOf(claim.property).label)}. With which device, mass and drop height is this figure tested?`,
        working: {
          formula: "device of a limit = device that the limit is known for",
          inputs: [
            claimInput(bid, claim),
            constantInput("Usual limits", "flat missile 165 g or 200 g; light hammer 100 g"),
          ],
          assumptions: ["Which number belongs to which device is a rule of thumb of the trade."],
          source:
            "ASTM F1702, scope: figures of unlike devices do not compare; ASTM work item WK38153 for 200; common practice, no source, for the rest",
        },
      }),
    },
  ];
}

type Reason = Readonly<{ severity: Severity; words: Phrase }>;

function mixUpInWords({ method, words }: Claim): Reason | null {
  if (method === "not-stated") return null;
  const { designation, measuresLike } = methodOf(method);
  const [namesHammer, namesFlatMissile] = [hammerWords.test(words), flatMissileWords.test(words)];
  if (namesHammer === namesFlatMissile) return null;
  const named = namesHammer ? hammer : flatMissile;
  if (measuresLike === named || (measuresLike !== hammer && measuresLike !== flatMissile)) return null;
  return {
    severity: "needs an answer",
    words: say`The bid’s own words name ${namesHammer ? "the light hammer" : "the flat missile"}, while the method given is ${designation}.`,
  };
}

function mixUpInNumber(claim: Claim): Reason | null {
  const limit = limitOf(claim);
  if (limit === null || claim.method === "not-stated") return null;
  const { designation, measuresLike } = methodOf(claim.method);
  const shown = quantityInPhrase("impactLevel", limit);
  if (measuresLike === hammer && limit >= limitsOfDevices.flatMissileFrom) {
    return {
      severity: "needs an answer",
      words: say`A limit of ${shown} is given for ${designation}. Limits of that size are known for the flat missile of 20 lb (9.1 kg); the light hammer is usually held to 100 g (rule of thumb: common practice, no source).`,
    };
  }
  if (measuresLike === flatMissile && limit <= limitsOfDevices.hammerUpTo) {
    return {
      severity: "note",
      words: say`A limit of ${shown} is given for ${designation}, the flat missile of 20 lb (9.1 kg). Limits of that size are known for the light hammer (rule of thumb: common practice, no source).`,
    };
  }
  return null;
}

/** The number that a guarantee or a one-sided level does not exceed; null for measured levels. */
function limitOf(claim: Claim) {
  const guarantee = quantityOf(claim, "warranty-hardness-limit");
  if (guarantee !== null) return finite(intervalOf(guarantee.reading).high);
  const level = quantityOf(claim, "g-max");
  if (level === null) return null;
  const { low, high } = intervalOf(level.reading);
  return low === Number.NEGATIVE_INFINITY ? finite(high) : null;
}

const finite = <N extends number>(value: N): N | null => (Number.isFinite(value) ? value : null);
