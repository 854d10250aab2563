import type { Accreditation, Claim } from "#lib/claim";
import { type Phrase, say } from "#lib/figure";
import { propertiesOf } from "../in-words";
import { claimInput } from "../inputs";
import type { CheckedBid, Found, Rule } from "../model";

/** Evidence by an accredited laboratory stands only where the accreditation covers the method. */
export const laboratoryNotAccredited: Rule = {
  id: "laboratory-not-accredited",
  title: "An accreditation that is missing or not shown",
  holds: "claims shown by an accredited laboratory against what is known of its accreditation",
  tolerance: "none",
  check: (bid) => [
    ...foundFor(bid, "not-accredited", {
      severity: "needs an answer",
      sentence: (what) =>
        say`For ${what} the evidence is given as an accredited laboratory, while the laboratory is not accredited for the method.`,
      question: (what) =>
        say`Which laboratory accredited to ISO/IEC 17025 for the method tested ${what}, and can you send its report?`,
    }),
    ...foundFor(bid, "not-stated", {
      severity: "note",
      sentence: (what) =>
        say`For ${what} the evidence is given as an accredited laboratory; an accreditation for the method is not shown.`,
      question: (what) =>
        say`Please send the certificate and scope of accreditation to ISO/IEC 17025 of the laboratory that tested ${what}.`,
    }),
  ],
};

type Words = Readonly<{
  severity: Found["severity"];
  sentence: (what: string) => Phrase;
  question: (what: string) => Phrase;
}>;

function foundFor(bid: CheckedBid, accreditation: Accreditation, words: Words): readonly Found[] {
  const claims = laboratoryClaims(bid).filter((claim) => claim.accreditation === accreditation);
  if (claims.length === 0) return [];
  const what = propertiesOf(claims);
  return [
    {
      severity: words.severity,
      claims: claims.map(({ id }) => id),
      keyedBy: [accreditation],
      told: () => ({
        sentence: words.sentence(what),
        question: words.question(what),
        working: {
          formula: "evidence “accredited laboratory” = report of a laboratory accredited for the method",
          inputs: claims.map((claim) => claimInput(bid, claim)),
          assumptions: [],
          source: "ISO/IEC 17025: accreditation is granted for named methods (from memory)",
        },
      }),
    },
  ];
}

const laboratoryClaims = ({ claims }: CheckedBid): readonly Claim[] =>
  claims
    .filter(({ evidence }) => evidence === "accredited-laboratory")
    .toSorted((one, other) => (one.id < other.id ? -1 : 1));
