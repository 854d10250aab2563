import { legalBases } from "../legal-basis";
import type { LanguageRule } from "../model";
import { phraseRule } from "../phrase-rule";

const basis = [legalBases.brandName, legalBases.makeOrSource, legalBases.salientFeatures];
const offered =
  "Describe the performance and let every product that meets it be offered. If a name has to stand, add “or equal”, list the salient characteristics that make an equal, and record why a description was not enough.";

/** A maker, brand or model is named and no equal is allowed. */
export const namedSource: readonly LanguageRule[] = [
  phraseRule({
    id: "named-maker",
    family: "named-source",
    severity: "may shut others out",
    concern: "The text names a source and does not allow an equal.",
    basis,
    offered,
    phrases: [
      "{made}|{sold} by @name",
      "{sold}|sourced from|through @name",
      "{product} of|by|from @name",
      "acceptable|approved|listed|permitted|preferred manufacturer|manufacturers|supplier|suppliers|product|products|system|systems are|is? limited? to? :? @name",
      "equal|similar|identical to @name",
      "such as @name",
      "acceptable|approved turf|carpet|pad|infill|fiber|fibre :? @name",
      "furnish|install|provide|supply|use|furnished|specified @name",
      "turf|carpet|pad|infill|fiber|fibre|yarn|line|series|backing|tape|adhesive by @name",
      "standardized|standardised|standardize|standardise on @name",
      "only @name ~1 products|product|turf|systems|pads|infill|materials",
      "@name ~2 only",
    ],
    unless: ["made|produced|offered by @laboratory", "@laboratory ~2 only", "~1 @name ™|®|℠|©", "~1 @name ( tm|r|sm )"], // told as a test of one laboratory
    orEqual: "clean",
  }),
  phraseRule({
    id: "unknown-name",
    family: "named-source",
    severity: "needs a reason",
    concern: "These capitals read like the name of a maker or a product, and no equal is allowed.",
    basis,
    offered: `If it is a name: ${offered} If it is a term of this text, define it in the article of definitions.`,
    phrases: ["@maker"],
    unless: [
      "made|produced|offered|by|from|at|of|than|only the? @laboratory",
      "@laboratory ~1 only",
      "certified|licensed|trained|approved|authorised|authorized by the? @name",
      "~1 @name ™|®|℠|©",
      "~1 @name ( tm|r|sm )",
      "( @name )",
    ],
    orEqual: "clean",
  }),
  phraseRule({
    id: "basis-of-design",
    family: "named-source",
    severity: "may shut others out",
    concern: "A basis of design by name, without “or equal”, reads as the one product that is accepted.",
    basis,
    offered,
    phrases: ["basis of design :? shall|is? be? @name", "design based on @name"],
    orEqual: "clean",
  }),
  phraseRule({
    id: "model-or-brand",
    family: "named-source",
    severity: "may shut others out",
    concern: "A model, catalogue number or brand belongs to one source, and no equal is allowed.",
    basis,
    offered,
    phrases: [
      "model|style|catalog|catalogue|series|sku number|no|# .? @code",
      "model|style|series|sku @code",
      "item|part|product|stock number|no .? #>=1000",
      "@name brand",
      "brand :? @name",
      "brand specific",
      "brand name only",
    ],
    unless: ["model ~1 of|the"],
    orEqual: "clean",
  }),
];
