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
      "{maker}|bidder own? {laboratory} ~3 only|alone|exclusively",
      "{maker}|bidder own? {laboratory} and|or no other",
      "{maker}|bidder own? {laboratory} ~6 sole|only|final|alone|binding|conclusive",
      "{laboratory} of the ~2 {maker} only|alone|exclusively",
      "{laboratory} named|chosen|designated|approved|selected|picked|appointed by the ~1 {maker}|bidder",
      "only|solely|exclusively by? the? in house ~2 test*",
      "only|solely|exclusively by? the? in house {laboratory}",
      "{maker}|bidder ~1 selects|select|names|name|chooses|choose|approves|appoints the|a ~1 {laboratory}",
      "only one|the|that ~2 {laboratory} ~6 may|can|is|are|accepted|test|tests|tested|report|reports",
      "only|solely|exclusively ~3 from|by|at|of one|a|the single? ~1 {laboratory} of|in|at|named|that",
      "no|any {laboratory} other than",
      "no other {laboratory}",
      "no ~1 other|further {laboratory}",
      "one {laboratory} only|alone",
      "{laboratory} ~1 other than ~9 not|no|rejected",
    ],
  }),
];
