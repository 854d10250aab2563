import { legalBases } from "../legal-basis";
import type { LanguageRule } from "../model";
import { phraseRule } from "../phrase-rule";

const about = { family: "shuts-out", severity: "may shut others out" } as const;

const firms = "manufacturer|bidder|installer|contractor|firm|company|supplier|producer";

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
      `business ~4 #>=${unusual.yearsOfExperience} years`,
      `continuously ~3 #>=${unusual.yearsOfExperience} years`,
      `#>=${unusual.yearsOfExperience} years ~5 experience|business|name|operation`,
      `${firms} ~8 #>=${unusual.yearsOfExperience} years`,
      `#>=${unusual.yearsOfExperience} years ~1 in the trade|industry|field`,
      `experience ~4 #>=${unusual.yearsOfExperience} years`,
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
      `#>=${unusual.yearsOfWarranty} year|years ~6 warranty|warranties|guarantee`,
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
      "no alternates|substitutions|equals or ~1 substitutions|alternates|equals",
      "not ~1 consider|review|accept|entertain|evaluate ~2 other|alternate|substitute|competing product|products|system|systems|make|makes|brands",
      "any|all other product|products|system|systems|make|makes|brand|brands ~2 rejected|disqualified|excluded|refused",
      "other product|products|system|systems|make|makes|brand|brands will|shall|are|is not",
      "products|systems|makes|brands not ~1 listed|named|shown|specified ~4 not|rejected|excluded|disqualified",
      "requests|request ~4 other|substitute|alternate|equal products|systems|makes|substitutions ~2 not",
      "no other product|products|system|systems|make|makes|brand|brands",
      "no substitution|substitutions|substitutes|equals|equal|alternates",
      "no or equal|equals",
      "substitution|substitutions|substitutes|alternates|equals|equal|equivalent|substitute|alternate products|materials? ~1 will|shall|are|is not be? accepted|considered|allowed|permitted|approved",
    ],
    cleanBy: ["after|without|unless|until|except|before ~9"],
  }),
];
