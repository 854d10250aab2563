import { legalBases } from "../legal-basis";
import type { LanguageRule } from "../model";
import { phraseRule } from "../phrase-rule";

const basis = [legalBases.brandName, legalBases.makeOrSource];

/** What only one firm has or may sell. */
export const exclusive: readonly LanguageRule[] = [
  phraseRule({
    id: "exclusive",
    family: "exclusive",
    severity: "may shut others out",
    concern: "What one firm alone has or may sell can be offered by no other bidder.",
    basis,
    offered: "State the performance that is wanted and accept every product that shows it by the same test.",
    phrases: [
      "exclusive",
      "{sold}|{made}|licensed|represented ~1 exclusively",
      "exclusively ~1 for|from|by|through|at|licensed|represented|{sold}|{made}",
      "{sold}|{made}|licensed only|solely|alone by|through|from|to|for",
      "{sold}|{made} ~2 for|by|through|from the ~2 {maker} only|solely|alone",
    ],
    unless: [
      "exclusive of",
      "exclusive use|possession|access|remedy|jurisdiction|venue|property",
      "mutually exclusive",
      "non exclusive",
      "exclusively at|by ~4 laborator*|labs|institute", // told as a test of one laboratory
    ],
    denied: "clean",
  }),
  phraseRule({
    id: "proprietary",
    family: "exclusive",
    severity: "may shut others out",
    concern: "A proprietary product or process belongs to one firm, so no other can meet the words as they stand.",
    basis,
    offered: "Name the properties that matter, each with test method and limit or range, and leave the make open.",
    phrases: ["proprietary"],
    cleanBy: ["whether|if ~6 proprietary", "disclose*|declare* ~6 proprietary"],
    unless: ["proprietary information|data|report*|document*|material|content|mark*", "non proprietary"],
    denied: "clean",
  }),
  phraseRule({
    id: "trade-secret",
    family: "exclusive",
    severity: "may shut others out",
    concern: "What is secret can't be matched or checked by anybody else.",
    basis,
    offered: "State what can be measured on the finished product, and ask for the test report that shows it.",
    phrases: ["trade secret|secrets"],
    cleanBy: ["mark*|redact*|confidential|records|release*"],
    denied: "clean",
  }),
  phraseRule({
    id: "nobody-else",
    family: "exclusive",
    severity: "may shut others out",
    concern: "What other firms can’t supply can be offered by no other bidder.",
    basis,
    offered: "State the performance that is wanted and accept every product that shows it by the same test.",
    phrases: [
      "not ~2 {sold}|{made} ~1 to|from|by|through|at ~2 other|others|elsewhere|another|anyone|anybody",
      "cannot|not|never be? {sold}|matched|duplicated|replicated|copied|reproduced ~2 elsewhere|others|other|anyone|anybody",
      "no other {firm} ~3 {supplies}|can|able|may",
      "no {firm} other ~6 {supplies}|can|able|may",
      "only one|a {firm} ~6 can|may|able|is|{supplies}",
      "one {firm} only|alone",
      "unavailable|closed to|from ~1 other|others",
      "nobody|none|no one|nothing else ~3 {supplies}|can|able|matches",
      "nobody else",
      "only {firm} ~4 able|capable|licensed|authorized|authorised to",
    ],
    unless: ["only {firm} ~3 that|who|which|with"],
    denied: "counts",
  }),
  phraseRule({
    id: "sole-source",
    family: "exclusive",
    severity: "may shut others out",
    concern: "A single source leaves no competition. Law usually asks for a written reason before such a purchase.",
    basis: [legalBases.brandName, legalBases.equalAccess],
    offered: "Open the purchase to every source that meets the performance, or record the reason why only one can.",
    phrases: [
      "sole source|sourced|sourcing|supplier|distributor|provider|dealer|licensee|manufacturer|installer",
      "sole ~1 distribution|rights|license|licence|representative|agent",
      "single source for|of|from|supplier",
      "one|single {firm}|source only|alone",
      "only from? by? one|a|single ~1 {maker}|source|dealer",
      "only authorised|authorized|licensed|approved {maker}|dealer|source",
    ],
    unless: ["single source of responsibility|contact|supply", "single source for responsibility|all|questions"],
    denied: "clean",
  }),
];
