/** One level of a scheme: how its count is written, and the pattern in which %1 is the count of the first level. */
export type NumberingLevel = Readonly<{ format: "decimal" | "upper-letter" | "lower-letter"; pattern: string }>;

const below = (first: number): readonly NumberingLevel[] => [
  { format: "upper-letter", pattern: `%${first}.` },
  { format: "decimal", pattern: `%${first + 1}.` },
  { format: "lower-letter", pattern: `%${first + 2}.` },
  { format: "decimal", pattern: `%${first + 3})` },
];

/** Schemes of numbers. A count begins anew under each number of a level before it. */
export const numberingSchemes = {
  /** PART 1, 1.1, A., 1., a., 1): parts, articles and paragraphs of a section. */
  section: [{ format: "decimal", pattern: "PART %1" }, { format: "decimal", pattern: "%1.%2" }, ...below(3)],
  /** Appendix A, A., 1., a., 1). */
  appendix: [{ format: "upper-letter", pattern: "Appendix %1" }, ...below(2)],
  /** 1, 1.1, 1.1.1: headings of a report. */
  report: [
    { format: "decimal", pattern: "%1" },
    { format: "decimal", pattern: "%1.%2" },
    { format: "decimal", pattern: "%1.%2.%3" },
  ],
} as const satisfies Readonly<Record<string, readonly NumberingLevel[]>>;

export type NumberingSchemeId = keyof typeof numberingSchemes;

/** Levels of each scheme that number headings. Those after them number paragraphs. */
export const headingLevels: Readonly<Record<NumberingSchemeId, number>> = { section: 2, appendix: 1, report: 3 };
