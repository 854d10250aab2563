import { legalBases } from "../legal-basis";
import type { LanguageRule } from "../model";
import { phraseRule } from "../phrase-rule";

const about = { family: "shuts-out", severity: "may shut others out" } as const;

/** From where on a demand is told. Lower ones are usual in public work. @source common practice, no source */
const unusual = { fields: 21, yearsOfExperience: 11, yearsOfWarranty: 11, bondPercent: 101 } as const;

/** Experience, warranty, bonding and substitution terms that few can meet. */
export const shutsOut: readonly LanguageRule[] = [
  phraseRule({
    ...about,
    id: "many-installations",
    concern: "So many finished works are beyond most sound firms and do not show that this one will be done well.",
    basis: [legalBases.experienceAndBonding, legalBases.qualification],
    offered:
      "Ask for what the work needs: for example at least three to five fields of like size and make-up in the past five years, with the crew leader named.",
    phrases: [
      `#>=${unusual.fields} ~3 installations|fields|pitches`,
      `#>=${unusual.fields} projects|jobs|installs`,
      `#>=${unusual.fields} ~1 completed|finished|similar|comparable projects`,
    ],
    unless: [
      "#>=21 ~1 point*|drop*|test* ~3 fields",
      "# ft|m|yd|sq|acre|acres|hours|kg|lb|% ~4 fields",
      "#>=100 ~1 %|percent ~3 fields",
    ],
  }),
  phraseRule({
    ...about,
    id: "long-experience",
    concern: "The years asked for keep newer firms out whatever their work is like.",
    basis: [legalBases.experienceAndBonding, legalBases.qualification],
    offered: "Ask for at least three years of work of this kind, and for fields that can be visited and tested.",
    phrases: [
      `business|operation|operating|existence ~9 #>=${unusual.yearsOfExperience} years`,
      `continuous*|consecutive ~9 #>=${unusual.yearsOfExperience} years`,
      `#>=${unusual.yearsOfExperience} years ~6 experience|business|name|operation|existence`,
      `{firm} ~9 #>=${unusual.yearsOfExperience} years`,
      `#>=${unusual.yearsOfExperience} years ~1 in the trade|industry|field`,
      `experience ~6 #>=${unusual.yearsOfExperience} years`,
    ],
  }),
  phraseRule({
    ...about,
    id: "long-warranty",
    concern:
      "Eight years are usual. A longer term may be offered by few, and its length says little of what it covers.",
    basis: [legalBases.qualification, legalBases.equalAccess],
    offered:
      "Ask for at least 8 years, and for what is covered in each year, who pays labour and removal, and who insures it. Let a longer term score instead of gate.",
    phrases: [
      `warranty|warranties|guarantee ~8 #>=${unusual.yearsOfWarranty} year|years`,
      `#>=${unusual.yearsOfWarranty} year|years ~6 warranty|warranties|guarantee|guaranty`,
    ],
  }),
  phraseRule({
    ...about,
    id: "excessive-bond",
    concern: "A bond above the price of the contract keeps out firms that could do the work.",
    basis: [legalBases.experienceAndBonding],
    offered: "Ask for performance and payment bonds of 100 percent of the contract price, or what the law sets.",
    phrases: [
      `bond|bonds|bonding ~5 #>=${unusual.bondPercent} percent|%`,
      `#>=${unusual.bondPercent} percent|% ~4 bond|bonds`,
    ],
  }),
  phraseRule({
    ...about,
    id: "tied-installer",
    concern: "The maker decides by this who may bid, and may say no without a reason.",
    basis: [legalBases.qualification, legalBases.arbitrary],
    offered:
      "Ask that the crew leader has placed this kind of system on at least three finished fields, and that the warranty stays whole with the installer offered.",
    phrases: [
      "certified|authorised|authorized|approved|licensed|trained installer|installers|applicator|dealer of|by the ~2 manufacturer|maker|supplier|producer",
      "factory|manufacturer certified|authorised|authorized|trained|approved",
      "certified|authorised|authorized|approved|licensed by the ~1 manufacturer|maker|supplier|producer",
      "installer|installers|contractor|crew|crews|bidder ~5 certified|authorised|authorized|approved|licensed|trained by the? @name",
      "must|shall ~1 be a|an member|members|licensee|dealer of",
      "list|roster|network of certified|authorised|authorized|approved installers|dealers",
      "employees|employee of the ~1 manufacturer|maker|producer",
    ],
    denied: "clean",
  }),
  phraseRule({
    ...about,
    id: "size-of-firm",
    concern: "How much a firm sells or owns says little of the field it builds, and keeps smaller sound firms out.",
    basis: [legalBases.qualification, legalBases.experienceAndBonding],
    offered: "Ask for a bond of 100 percent of the contract price and for fields of like size that can be visited.",
    phrases: [
      "million|billion ~6 sales|revenue|revenues|turnover|volume|receipts|assets|worth",
      "sales|revenue|revenues|turnover|volume|receipts|assets|worth ~6 million|billion",
      "need not apply|bid|respond",
      "largest|biggest # ? {firm}",
      "among|one of? the? # largest|biggest",
    ],
    unless: ["insurance|liability|coverage ~9 million"],
    cleanBy: ["insurance|liability|coverage|bond"],
  }),
  phraseRule({
    ...about,
    id: "no-reason-given",
    concern: "A refusal without a reason can’t be checked, and nobody can put right what was amiss.",
    basis: [legalBases.arbitrary],
    offered:
      "Say by which characteristics an equal is judged, and that a refusal is answered in writing with its reason.",
    phrases: [
      "no reason|reasons|explanation ~3 given|stated|required|owed|offered|provided",
      "without|no ~1 reason|reasons|explanation|cause|obligation ~4 reject*|refus*|disqualif*|explain",
      "reject*|refus*|disqualif* ~9 without|no ~1 reason|reasons|explanation|cause|recourse|appeal",
      "reject*|refus* ~6 sole|absolute discretion",
    ],
  }),
  phraseRule({
    ...about,
    id: "one-house",
    concern: "How a firm is organised does not show in the field; firms that buy parts well are shut out.",
    basis: [legalBases.qualification, legalBases.performanceOrStandard],
    offered: "Ask for one party that answers for the whole system, and for tests of the finished product.",
    phrases: [
      "vertically integrated",
      "own|owns|operate|operates its|their|the ~4 plant|plants|factory|factories|line|lines|mill|mills|equipment|extruder|extruders",
      "extrude|extrudes|tuft|tufts|weave|weaves|produce|produces|make|makes ~1 its|their own",
      "subcontractors|subcontracting is|are not allowed|permitted|accepted",
    ],
  }),
  phraseRule({
    ...about,
    id: "this-system-only",
    concern: "Experience with the identical product can only be shown by those who already sell it.",
    basis: [legalBases.experienceAndBonding, legalBases.brandName],
    offered: "Ask for experience with systems of the same kind: pile, infill and shock layer of like make-up.",
    phrases: [
      "this|the exact|identical system|product|carpet ~6 use|installed|fields",
      "installed ~2 exact|identical system|product",
    ],
  }),
  phraseRule({
    ...about,
    id: "no-substitutions",
    concern: "Without substitutions, what is described or shown becomes the one thing that can be bid.",
    basis: [legalBases.brandName, legalBases.makeOrSource],
    offered:
      "Accept equals: “Requests for substitution are considered until ten days before bids are due, compared on every salient characteristic, and answered by addendum to all.”",
    phrases: [
      "no {substitute} or|nor ~1 {substitute}",
      "not ~1 consider|review|accept|entertain|evaluate|approve|allow ~3 other|competing|{substitute} ~1 {product}",
      "not ~1 consider|review|accept|entertain|evaluate|approve|allow ~3 {substitute}",
      "any|all other {product} ~2 rejected|disqualified|excluded|refused",
      "other {product} will|shall|are|is not",
      "{product} not ~1 listed|named|shown|specified ~4 not|rejected|excluded|disqualified",
      "requests|request ~4 {substitute} ~3 not|denied|rejected|returned|disregarded|ignored",
      "no other {product}",
      "no {substitute}",
      "no or {substitute}",
      "{substitute} {product}? ~2 will|shall|are|is|may|can|cannot not? be? {taken}",
      "not|cannot be substituted|replaced ~1 by|with ~1 other|others|another|anything",
      "{product}|{substitute} ~2 not be? {taken}",
    ],
    unless: [
      "{substitute} {product}? ~2 will|shall|are|is|may|can be? {taken}",
      "no other {product} ~2 lines|line|tape|paint",
    ],
    cleanBy: ["after|without|unless|until|except|before ~9"],
  }),
];
