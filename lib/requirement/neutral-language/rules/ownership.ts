import { legalBases } from "../legal-basis";
import type { LanguageRule } from "../model";
import { phraseRule } from "../phrase-rule";

const basis = [legalBases.makeOrSource, legalBases.brandName];

/** Marks of ownership: signs, patents, trade marks. */
export const ownership: readonly LanguageRule[] = [
  phraseRule({
    id: "ownership-sign",
    family: "ownership",
    severity: "may shut others out",
    concern: "The sign of a registered name ties the text to one owner of that name.",
    basis,
    offered: "Take the name out and state what the thing has to do: result, test method with edition, limit.",
    phrases: ["™|®|℠|©", "( tm|r|sm )"],
    orEqual: "clean",
  }),
  phraseRule({
    id: "patent",
    family: "ownership",
    severity: "may shut others out",
    concern: "A patent belongs to one owner, so the words shut out every other way to the same result.",
    basis,
    offered:
      "State the result that is wanted from this part, with test and limit, and accept any way to it. Ask bidders separately to hold the owner harmless from patent claims.",
    phrases: ["patented", "patent pending", "patent|patents", "patent number|no"],
    cleanBy: ["infringement|infringe*|royalties|royalty|indemnif*|harmless|whether", "design|utility patent law"],
    denied: "clean",
  }),
  phraseRule({
    id: "trade-mark",
    family: "ownership",
    severity: "may shut others out",
    concern: "A trade mark belongs to one owner, so only that owner or a licensee can supply it.",
    basis,
    offered: "Describe the feature by what can be measured on it, with a range, and leave the name out.",
    phrases: [
      "registered design|name|designs",
      "registered? trademark*",
      "registered? trade mark|marks|marked|name|names",
      "copyright*",
    ],
    cleanBy: [
      "infringement|infringe*|royalties|indemnif*|harmless|whether",
      "school|schools|owner|owners|district|team|teams ~2 trademark*|copyright*", // the owner’s own marks
      "trademark*|copyright* ~2 mascot|logo|logos|emblem|seal|school|owner|district",
      "copyright* ~3 drawings|documents|specifications|plans",
    ],
    denied: "clean",
    orEqual: "clean",
  }),
];
