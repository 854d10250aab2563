/** A rule of law or practice that a note rests on, in own words, and how well its wording is known to us. */
export type LegalBasis = Readonly<{
  citation: string;
  says: string;
  status: "read" | "read in a secondary text" | "from memory" | "common practice, no source";
}>;

/**
 * What the notes rest on. It holds where the law applies: 2 CFR part 200 where federal award money is used, the
 * directive in the European Union. State law and the owner's own policy usually say much the same and are not listed.
 */
export const legalBases = {
  brandName: {
    citation: "2 CFR 200.319, examples of what restricts competition",
    says: "Naming only a brand, instead of allowing an equal and describing the performance, restricts competition.",
    status: "read",
  },
  qualification: {
    citation: "2 CFR 200.319, examples of what restricts competition",
    says: "Requirements on firms to qualify must not be unreasonable.",
    status: "read",
  },
  experienceAndBonding: {
    citation: "2 CFR 200.319, examples of what restricts competition",
    says: "Needless experience and excessive bonding restrict competition.",
    status: "read",
  },
  arbitrary: {
    citation: "2 CFR 200.319, examples of what restricts competition",
    says: "Arbitrary action in the procurement restricts competition.",
    status: "read",
  },
  salientFeatures: {
    citation: "2 CFR 200.319, brand name or equivalent",
    says: "A brand with “or equivalent” may stand where a clear description is impractical, and then the features that matter must be stated.",
    status: "from memory",
  },
  place: {
    citation: "2 CFR 200.319, geographical preference",
    says: "The text of 2020 forbids state or local preference in evaluating bids unless a federal statute asks for it; the revision of 2024 is said to have dropped this. Look up the text in force.",
    status: "read in a secondary text",
  },
  makeOrSource: {
    citation: "Directive 2014/24/EU, Article 42(4)",
    says: "A specification does not refer to a make, a source, a process of one producer, a trade mark, a patent or a type; by exception it may, and then “or equivalent” is added.",
    status: "read in a secondary text",
  },
  performanceOrStandard: {
    citation: "Directive 2014/24/EU, Article 42(3)",
    says: "Specifications are written by performance, by a standard with “or equivalent”, or by both.",
    status: "read in a secondary text",
  },
  equalAccess: {
    citation: "Directive 2014/24/EU, Article 42(2)",
    says: "Specifications give equal access and do not create obstacles to competition without a reason.",
    status: "from memory",
  },
  testable: {
    citation: "Common practice of performance specifications",
    says: "A requirement is a result, a test and a limit. A word that no test can settle is no requirement.",
    status: "common practice, no source",
  },
} as const satisfies Record<string, LegalBasis>;
