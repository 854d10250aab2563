import { legalBases } from "../legal-basis";
import type { LanguageRule } from "../model";
import { phraseRule } from "../phrase-rule";

const about = {
  family: "single-laboratory",
  severity: "may shut others out",
  basis: [legalBases.equalAccess, legalBases.arbitrary],
  offered:
    "Accept reports of any independent laboratory that is accredited to ISO/IEC 17025 for the method, with method edition, date and specimen named; the owner engages the laboratory for tests on the field.",
} as const;

/** Tests that one laboratory alone may make. */
export const singleLaboratory: readonly LanguageRule[] = [
  phraseRule({
    ...about,
    id: "named-laboratory",
    concern: "One laboratory is named and no other accredited one is allowed.",
    phrases: [
      "by|at|from|of|than|through|only the? @laboratory",
      "@laboratory ~2 only|alone|exclusively",
      "tests|tested|testing|test|reports|report|results by|from|at @name only|exclusively|solely",
      "only|exclusively|solely ~3 reports|report|results|tests by|from|of|at @name",
    ],
    cleanBy: ["or ~3 other|another|equivalent|any|equal ~3", "any ~2 accredited", "listed|accredited by"],
  }),
  phraseRule({
    ...about,
    id: "maker-laboratory",
    concern: "The maker’s own or chosen laboratory alone may test, so no independent figure is allowed.",
    phrases: [
      "manufacturer|supplier|maker|bidder|producer laboratory|laboratories|lab ~2 only|alone|exclusively",
      "manufacturer|supplier|maker|bidder|producer laboratory|laboratories|lab and|or no other",
      "manufacturer|supplier|maker|bidder|producer own? laboratory|laboratories|lab ~3 sole|only|final|alone",
      "laboratory|lab of the ~2 manufacturer|supplier|maker|producer only|alone|exclusively",
      "laboratory|lab named|chosen|designated|approved|selected by the ~1 manufacturer|supplier|maker|producer|bidder",
      "only|solely|exclusively by? the? in house ~2 test*",
      "only|solely|exclusively by? the? in house laboratory|lab",
      "manufacturer|supplier|maker|bidder|producer ~1 selects|select|names|name|chooses|choose|approves|appoints the|a ~1 laboratory|lab",
      "only one laboratory|lab",
      "no other laboratory|lab",
    ],
  }),
];
